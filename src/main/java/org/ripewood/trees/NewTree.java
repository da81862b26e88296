package org.ripewood.trees;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A tree to be entered; a student enters their own, an instructor or registrar anybody's in reach.
 */
public record NewTree(
        @NotBlank @Size(max = 120) String label,
        @NotBlank @Size(max = 60) String species,
        @NotNull Long keeperId,
        @NotNull Long siteId,
        @NotNull LocalDate cameOn,
        @Nullable @Size(max = 500) String origin,
        @Nullable @Size(max = 2000) String note) {}
