package org.ripewood.boards;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.trees.Tree;

/**
 * What could be done with a tree on a day.
 *
 * @param stage the stage it is in, in words
 * @param options the student's own steps first, then what could be assigned, most useful first, and
 *     care last
 * @param otherwise what stands in the way when there is no option; why an assigned step is none
 * @param measureFirst what to look at when nothing can be done, a bench card full at most
 * @param reported in words, work reported as done that nobody has signed off yet: what comes next
 *     is planned once it is; null when there is none
 */
public record DayWork(
        Tree tree,
        LocalDate on,
        String stage,
        List<Option> options,
        String otherwise,
        List<String> measureFirst,
        @Nullable String reported) {

    public DayWork {
        options = List.copyOf(options);
        measureFirst = List.copyOf(measureFirst);
    }

    /** What an option rests on, the firmest first. */
    public enum Ground {
        /** The student has it back to put right. */
        SENT_BACK,
        /** The student has it. */
        ASSIGNED,
        /** It is ready on the day by what is known today. */
        READY,
        /** All that is missing is a skill, which the lesson named shows. */
        WITH_LESSON,
        /** By forecast it will be ready; somebody has to look first. */
        EXPECTED
    }

    /**
     * One piece of work.
     *
     * @param stepId the student's step; null when it has to be assigned
     * @param skillLesson the lesson whose skill is missing; null when none is
     * @param sure of a forecast, whether it holds in nine cases of ten rather than in every second
     * @param care whether it only keeps the tree well, and is done where the tree stands
     * @param why in words
     * @param measureFirst what has to be looked at before it is begun
     */
    public record Option(
            String technique,
            @Nullable Long stepId,
            Ground ground,
            @Nullable String skillLesson,
            boolean sure,
            boolean care,
            String why,
            List<String> measureFirst) {

        public Option {
            measureFirst = List.copyOf(measureFirst);
        }
    }
}
