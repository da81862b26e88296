package org.ripewood.people;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Role;

/**
 * That somebody belongs to a course, or did.
 *
 * @param leftOn null while they belong to it
 */
public record Membership(
        long personId, String name, Role as, LocalDate since, @Nullable LocalDate leftOn) {}
