package org.ripewood.boards;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Verdict;
import org.ripewood.platform.Paged;

/**
 * A course's trees at a glance. Only the rows are narrowed by a filter; all else tells of the whole
 * course.
 *
 * @param byHeadline how many trees of the whole course have each headline
 * @param holds reasons for holds over the whole course, most frequent first, at most 12
 * @param ageing facts whose evidence is too old or soon will be, those of most trees first
 * @param oldest the same tree by tree, oldest first, at most 50
 * @param waiting reports that wait for a sign-off, oldest first
 * @param unseen students not seen for long, longest first
 * @param lessons lessons its students' trees wait for, most needed first
 */
public record Board(
        long courseId,
        LocalDate on,
        Map<Headline, Integer> byHeadline,
        List<HoldCount> holds,
        List<Ageing> ageing,
        List<Aged> oldest,
        List<Report> waiting,
        List<Unseen> unseen,
        List<LessonNeed> lessons,
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
     * @param stage the first stage with something left to do, by code
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
            @Nullable String opening,
            String stage) {}

    /**
     * A reason for holds.
     *
     * @param code what a filter asks for it by
     */
    public record HoldCount(String code, String title, int trees) {}

    /**
     * A fact whose evidence grows old.
     *
     * @param trees of how many trees
     * @param stale of how many of them it is too old already
     */
    public record Ageing(String fact, String title, int trees, int stale) {}

    /**
     * Evidence of a tree that grows old.
     *
     * @param goodUntil the last day on which every criterion on the fact takes it
     * @param stale whether that day is over
     */
    public record Aged(
            long treeId,
            String label,
            String keeper,
            String fact,
            String title,
            LocalDate observedOn,
            LocalDate goodUntil,
            boolean stale) {}

    /** A report that waits for a sign-off. */
    public record Report(
            long stepId,
            long treeId,
            String label,
            String keeper,
            String technique,
            String techniqueTitle,
            LocalDate reportedOn,
            long daysWaiting) {}

    /**
     * A student not seen for long.
     *
     * @param lastOn null when they never were
     * @param weeks whole weeks since, or since the course began
     */
    public record Unseen(
            long personId,
            String name,
            @Nullable LocalDate lastOn,
            @Nullable Sight lastSeen,
            long weeks) {}

    /** By what a student was seen. */
    public enum Sight {
        SESSION,
        REPORT,
        OBSERVATION,
        JUDGEMENT
    }
}
