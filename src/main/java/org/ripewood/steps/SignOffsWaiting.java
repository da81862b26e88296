package org.ripewood.steps;

import static java.util.Objects.requireNonNull;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;
import org.ripewood.course.CourseContent;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.Role;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreesUnchecked;

/** Reported steps an instructor may sign off: those of trees in reach that are not their own. */
@ApplicationScoped
@Transactional
public class SignOffsWaiting {

    private final StepBook steps;
    private final People people;
    private final TreesUnchecked treesUnchecked;
    private final CourseContent content;

    SignOffsWaiting(
            StepBook steps, People people, TreesUnchecked treesUnchecked, CourseContent content) {
        this.steps = steps;
        this.people = people;
        this.treesUnchecked = treesUnchecked;
        this.content = content;
    }

    /** Reported steps that wait for this instructor, oldest first. */
    public Paged<Waiting> forInstructor(Actor actor, PageRequest page) {
        if (!actor.is(Role.INSTRUCTOR)) {
            return Paged.of(List.of(), page, 0);
        }
        var me = actor.personId();
        var reached = people.reachable(actor);
        if (reached == null) {
            return paged(
                    steps.reportedByOthers(me, page), page, () -> steps.countReportedByOthers(me));
        }
        var students = reached.stream().filter(keeper -> keeper != me).toList();
        return students.isEmpty()
                ? Paged.of(List.of(), page, 0)
                : paged(
                        steps.reportedBy(students, page),
                        page,
                        () -> steps.countReportedBy(students));
    }

    /** All are counted only where there are more than one page shows. */
    private Paged<Waiting> paged(List<StepEntity> reported, PageRequest page, LongSupplier count) {
        var isAll = page.page() == 0 && reported.size() < page.size();
        return Paged.of(told(reported), page, isAll ? reported.size() : count.getAsLong());
    }

    private List<Waiting> told(List<StepEntity> reported) {
        if (reported.isEmpty()) {
            return List.of();
        }
        var ids = reported.stream().map(step -> step.treeId).distinct().toList();
        Map<Long, Tree> byId =
                treesUnchecked.byIds(ids).stream()
                        .collect(Collectors.toMap(Tree::id, tree -> tree));
        var keepers = byId.values().stream().map(Tree::keeperId).distinct().toList();
        var names = people.names(keepers);
        return reported.stream()
                .map(step -> told(step, requireNonNull(byId.get(step.treeId)), names))
                .toList();
    }

    private Waiting told(StepEntity step, Tree tree, Map<Long, String> names) {
        Instant reportedAt = requireNonNull(step.reportedAt);
        return new Waiting(
                step.id(),
                tree.id(),
                tree.label(),
                names.getOrDefault(tree.keeperId(), ""),
                step.technique,
                content.inForce().titleOf(step.technique),
                reportedAt);
    }
}
