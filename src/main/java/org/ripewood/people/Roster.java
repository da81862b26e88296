package org.ripewood.people;

import java.util.List;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;

/**
 * A course within somebody's reach, with everybody who belongs to it or did.
 *
 * @param runs whether the reader runs it: an instructor of it, or a registrar
 * @param memberships in the order they came
 * @param instructors of now, by name
 * @param students of now, by name
 */
public record Roster(
        Course course,
        boolean runs,
        List<Membership> memberships,
        List<Person> instructors,
        List<Person> students) {

    public Roster {
        memberships = List.copyOf(memberships);
        instructors = List.copyOf(instructors);
        students = List.copyOf(students);
    }

    static boolean isNow(Membership membership, Role as) {
        return membership.as() == as && membership.leftOn() == null;
    }

    /** Goes on only for those who run the course; 403 for everybody else. */
    public void requireRuns(String toSeeWhat) {
        if (!runs) {
            throw notRun(toSeeWhat);
        }
    }

    static Refused notRun(String toSeeWhat) {
        return Refused.forbidden(
                "Only instructors of the course and registrars may see %s.".formatted(toSeeWhat));
    }
}
