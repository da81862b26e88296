package org.ripewood.classday;

import java.util.Comparator;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Lesson;
import org.ripewood.standing.DayWork;
import org.ripewood.standing.DayWork.Ground;

/** The best a tree could do on a day, nothing but the tree regarded. */
final class FirstChoice {

    private FirstChoice() {}

    static DayWork.@Nullable Option of(DayWork tree, @Nullable Lesson lesson) {
        return tree.options().stream()
                .filter(option -> skillFits(option, lesson))
                .min(
                        Comparator.<DayWork.Option, Boolean>comparing(
                                        option -> option.stepId() == null)
                                .thenComparing(option -> !taught(option, lesson))
                                .thenComparing(option -> option.ground() == Ground.EXPECTED))
                .orElse(null);
    }

    /** A missing skill is no hindrance where the day's lesson teaches it. */
    static boolean skillFits(DayWork.Option option, @Nullable Lesson lesson) {
        var missing = option.skillLesson();
        return missing == null || (lesson != null && missing.equals(lesson.code()));
    }

    static boolean taught(DayWork.Option option, @Nullable Lesson lesson) {
        return lesson != null && lesson.teaches().contains(option.technique());
    }

    static String why(DayWork.Option option, @Nullable Lesson lesson) {
        return option.stepId() == null && taught(option, lesson)
                ? "Today's lesson teaches it. " + option.why()
                : option.why();
    }
}
