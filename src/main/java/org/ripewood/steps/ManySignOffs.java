package org.ripewood.steps;

import static java.util.Objects.requireNonNull;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ripewood.course.CourseContent;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.trees.CourseTrees;
import org.ripewood.trees.Tree;

/** Reported steps of a course, listed and signed off together. */
@ApplicationScoped
@Transactional
public class ManySignOffs {

    private static final int STALE = 412;
    private static final int MOST = 100;

    private final CourseTrees courseTrees;
    private final StepBook steps;
    private final StepHistories histories;
    private final SignOffs signOffs;
    private final CourseContent content;

    ManySignOffs(
            CourseTrees courseTrees,
            StepBook steps,
            StepHistories histories,
            SignOffs signOffs,
            CourseContent content) {
        this.courseTrees = courseTrees;
        this.steps = steps;
        this.histories = histories;
        this.signOffs = signOffs;
        this.content = content;
    }

    /** A reported step with its tree and what the technique is called. */
    public record Reported(Tree tree, String title, Step step) {}

    /**
     * Reported steps of these trees of a course that the actor may sign off, oldest first, at most
     * 100; their own trees are left out. In a number of queries that does not depend on how many.
     */
    public List<Reported> reported(Actor actor, long courseId, List<Long> treeIds) {
        var trees =
                courseTrees.chosen(actor, courseId, treeIds, "tree[%d]").trees().stream()
                        .filter(tree -> tree.keeperId() != actor.personId())
                        .collect(Collectors.toMap(Tree::id, Function.identity()));
        var found =
                trees.isEmpty()
                        ? List.<StepEntity>of()
                        : steps.reported(trees.keySet(), new PageRequest(0, MOST));
        return histories.told(found.stream().map(StepEntity::brief).toList()).stream()
                .map(step -> reported(requireNonNull(trees.get(step.treeId())), step))
                .toList();
    }

    private Reported reported(Tree tree, Step step) {
        return new Reported(tree, content.inForce().titleOf(step.technique()), step);
    }

    /**
     * Signs reported steps of a course off as {@link SignOffs#signOff} does, all or none.
     * Instructors of the course only. When one cannot be signed off the refusal names its tree.
     */
    public List<Step> signOffAll(Actor actor, long courseId, NewSignOffs wanted) {
        actor.require(Role.INSTRUCTOR, "sign a step off");
        var trees =
                courseTrees.of(actor, courseId).trees().stream()
                        .collect(Collectors.toMap(Tree::id, Function.identity()));
        var ids = wanted.steps().stream().map(NewSignOffs.OfStep::stepId).toList();
        var byId =
                steps.byIds(ids).stream()
                        .collect(Collectors.toMap(StepEntity::id, Function.identity()));
        var ofCourse =
                byId.values().stream()
                        .filter(step -> trees.containsKey(step.treeId))
                        .map(StepEntity::id)
                        .collect(Collectors.toSet());
        requireOfCourse(ids, ofCourse);
        var signed = new ArrayList<Step>();
        for (int i = 0; i < ids.size(); i++) {
            var one = wanted.steps().get(i);
            var step = requireNonNull(byId.get(one.stepId()));
            try {
                signed.add(signOffs.signOff(actor, one.stepId(), one.version(), wanted.note()));
            } catch (Refused refused) {
                throw named(i, refused.problem(), step, requireNonNull(trees.get(step.treeId)));
            }
        }
        return signed;
    }

    private static void requireOfCourse(List<Long> ids, Set<Long> ofCourse) {
        var named = new HashSet<Long>();
        var faults = new ArrayList<Fault>();
        for (int i = 0; i < ids.size(); i++) {
            var id = ids.get(i);
            var field = "steps[%d].stepId".formatted(i);
            if (!ofCourse.contains(id)) {
                faults.add(new Fault(field, "Step %d is not one of this course.".formatted(id)));
            } else if (!named.add(id)) {
                faults.add(new Fault(field, "Step %d is named twice.".formatted(id)));
            }
        }
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults);
        }
    }

    /** The refusal with its step and tree; one that somebody changed is told by its version. */
    private Refused named(int place, Problem problem, StepEntity step, Tree tree) {
        var faults =
                problem.status() == STALE
                        ? List.of(new Fault("steps[%d].version".formatted(place), problem.detail()))
                        : problem.faults();
        return new Refused(
                new Problem(
                        problem.status(),
                        problem.kind(),
                        problem.title(),
                        "“%s” of %s: %s No step was signed off."
                                .formatted(
                                        content.inForce().titleOf(step.technique),
                                        tree.label(),
                                        problem.detail()),
                        problem.maybe(),
                        faults));
    }
}
