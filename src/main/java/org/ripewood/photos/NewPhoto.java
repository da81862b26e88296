package org.ripewood.photos;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What is said of a photo.
 *
 * @param takenOn when left out: of a new photo the day the camera noted, or today; of one already
 *     kept the day it has
 * @param woundId a wound of the same tree that it shows
 * @param stepId a step of the same tree that it is evidence for
 */
public record NewPhoto(
        @Nullable LocalDate takenOn,
        @NotNull Viewpoint view,
        @Nullable @Size(max = 500) String caption,
        @Nullable Long woundId,
        @Nullable Long stepId) {}
