package org.ripewood.readiness;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Verdict;
import org.ripewood.platform.Paged;
import org.ripewood.steps.StepState;

/**
 * A course's trees, and for each group of work what comes next, what holds it and until when. Only
 * the rows are narrowed by a filter; all else tells of the whole course.
 *
 * @param works the columns, in the order of work
 * @param styling how many trees are held from styling
 * @param trees how many trees the course has
 * @param heldFrom techniques with the trees held from them, in the order of work
 * @param heldBy reasons with the trees they hold, most first
 * @param care what may be done for trees whatever they wait for, most trees first
 */
public record ReadinessSheet(
        long courseId,
        LocalDate on,
        List<Work> works,
        StylingHeld styling,
        int trees,
        List<Choice> heldFrom,
        List<Choice> heldBy,
        List<Choice> stages,
        List<Choice> species,
        List<Care> care,
        Paged<Row> rows) {

    public ReadinessSheet {
        works = List.copyOf(works);
        heldFrom = List.copyOf(heldFrom);
        heldBy = List.copyOf(heldBy);
        stages = List.copyOf(stages);
        species = List.copyOf(species);
        care = List.copyOf(care);
    }

    /** A column. */
    public record Work(String code, String title, String note) {}

    /** Something a filter asks for by its code, and how many trees it would leave. */
    public record Choice(String code, String title, int trees) {}

    /** Care that is ready on some trees. */
    public record Care(String technique, String title, List<OfTree> trees) {
        public Care {
            trees = List.copyOf(trees);
        }

        /** A tree it may be done for. */
        public record OfTree(long treeId, String label) {}
    }

    /**
     * A tree.
     *
     * @param photoId a photo from its front, else any; null when there is none
     * @param stage its stage of training
     * @param next the next technique of styling on it; null when nothing of styling is left
     * @param freeOn when nothing of the tree's own is likely to hold that any more; null when that
     *     cannot be said, or nothing does
     * @param cells one for each column, in their order
     */
    public record Row(
            long treeId,
            String label,
            String species,
            long keeperId,
            String keeper,
            @Nullable Long photoId,
            Stage stage,
            @Nullable Next next,
            @Nullable LocalDate freeOn,
            List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /** A stage of training; its order counts from 1. */
    public record Stage(String code, String title, int order, double howFar) {}

    /** The next technique of styling. */
    public record Next(String technique, String title, Verdict state) {}

    /** How much a cell matters to an eye that looks for what is held. */
    public enum Weight {
        /** The tree itself holds it. */
        HELD,
        /** It waits for a plan, or for another technique. */
        WAITS,
        /** Something has to be looked at. */
        LOOK,
        /** Only the season or a lesson is wanting. */
        LATER,
        /** It may go on, or is in hand. */
        READY,
        /** Done, or not needed. */
        NOTHING
    }

    /**
     * A tree's state in one group of work.
     *
     * @param state of the technique told; {@code DONE} or {@code NOT_NEEDED} when none is left
     * @param technique the one told; null when none is left
     * @param title its title in four words at most
     * @param words at most five words on what holds it, or what it is
     * @param number what there is of what was asked for, with its unit
     * @param lifts when that goes by itself, or what has to be done
     * @param liftsOn the likely day; null when there is none
     * @param truth of the reason told, as the ring draws it
     * @param howFar the reason told is met, 0 to 1
     * @param sentence the reason in full
     * @param stepId the step somebody has in hand
     */
    public record Cell(
            String work,
            Verdict state,
            Weight weight,
            @Nullable String technique,
            @Nullable String title,
            @Nullable String words,
            @Nullable String number,
            @Nullable String lifts,
            @Nullable LocalDate liftsOn,
            String truth,
            double howFar,
            @Nullable String sentence,
            @Nullable Long stepId,
            @Nullable StepState step) {

        static Cell nothingLeft(String work, Verdict state) {
            return new Cell(
                    work,
                    state,
                    Weight.NOTHING,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    "YES",
                    1,
                    null,
                    null,
                    null);
        }

        /** Whether there is anything to read in it. */
        public boolean tells() {
            return technique != null;
        }
    }
}
