package org.ripewood.classday;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.bench.Span;
import org.ripewood.course.Lesson;
import org.ripewood.course.Technique;
import org.ripewood.sessions.Session;
import org.ripewood.standing.DayWork;

/**
 * What a class day needs on paper.
 *
 * @param timetable the one in force; null before the day is laid out
 */
public record SessionPlan(
        Session session,
        String course,
        @Nullable Lesson lesson,
        List<String> instructors,
        List<Row> rows,
        List<Need> tools,
        List<Need> materials,
        List<Caution> cautions,
        int studentMinutes,
        int instructorMinutes,
        List<Span> breaks,
        @Nullable TimetableShown timetable) {

    /**
     * One tree's work that day.
     *
     * @param technique null when nothing can be done on it that day
     * @param ground what the work rests on; null with the technique
     * @param why why this step was chosen, or why there is none
     * @param others what it could do besides
     */
    public record Row(
            String bench,
            String student,
            long treeId,
            String tree,
            String species,
            @Nullable Technique technique,
            @Nullable Long stepId,
            DayWork.@Nullable Ground ground,
            String why,
            List<String> measureFirst,
            List<Other> others) {}

    /**
     * Work that a tree could do and does not, that day.
     *
     * @param wish what an instructor said of it; null for nothing
     */
    public record Other(String technique, String title, String why, @Nullable DayWish wish) {}

    /** A tool or material and how many trees ask for it. */
    public record Need(String name, int trees) {}

    public record Caution(String signal, String hazard, String avoid, List<String> trees) {}
}
