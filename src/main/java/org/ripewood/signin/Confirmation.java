package org.ripewood.signin;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.ripewood.people.NewPerson;

/**
 * By what somebody who is signed in shows that it is still them.
 *
 * @param code of their second factor; left out by those who have none
 */
public record Confirmation(
        @NotBlank @Size(max = NewPerson.MOST_PASSWORD) String password,
        @Nullable @Size(max = 40) String code) {}
