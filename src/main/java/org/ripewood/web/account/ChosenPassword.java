package org.ripewood.web.account;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.ripewood.people.NewPerson;

/** A password chosen by a link, as the form sends it. */
record ChosenPassword(
        @NotBlank @Size(min = NewPerson.LEAST_PASSWORD, max = NewPerson.MOST_PASSWORD)
                String newPassword) {}
