package org.ripewood.api.courses;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.classday.LessonWeeks;
import org.ripewood.core.progress.ReadyWeeks;
import org.ripewood.course.Lesson;

/** How many trees of a course could do each technique, week by week. */
record WeeksAnswer(long courseId, LocalDate from, int weeks, int trees, List<Row> techniques) {

    /**
     * One technique.
     *
     * @param unsaid trees that need it and of which nobody can say when
     * @param bestWeekFrom first day of the week in which most trees likely could
     */
    record Row(
            String technique,
            String title,
            List<String> lessons,
            int unsaid,
            @Nullable LocalDate bestWeekFrom,
            List<ReadyWeeks.Week> weeks) {}

    static WeeksAnswer of(LessonWeeks weeks) {
        return new WeeksAnswer(
                weeks.courseId(),
                weeks.from(),
                weeks.weeks(),
                weeks.trees(),
                weeks.rows().stream().map(WeeksAnswer::row).toList());
    }

    private static Row row(LessonWeeks.Row row) {
        return new Row(
                row.technique().code(),
                row.technique().title(),
                row.lessons().stream().map(Lesson::code).toList(),
                row.unsaid(),
                row.best(),
                row.weeks());
    }
}
