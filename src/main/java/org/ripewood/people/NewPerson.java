package org.ripewood.people;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.Set;
import org.ripewood.platform.Role;

/** A person to be entered, with the password for the first sign-in. */
public record NewPerson(
        @NotBlank @Size(max = 120) String name,
        @NotBlank
                @Size(max = 60)
                @Pattern(regexp = NewPerson.LOGIN, message = NewPerson.LOGIN_WORDS)
                String login,
        @NotBlank @Size(min = LEAST_PASSWORD, max = MOST_PASSWORD) String password,
        @NotEmpty Set<@NotNull Role> roles) {

    public static final String LOGIN = "[a-z0-9][a-z0-9._-]*";
    public static final String LOGIN_WORDS =
            "small letters, digits, dot, hyphen and underscore only";

    /** Long rather than contrived (NIST SP 800-63B asks for 8 at least; from memory). */
    public static final int LEAST_PASSWORD = 12;

    /** A passphrase of fifty words; OWASP ASVS 5.0.0, 6.2.9, asks for 64 characters at least. */
    public static final int MOST_PASSWORD = 256;
}
