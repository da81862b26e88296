package org.ripewood.school;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;

/** What the school is to be called from now on; short enough for the head of a sheet. */
public record NewSchoolName(@NotBlank @Size(max = NewSchoolName.MOST) String name) {

    /** One line of the small letters at the foot of a sheet (tried on A4 and Letter). */
    public static final int MOST = 80;
}
