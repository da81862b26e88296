package org.ripewood.web.trees;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.stream.Stream;
import org.ripewood.core.progress.Fact;
import org.ripewood.course.CourseContent;
import org.ripewood.platform.Actor;
import org.ripewood.records.LastReadings;
import org.ripewood.records.MeasurementSeries;
import org.ripewood.records.Question;
import org.ripewood.trees.TreeDays;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.FormState;

/** Lays out the page for measuring at the bench. */
@ApplicationScoped
class MeasurePageAssembler {

    static final String FORM = "measure";

    private final Trees trees;
    private final MeasurementSeries measurementSeries;
    private final CourseContent content;
    private final TreeDays treeDays;

    MeasurePageAssembler(
            Trees trees,
            MeasurementSeries measurementSeries,
            CourseContent content,
            TreeDays treeDays) {
        this.trees = trees;
        this.measurementSeries = measurementSeries;
        this.content = content;
        this.treeDays = treeDays;
    }

    MeasurePageModel lay(Actor actor, long treeId, FormState typed, List<Question> questions) {
        var last = measurementSeries.last(actor, treeId);
        return new MeasurePageModel(
                trees.get(actor, treeId),
                last.marks(),
                last.wounds(),
                lengths(last),
                questions,
                typed);
    }

    /** A form nobody has typed into yet, for today. */
    FormState fresh(long treeId) {
        return FormState.fresh(FORM).with("observedOn", treeDays.at(treeId));
    }

    private List<MeasurePageModel.Length> lengths(LastReadings last) {
        var inForce = content.inForce();
        return Stream.of(Fact.SHOOT_EXTENSION_MM, Fact.TRUNK_BASE_MM, Fact.HEIGHT_MM)
                .map(
                        fact ->
                                new MeasurePageModel.Length(
                                        fact.code(),
                                        inForce.text(fact).title(),
                                        inForce.text(fact).how(),
                                        last.whole().get(fact)))
                .toList();
    }
}
