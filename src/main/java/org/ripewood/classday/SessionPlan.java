package org.ripewood.classday;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.boards.DayWork;
import org.ripewood.core.bench.Span;
import org.ripewood.course.Lesson;
import org.ripewood.course.Technique;
import org.ripewood.sessions.Session;

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
        List<Want> wants,
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

    /**
     * A tool or material and how many trees ask for it.
     *
     * @param inStock how many of a tool the school counts; null when it counts none such
     */
    public record Need(String name, int trees, @Nullable Integer inStock) {}

    /**
     * What the day takes from stock.
     *
     * @param amount as far as it is known
     * @param inStock null when the school has no such item counted in that unit
     * @param missing by how much it is short; 0 when there is enough
     * @param trees that ask for it
     * @param unknown those of them of which nobody can say how much, as the container's size is not
     *     known
     */
    public record Want(
            String item,
            BigDecimal amount,
            String unit,
            @Nullable BigDecimal inStock,
            BigDecimal missing,
            List<String> trees,
            List<String> unknown) {}

    public record Caution(String signal, String hazard, String avoid, List<String> trees) {}
}
