package org.ripewood.api.steps;

import java.time.LocalDate;
import java.util.List;
import org.ripewood.api.content.TechniqueAnswer;
import org.ripewood.boards.Checklist;
import org.ripewood.standing.StageView;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.steps.Step;

/** A student's checklist for a tree, the next thing to do first. */
record ChecklistAnswer(
        long treeId,
        LocalDate on,
        String stage,
        StageView trainingStage,
        List<TechniqueStanding> careNow,
        List<Item> doNow,
        List<TechniqueStanding> ready,
        List<TechniqueStanding> waiting,
        List<Checklist.Measure> measureNext,
        List<Checklist.Done> done,
        List<Checklist.Care> care) {

    record Item(Step step, TechniqueAnswer technique, TechniqueStanding standing) {}

    static ChecklistAnswer of(Checklist checklist) {
        return new ChecklistAnswer(
                checklist.treeId(),
                checklist.on(),
                checklist.stage().code(),
                checklist.stage(),
                checklist.careNow(),
                checklist.doNow().stream().map(ChecklistAnswer::item).toList(),
                checklist.ready(),
                checklist.waiting(),
                checklist.measureNext(),
                checklist.done(),
                checklist.care());
    }

    private static Item item(Checklist.Item item) {
        return new Item(item.step(), TechniqueAnswer.of(item.technique()), item.standing());
    }
}
