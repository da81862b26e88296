package org.ripewood.web.courses;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Lesson;
import org.ripewood.people.Course;
import org.ripewood.people.Person;
import org.ripewood.sessions.Session;
import org.ripewood.web.kit.FormState;

/**
 * What the page shows on which sessions are set.
 *
 * @param like the session that is copied; null when the course has none yet
 * @param days those that follow from what was typed; empty before
 * @param clocks days on which clocks are put forward or back between the first and the last
 */
record SeriesPageModel(
        Course course,
        Collection<Lesson> lessons,
        List<Person> instructors,
        @Nullable Session like,
        List<DayLine> days,
        List<LocalDate> clocks,
        FormState typed) {

    /**
     * A day that follows from the rule.
     *
     * @param clash why it cannot be; null when it can
     * @param outside whether it lies outside the days of the course
     */
    record DayLine(LocalDate day, @Nullable String clash, boolean outside) {}
}
