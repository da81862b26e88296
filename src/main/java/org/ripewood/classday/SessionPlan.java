package org.ripewood.classday;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.boards.DayWork;
import org.ripewood.core.bench.Span;
import org.ripewood.course.Lesson;
import org.ripewood.course.Technique;
import org.ripewood.sessions.Session;

/**
 * What a class day needs on paper.
 *
 * @param toolKinds tools with those of one kind told as one, fine and clean scissors as scissors
 * @param lessonAt when all are taught together; several spans where a break falls into it
 * @param inBetween small jobs and looks that have no place of their own on the timetable
 * @param timetable the one in force; null before the day is laid out
 */
public record SessionPlan(
        Session session,
        String course,
        @Nullable Lesson lesson,
        List<String> instructors,
        List<Row> rows,
        List<Need> tools,
        List<Need> toolKinds,
        List<Need> materials,
        List<Want> wants,
        List<Caution> cautions,
        int studentMinutes,
        int instructorMinutes,
        List<Span> breaks,
        List<Span> lessonAt,
        List<InBetween> inBetween,
        @Nullable TimetableShown timetable) {

    /**
     * One tree's work that day.
     *
     * @param stage the stage the tree is in, in words
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
            String stage,
            @Nullable Technique technique,
            @Nullable Long stepId,
            DayWork.@Nullable Ground ground,
            String why,
            List<String> measureFirst,
            List<Other> others) {}

    /**
     * A tree's day at its bench.
     *
     * @param rows its work, or one that says why there is none
     * @param lines of the timetable; none before the day is laid out, or without a place
     * @param waits of its student before going on with it
     */
    public record BenchDay(
            Row first,
            List<Row> rows,
            List<TimetableShown.Line> lines,
            List<TimetableShown.Wait> waits) {

        public boolean onTheClock() {
            return !lines.isEmpty();
        }
    }

    /** Every tree that comes, in the order of the benches. */
    public List<BenchDay> benches() {
        Map<Long, List<Row>> byTree = new LinkedHashMap<>();
        rows.forEach(
                row -> byTree.computeIfAbsent(row.treeId(), any -> new ArrayList<>()).add(row));
        var table = timetable;
        return byTree.values().stream()
                .map(
                        of ->
                                new BenchDay(
                                        of.get(0),
                                        of,
                                        table == null
                                                ? List.of()
                                                : table.linesOf(of.get(0).treeId()),
                                        table == null
                                                ? List.of()
                                                : table.waitsOf(of.get(0).treeId())))
                .toList();
    }

    /** Names of students who come, in the order of the benches. */
    public List<String> students() {
        return rows.stream().map(Row::student).distinct().toList();
    }

    /**
     * What is done when there is a moment, and has no place of its own on the timetable.
     *
     * @param minutes about how long; null when nobody can say
     * @param withInstructor whether an instructor looks in for it
     */
    public record InBetween(
            String student,
            long treeId,
            String tree,
            String what,
            @Nullable Integer minutes,
            boolean withInstructor) {}

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
