package org.ripewood.sessions;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Trees that come to a session with their keepers.
 *
 * @param treeIds null for every tree of the course's students
 */
public record NewEnrolments(@Nullable @Size(max = 500) List<@NotNull Long> treeIds) {}
