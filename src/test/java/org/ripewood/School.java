package org.ripewood;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.assess.Assessments;
import org.ripewood.assess.NewSkillJudgement;
import org.ripewood.people.Course;
import org.ripewood.people.Courses;
import org.ripewood.people.NewCourse;
import org.ripewood.people.NewPerson;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.records.NewObservation;
import org.ripewood.records.NewWound;
import org.ripewood.records.Observations;
import org.ripewood.records.Wound;
import org.ripewood.records.Wounds;
import org.ripewood.sites.NewSite;
import org.ripewood.sites.Site;
import org.ripewood.sites.SiteLine;
import org.ripewood.trees.NewTree;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeSites;
import org.ripewood.trees.Trees;

/** A small invented school for tests of rooms, on the fixed day of {@link SchoolProfile}. */
@ApplicationScoped
public class School {

    public static final LocalDate TODAY = LocalDate.of(2026, 2, 20);

    private static final Actor OFFICE = new Actor(0, Set.of(Role.REGISTRAR));

    private final AtomicInteger count = new AtomicInteger();
    private final Courses courses;
    private final PersonRegistration register;
    private final Trees trees;
    private final Observations observations;
    private final Wounds wounds;
    private final TreeSites treeSites;
    private final Assessments assessments;

    public School(
            Courses courses,
            PersonRegistration register,
            Trees trees,
            Observations observations,
            Wounds wounds,
            TreeSites treeSites,
            Assessments assessments) {
        this.courses = courses;
        this.register = register;
        this.trees = trees;
        this.observations = observations;
        this.wounds = wounds;
        this.treeSites = treeSites;
        this.assessments = assessments;
    }

    /** A course with one instructor and one student. */
    public record Group(Course course, Actor instructor, Actor student) {}

    public Group newGroup() {
        var course =
                courses.open(
                        OFFICE,
                        new NewCourse(
                                "Course " + count.incrementAndGet(),
                                TODAY.minusYears(1),
                                TODAY.plusYears(1)));
        var instructor = person("Ines Instructor", Role.INSTRUCTOR);
        var student = person("Stan Student", Role.STUDENT);
        courses.join(OFFICE, course.id(), instructor.personId(), Role.INSTRUCTOR);
        courses.join(OFFICE, course.id(), student.personId(), Role.STUDENT);
        return new Group(course, instructor, student);
    }

    public Actor person(String name, Role... roles) {
        var number = count.incrementAndGet();
        var person =
                register.enter(
                        OFFICE,
                        new NewPerson(
                                name + " " + number,
                                "person-" + number,
                                "long enough a password",
                                Set.of(roles)));
        return new Actor(person.id(), Set.of(roles));
    }

    public void join(Group to, Actor person, Role as) {
        courses.join(OFFICE, to.course().id(), person.personId(), as);
    }

    public Tree tree(Actor by, Actor keeper, String species) {
        return trees.enter(
                by,
                new NewTree(
                        "Tree " + count.incrementAndGet(),
                        species,
                        keeper.personId(),
                        site().id(),
                        TODAY.minusYears(3),
                        null,
                        null));
    }

    public void see(Actor by, Tree tree, String fact, String value) {
        see(by, tree, fact, value, TODAY.minusDays(5));
    }

    public void see(Actor by, Tree tree, String fact, String value, LocalDate on) {
        observations.observe(by, tree.id(), observation(fact, value, on, null, null));
    }

    public void seeTrunk(Actor by, Tree tree, double heightMm, double diameterMm) {
        observations.observe(
                by,
                tree.id(),
                observation(
                        "trunk_diameter_mm",
                        String.valueOf(diameterMm),
                        TODAY.minusDays(5),
                        null,
                        heightMm));
    }

    public Wound wound(Actor by, Tree tree, String place, double widthMm) {
        return wound(by, tree, place, widthMm, TODAY.minusDays(60));
    }

    public Wound wound(Actor by, Tree tree, String place, double widthMm, LocalDate madeOn) {
        return wounds.add(
                by,
                tree.id(),
                new NewWound(place, madeOn, widthMm, widthMm + 5, null, null, false));
    }

    public void readWound(Actor by, Tree tree, Wound wound, double openMm) {
        observations.observe(
                by,
                tree.id(),
                observation("wound_open_mm", String.valueOf(openMm), TODAY, wound.id(), null));
    }

    public void showSkill(Actor instructor, Actor student, String lesson) {
        assessments.judge(
                instructor,
                student.personId(),
                new NewSkillJudgement(lesson, true, TODAY.minusDays(30), null));
    }

    private static NewObservation observation(
            String fact,
            String value,
            LocalDate on,
            @Nullable Long woundId,
            @Nullable Double heightMm) {
        return new NewObservation(fact, value, on, null, woundId, null, heightMm, null);
    }

    private synchronized Site site() {
        return treeSites.list(OFFICE).stream()
                .map(SiteLine::place)
                .filter(place -> place != null && place.schoolGround())
                .findFirst()
                .orElseGet(
                        () ->
                                treeSites.enter(
                                        person("Orla Office", Role.REGISTRAR),
                                        new NewSite("Yard", 51.0, 7.0, "UTC", true, null, null)));
    }
}
