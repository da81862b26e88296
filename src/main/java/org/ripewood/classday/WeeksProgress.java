package org.ripewood.classday;

import org.jspecify.annotations.Nullable;

/**
 * How far a count of weeks is.
 *
 * @param counted trees so far, of {@code trees}
 * @param through what was counted; null while it goes on
 */
public record WeeksProgress(int counted, int trees, @Nullable LessonWeeks through) {}
