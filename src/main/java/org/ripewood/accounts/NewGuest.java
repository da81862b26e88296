package org.ripewood.accounts;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.Set;
import org.ripewood.people.NewPerson;
import org.ripewood.platform.Role;

/** A person to be entered who chooses their password by a link. */
public record NewGuest(
        @NotBlank @Size(max = 120) String name,
        @NotBlank
                @Size(max = 60)
                @Pattern(regexp = NewPerson.LOGIN, message = NewPerson.LOGIN_WORDS)
                String login,
        @NotEmpty Set<@NotNull Role> roles) {}
