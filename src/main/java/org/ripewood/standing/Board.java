package org.ripewood.standing;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Verdict;
import org.ripewood.platform.Paged;

/**
 * A course's trees at a glance.
 *
 * @param byHeadline how many trees of the whole course have each headline
 * @param holds reasons for holds over the whole course, most frequent first, at most 12
 */
public record Board(
        long courseId,
        LocalDate on,
        Map<Headline, Integer> byHeadline,
        List<HoldCount> holds,
        Paged<Row> rows) {

    /** What a tree's row is led by; in order of urgency for an instructor. */
    public enum Headline {
        /** A report waits for sign-off. */
        SIGN_OFF,
        /** The student has a step to do. */
        UNDER_WAY,
        /** A step could be assigned. */
        READY,
        /** Something has to be measured first. */
        MEASURE,
        /** Only the student's skill is missing. */
        LESSON,
        /** Only the season is not right. */
        SEASON,
        /** Development is not far enough. */
        HELD
    }

    /**
     * A tree of the course.
     *
     * @param sentence what it is about
     * @param opening when what is held, or out of season, could be done; null for everything else
     */
    public record Row(
            long treeId,
            String label,
            String species,
            long keeperId,
            String keeper,
            Headline headline,
            @Nullable String technique,
            @Nullable String techniqueTitle,
            @Nullable Long stepId,
            Map<Verdict, Integer> verdicts,
            String sentence,
            @Nullable String opening) {}

    public record HoldCount(String title, int trees) {}
}
