package org.ripewood.accounts;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.people.Course;
import org.ripewood.platform.Role;

/**
 * A line of a pasted list of people to be invited.
 *
 * @param number of the line in what was pasted, from 1
 * @param login as it was written, or as it is proposed
 * @param course null for none
 * @param nameKnown whether somebody of that name is at the school already; no fault
 * @param faults none when the person can be invited
 */
public record GuestLine(
        int number,
        String name,
        String login,
        Set<Role> roles,
        @Nullable Course course,
        boolean nameKnown,
        List<String> faults) {

    public GuestLine {
        roles = Set.copyOf(roles);
        faults = List.copyOf(faults);
    }

    /** What they are in the course: student, unless they are instructor only. */
    Role inCourse() {
        return roles.contains(Role.STUDENT) ? Role.STUDENT : Role.INSTRUCTOR;
    }

    /** Their roles in the usual order. */
    public List<Role> rolesInTurn() {
        return roles.stream().sorted().toList();
    }

    /** The line with everything said, to be read again. */
    String written() {
        var words = rolesInTurn().stream().map(Role::name).collect(Collectors.joining(", "));
        return String.join("; ", name, login, words, course == null ? "" : course.name());
    }

    GuestLine wrong(List<String> what) {
        return new GuestLine(number, name, login, roles, course, nameKnown, what);
    }

    GuestLine knownByName() {
        return new GuestLine(number, name, login, roles, course, true, faults);
    }
}
