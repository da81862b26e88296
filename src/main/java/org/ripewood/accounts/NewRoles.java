package org.ripewood.accounts;

import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import java.util.Set;
import org.ripewood.platform.Role;

/** What a person is to be at the school from now on: one role or several. */
public record NewRoles(@NotEmpty Set<@NotNull Role> roles) {}
