package org.ripewood.classday;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.ReadyWeeks;
import org.ripewood.course.Lesson;
import org.ripewood.course.Technique;

/**
 * Which lesson when: how many trees of a course could do each technique, week by week.
 *
 * @param trees of the course
 * @param rows the techniques that some tree needs, in telling order
 */
public record LessonWeeks(long courseId, LocalDate from, int weeks, int trees, List<Row> rows) {

    public LessonWeeks {
        rows = List.copyOf(rows);
    }

    /**
     * One technique.
     *
     * @param lessons that teach it
     * @param unsaid trees that need it and of which nobody can say when
     * @param best first day of the week in which most trees likely could; null when none could
     */
    public record Row(
            Technique technique,
            List<Lesson> lessons,
            List<ReadyWeeks.Week> weeks,
            int unsaid,
            @Nullable LocalDate best) {

        public Row {
            lessons = List.copyOf(lessons);
            weeks = List.copyOf(weeks);
        }

        /** Most trees that likely could in one week. */
        public int most() {
            return weeks.stream().mapToInt(ReadyWeeks.Week::likely).max().orElse(0);
        }
    }
}
