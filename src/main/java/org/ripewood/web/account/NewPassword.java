package org.ripewood.web.account;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.ripewood.people.NewPerson;

/** A change of one's own password, as the form sends it. */
record NewPassword(
        @NotBlank @Size(max = NewPerson.MOST_PASSWORD) String oldPassword,
        @NotBlank @Size(min = NewPerson.LEAST_PASSWORD, max = NewPerson.MOST_PASSWORD)
                String newPassword) {}
