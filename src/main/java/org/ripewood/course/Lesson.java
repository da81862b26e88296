package org.ripewood.course;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A lesson.
 *
 * @param skill what a student shows to have learnt it; null when there is nothing to show
 * @param html the teaching text, rendered and sanitised
 */
public record Lesson(
        String code,
        String title,
        String stage,
        int order,
        int minutes,
        List<String> teaches,
        @Nullable String skill,
        String source,
        String html) {}
