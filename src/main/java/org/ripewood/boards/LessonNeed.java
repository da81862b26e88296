package org.ripewood.boards;

import org.jspecify.annotations.Nullable;

/**
 * A lesson that steps of somebody's trees wait for.
 *
 * @param minutes how long it takes; null when the content has no such lesson, or no longer
 * @param steps steps that its skill alone keeps back
 * @param trees on how many trees
 * @param students of how many students
 * @param waiting steps that also wait for something else
 */
public record LessonNeed(
        String lesson,
        String title,
        @Nullable Integer minutes,
        int steps,
        int trees,
        int students,
        int waiting) {}
