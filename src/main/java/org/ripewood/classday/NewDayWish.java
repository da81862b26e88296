package org.ripewood.classday;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/** A wish for a tree on a class day. */
public record NewDayWish(
        @NotNull Long treeId, @NotBlank @Size(max = 60) String technique, @NotNull DayWish wish) {}
