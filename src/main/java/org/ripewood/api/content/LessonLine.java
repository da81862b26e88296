package org.ripewood.api.content;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Lesson;

/** A lesson in a list. */
public record LessonLine(
        String code,
        String title,
        String stage,
        int order,
        int minutes,
        List<String> teaches,
        @Nullable String skill) {

    public static LessonLine of(Lesson lesson) {
        return new LessonLine(
                lesson.code(),
                lesson.title(),
                lesson.stage(),
                lesson.order(),
                lesson.minutes(),
                lesson.teaches(),
                lesson.skill());
    }
}
