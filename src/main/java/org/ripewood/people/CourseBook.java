package org.ripewood.people;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ripewood.platform.Fault;
import org.ripewood.platform.Refused;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;

/** Opens courses and says who belongs to them. Called within the façade's transaction. */
@ApplicationScoped
class CourseBook {

    private static final LocalDate EARLIEST = LocalDate.of(1900, 1, 1);

    /** Further ahead is a slip of the pen (common practice, no source). */
    private static final int YEARS_AHEAD = 20;

    private final Courses courses;
    private final Memberships memberships;
    private final Persons persons;
    private final Today today;

    CourseBook(Courses courses, Memberships memberships, Persons persons, Today today) {
        this.courses = courses;
        this.memberships = memberships;
        this.persons = persons;
        this.today = today;
    }

    CourseEntity open(NewCourse course) {
        check(course);
        var entity = new CourseEntity();
        entity.name = course.name().strip();
        entity.startsOn = course.startsOn();
        entity.endsOn = course.endsOn();
        courses.persistAndFlush(entity);
        return entity;
    }

    private void check(NewCourse course) {
        var faults = new ArrayList<Fault>();
        var latest = today.date().plusYears(YEARS_AHEAD);
        within("startsOn", course.startsOn(), latest, faults);
        within("endsOn", course.endsOn(), latest, faults);
        if (faults.isEmpty() && course.endsOn().isBefore(course.startsOn())) {
            faults.add(
                    new Fault(
                            "endsOn",
                            "expected the first day %s or later, found %s"
                                    .formatted(course.startsOn(), course.endsOn())));
        }
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults);
        }
    }

    private static void within(String field, LocalDate day, LocalDate latest, List<Fault> faults) {
        if (day.isBefore(EARLIEST) || day.isAfter(latest)) {
            faults.add(
                    new Fault(
                            field,
                            "expected a day from %s to %s, found %s"
                                    .formatted(EARLIEST, latest, day)));
        }
    }

    void join(long courseId, long personId, Role as) {
        var course = courses.require(courseId);
        var person = persons.require(personId);
        if (as == Role.REGISTRAR) {
            throw Refused.invalid("as", "expected student or instructor, found registrar");
        }
        if (!person.active || !person.roles.contains(as)) {
            throw Refused.conflict(
                    "%s is no %s of the school.".formatted(person.name, word(as)),
                    "Maybe another person was meant, or the role is still to be given.");
        }
        var known = memberships.of(courseId, personId);
        if (known.isEmpty()) {
            add(courseId, personId, as);
        } else if (known.get().role != as) {
            throw Refused.conflict(
                    "%s is already %s of %s."
                            .formatted(person.name, word(known.get().role), course.name),
                    null);
        }
    }

    private void add(long courseId, long personId, Role as) {
        var membership = new MembershipEntity();
        membership.courseId = courseId;
        membership.personId = personId;
        membership.role = as;
        memberships.persistAndFlush(membership);
    }

    private static String word(Role role) {
        return role.name().toLowerCase(Locale.ROOT);
    }
}
