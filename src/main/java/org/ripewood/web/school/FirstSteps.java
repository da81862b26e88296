package org.ripewood.web.school;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.people.Course;
import org.ripewood.people.Courses;
import org.ripewood.people.Membership;
import org.ripewood.people.People;
import org.ripewood.people.Sample;
import org.ripewood.people.Samples;
import org.ripewood.platform.Actor;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.school.NameShown;
import org.ripewood.trees.TreeSites;
import org.ripewood.trees.Trees;

/**
 * What a school needs before its first verdict, in the order that works, as the home page tells
 * registrars and instructors until there is a tree and the school has a name.
 */
@Named("firstSteps")
@RequestScoped
public class FirstSteps {

    private static final PageRequest ONE = new PageRequest(0, 1);

    /** Something to do first, and whether it is done. */
    public record FirstStep(String title, String why, String href, boolean done) {}

    private final CurrentUser user;
    private final NameShown school;
    private final People people;
    private final Courses courses;
    private final Samples samples;
    private final TreeSites sites;
    private final Trees trees;
    private @Nullable List<FirstStep> steps;

    FirstSteps(
            CurrentUser user,
            NameShown school,
            People people,
            Courses courses,
            Samples samples,
            TreeSites sites,
            Trees trees) {
        this.user = user;
        this.school = school;
        this.people = people;
        this.courses = courses;
        this.samples = samples;
        this.sites = sites;
        this.trees = trees;
    }

    /** The steps in their order; none once the first tree stands here under the school's name. */
    public List<FirstStep> getSteps() {
        var known = steps;
        if (known == null) {
            known = found(user.actor());
            steps = known;
        }
        return known;
    }

    private List<FirstStep> found(Actor actor) {
        var registrar = actor.is(Role.REGISTRAR);
        if (!registrar && !actor.is(Role.INSTRUCTOR)) {
            return List.of();
        }
        var named = !school.name().isEmpty();
        var planted = trees.isPlanted();
        if (planted && (named || !registrar)) {
            return List.of();
        }
        var found = new ArrayList<FirstStep>();
        if (registrar) {
            found.add(step("Name the school", "It stands on every sheet.", "/school", named));
            found.add(
                    step(
                            "Invite people",
                            "One by one, or a whole class from a list.",
                            "/people/many",
                            people.everybody(actor, ONE, "").total() - samples.madeUp().size()
                                    > 1));
            found.addAll(ofCourses(actor));
        }
        found.add(
                step(
                        "Add a site",
                        "A tree stands somewhere, and the season goes by it.",
                        "/sites/new",
                        sites.list(actor).size() > madeSites()));
        found.add(
                step(
                        "Enter the first tree",
                        "Start with one in front of you.",
                        "/trees/new",
                        planted));
        return found;
    }

    private List<FirstStep> ofCourses(Actor actor) {
        var made = samples.all().stream().map(Sample::courseId).toList();
        var open = courses.list(actor).stream().filter(one -> !made.contains(one.id())).toList();
        var rosters = courses.memberships(actor, open.stream().map(Course::id).toList()).values();
        var outside =
                actor.is(Role.INSTRUCTOR)
                        && rosters.stream().noneMatch(all -> isIn(all, actor, Role.INSTRUCTOR));
        return List.of(
                step(
                        "Open a course",
                        "With its first and its last day.",
                        "/people#courses",
                        !open.isEmpty()),
                step(
                        "Add people to the course",
                        "Its instructors see the trees of its students."
                                + (outside ? " You teach, and belong to no course yet." : ""),
                        "/people#courses",
                        rosters.stream()
                                .anyMatch(
                                        all ->
                                                has(all, Role.INSTRUCTOR)
                                                        && has(all, Role.STUDENT))));
    }

    /** What is made up to be tried is not the school's own, and takes no step for it. */
    private long madeSites() {
        return samples.all().stream().filter(sample -> sample.siteId() != null).count();
    }

    private static boolean isIn(List<Membership> all, Actor actor, Role as) {
        return all.stream().anyMatch(one -> one.personId() == actor.personId() && isNow(one, as));
    }

    private static boolean has(List<Membership> all, Role as) {
        return all.stream().anyMatch(one -> isNow(one, as));
    }

    private static boolean isNow(Membership one, Role as) {
        return one.as() == as && one.leftOn() == null;
    }

    private static FirstStep step(String title, String why, String href, boolean done) {
        return new FirstStep(title, why, href, done);
    }
}
