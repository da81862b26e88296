package org.ripewood.trees;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.people.Courses;
import org.ripewood.people.NewCourse;
import org.ripewood.people.NewPerson;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.sites.NewSite;
import org.ripewood.sites.Site;

/** A small school of its own for each test: one course with a teacher and two students. */
public final class School {

    private static final AtomicInteger LOGINS = new AtomicInteger();

    private final PersonRegistration register;
    private final Courses courses;
    private final Trees trees;
    private final LocalDate today;

    public final Actor registrar;
    public final Actor teacher;
    public final Actor otherTeacher;
    public final Actor keeper;
    public final Actor otherStudent;
    public final long courseId;
    final Site site;

    public School(
            PersonRegistration register,
            Courses courses,
            Trees trees,
            TreeSites treeSites,
            LocalDate today) {
        this.register = register;
        this.courses = courses;
        this.trees = trees;
        this.today = today;
        this.registrar = person(Role.REGISTRAR);
        this.teacher = person(Role.INSTRUCTOR);
        this.otherTeacher = person(Role.INSTRUCTOR);
        this.keeper = person(Role.STUDENT);
        this.otherStudent = person(Role.STUDENT);
        this.courseId = course(teacher, List.of(keeper, otherStudent));
        course(otherTeacher, List.of(person(Role.STUDENT)));
        this.site =
                treeSites.enter(
                        teacher, new NewSite("Lower yard", 50.0, 8.0, "UTC", true, null, null));
    }

    public Tree tree() {
        return tree("Maple by the gate");
    }

    public Tree tree(String label) {
        return trees.enter(teacher, newTree(label));
    }

    public NewTree newTree(String label) {
        return new NewTree(
                label,
                "acer_palmatum",
                keeper.personId(),
                site.id(),
                today.minusYears(2),
                "nursery stock",
                null);
    }

    private Actor person(Role role) {
        // Anybody who is a registrar may enter persons; that there is one is not asked here.
        var office = new Actor(0, Set.of(Role.REGISTRAR));
        var login = "trees-" + LOGINS.incrementAndGet();
        var entered =
                register.enter(
                        office,
                        new NewPerson(
                                "Person " + login, login, "quite a long password", Set.of(role)));
        return new Actor(entered.id(), Set.of(role));
    }

    private long course(Actor teaches, List<Actor> attend) {
        var course =
                courses.open(
                        registrar,
                        new NewCourse("Course", today.minusYears(1), today.plusYears(1)));
        courses.join(registrar, course.id(), teaches.personId(), Role.INSTRUCTOR);
        attend.forEach(
                student -> courses.join(registrar, course.id(), student.personId(), Role.STUDENT));
        return course.id();
    }
}
