package org.ripewood.classday;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Lesson;
import org.ripewood.course.Technique;
import org.ripewood.sessions.Session;

/** What a class day needs on paper. */
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
        int instructorMinutes) {

    /**
     * One tree's work that day.
     *
     * @param technique null when nothing can be done on it that day
     * @param why why this step was chosen, or why there is none
     */
    public record Row(
            String bench,
            String student,
            long treeId,
            String tree,
            String species,
            @Nullable Technique technique,
            @Nullable Long stepId,
            String why,
            List<String> measureFirst) {}

    /** A tool or material and how many trees ask for it. */
    public record Need(String name, int trees) {}

    public record Caution(String signal, String hazard, String avoid, List<String> trees) {}
}
