package org.ripewood.boards;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Technique;
import org.ripewood.standing.StageView;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.steps.Step;

/**
 * What a student reads about one tree, the next thing to do first.
 *
 * @param stage the stage it is in, and what is missing for the next
 * @param careNow care that may be given now; it is no step
 * @param doNow steps the student was given, sent-back ones first
 * @param ready steps that are ready and that nobody was given, the most useful first
 * @param reported steps that wait for an instructor's look
 */
public record Checklist(
        long treeId,
        LocalDate on,
        StageView stage,
        List<TechniqueStanding> careNow,
        List<Item> doNow,
        List<TechniqueStanding> ready,
        List<Item> reported,
        List<TechniqueStanding> waiting,
        List<Measure> measureNext,
        List<Done> done,
        List<Care> care) {

    /** An assigned step, with what its report must state. */
    public record Item(Step step, Technique technique, TechniqueStanding standing) {}

    /** A fact to look at, how, and what waits for it. */
    public record Measure(
            String factCode, String title, String how, String unit, List<String> waitingTitles) {

        /** Where it is recorded, below the tree's own address. */
        public String where() {
            return switch (factCode) {
                case "container_kind" -> "first-look?at=container";
                case "widest_open_cut_mm" -> "first-look?at=cuts";
                case "trunk_diameter_mm" -> "measure";
                default -> "observations?fact=" + factCode;
            };
        }
    }

    public record Done(
            String technique, String title, LocalDate doneOn, @Nullable LocalDate dueAgainOn) {

        /** Whether it is due again by a day. */
        public boolean isDue(LocalDate on) {
            var due = dueAgainOn;
            return due != null && !due.isAfter(on);
        }
    }

    /** Aftercare of recent work that is due now. */
    public record Care(String task, String afterTitle, LocalDate from, LocalDate until) {}
}
