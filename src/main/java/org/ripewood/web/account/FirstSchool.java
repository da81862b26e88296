package org.ripewood.web.account;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.ripewood.school.NewSchoolName;

/** What is asked of the school when it is set up. */
record FirstSchool(@NotBlank @Size(max = NewSchoolName.MOST) String school) {}
