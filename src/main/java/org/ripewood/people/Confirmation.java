package org.ripewood.people;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;

/** By what somebody who is signed in shows that it is still them. */
public record Confirmation(
        @NotBlank @Size(max = NewPerson.MOST_PASSWORD) String password) {}
