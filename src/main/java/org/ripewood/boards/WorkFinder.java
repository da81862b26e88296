package org.ripewood.boards;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.people.Courses;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.people.Person;
import org.ripewood.people.Roster;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.standing.SubjectGatherer;
import org.ripewood.standing.TreeOnDay;
import org.ripewood.steps.StepBrief;
import org.ripewood.steps.WaiverBook;
import org.ripewood.trees.TreeDays;

/** Finds what could be done with trees of a course, in a number of queries that stays the same. */
@ApplicationScoped
@Transactional
public class WorkFinder {

    private final Courses courses;
    private final PeopleUnchecked peopleUnchecked;
    private final SubjectGatherer gatherer;
    private final WaiverBook waivers;
    private final TreeDays treeDays;

    WorkFinder(
            Courses courses,
            PeopleUnchecked peopleUnchecked,
            SubjectGatherer gatherer,
            WaiverBook waivers,
            TreeDays treeDays) {
        this.courses = courses;
        this.peopleUnchecked = peopleUnchecked;
        this.gatherer = gatherer;
        this.waivers = waivers;
        this.treeDays = treeDays;
    }

    /**
     * What could be done with trees of a course on a day, forecasts included; for those who run the
     * course, whose members were just read. In the order of the trees asked for; trees that are not
     * there are left out.
     */
    public List<DayWork> on(Roster roster, Collection<Long> treeIds, LocalDate on) {
        roster.requireRuns("what its trees could do");
        var students = roster.students();
        var then = gatherer.many(treeIds, students, on);
        if (then.isEmpty()) {
            return List.of();
        }
        var here = treeDays.ofKeepers(students.stream().map(Person::id).toList());
        var now = here.isBefore(on) ? byTree(treeIds, students, here) : null;
        var waived = seasonWaived(then);
        var teller = new DayWorkText(then.get(0).content());
        return then.stream()
                .map(
                        tree ->
                                teller.tell(
                                        tree,
                                        now == null
                                                ? tree
                                                : now.getOrDefault(tree.tree().id(), tree),
                                        waived))
                .toList();
    }

    private Map<Long, TreeOnDay> byTree(
            Collection<Long> treeIds, Collection<Person> students, LocalDate here) {
        return gatherer.many(treeIds, students, here).stream()
                .collect(Collectors.toMap(tree -> tree.tree().id(), tree -> tree));
    }

    /**
     * When each technique could be done on trees of a course, as of today; for those who run it.
     * Trees that are not there are left out.
     */
    public List<TreeOutlooks> outlooks(Actor actor, long courseId, Collection<Long> treeIds) {
        courses.requireRuns(actor, courseId, "what its trees could do");
        var students = peopleUnchecked.members(courseId, Role.STUDENT);
        return gatherer.many(treeIds, students, treeDays.ofCourse(courseId)).stream()
                .map(tree -> new TreeOutlooks(tree.tree(), tree.openings()))
                .toList();
    }

    private Set<Long> seasonWaived(List<TreeOnDay> trees) {
        var stepIds =
                trees.stream()
                        .flatMap(tree -> tree.open().values().stream())
                        .map(StepBrief::id)
                        .toList();
        return waivers.of(stepIds).stream()
                .filter(waiver -> "season".equals(waiver.reasonKey))
                .map(waiver -> waiver.stepId)
                .collect(Collectors.toSet());
    }
}
