package org.ripewood.trees;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ripewood.people.Courses;
import org.ripewood.people.Person;
import org.ripewood.people.Roster;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;

/**
 * The trees of a course: those at the school that its students keep. For those who run the course;
 * 404 for a course out of reach, 403 for one that is not run. What is done to many trees at once
 * asks this first, so that no tree is asked for by itself.
 */
@ApplicationScoped
@Transactional
public class CourseTrees {

    private static final Comparator<Tree> BY_LABEL =
            Comparator.comparing(Tree::label).thenComparing(Tree::id);

    private final Courses courses;
    private final TreesUnchecked unchecked;

    CourseTrees(Courses courses, TreesUnchecked unchecked) {
        this.courses = courses;
        this.unchecked = unchecked;
    }

    /**
     * A course with its trees.
     *
     * @param trees by label, without what is said of them
     */
    public record InCourse(Roster roster, List<Tree> trees) {
        public InCourse {
            trees = List.copyOf(trees);
        }
    }

    /** A course with all its trees. */
    public InCourse of(Actor actor, long courseId) {
        var roster = courses.roster(actor, courseId);
        roster.requireRuns("all its trees at once");
        var keepers = roster.students().stream().map(Person::id).toList();
        return new InCourse(
                roster, unchecked.ofKeepers(keepers).stream().sorted(BY_LABEL).toList());
    }

    /**
     * A course with those of its trees that are named, in that order.
     *
     * @param field what a faulty one is told at, with its place from 0 in it, such as {@code
     *     trees[%d].treeId}
     * @throws Refused 400 with every tree that is not one of the course, or named twice
     */
    public InCourse chosen(Actor actor, long courseId, List<Long> treeIds, String field) {
        var all = of(actor, courseId);
        var byId = all.trees().stream().collect(Collectors.toMap(Tree::id, Function.identity()));
        var named = new HashSet<Long>();
        var faults = new ArrayList<Fault>();
        for (int i = 0; i < treeIds.size(); i++) {
            var id = treeIds.get(i);
            if (!byId.containsKey(id)) {
                faults.add(
                        new Fault(
                                field.formatted(i),
                                "Tree %d is not one that a student of the course keeps."
                                        .formatted(id)));
            } else if (!named.add(id)) {
                faults.add(new Fault(field.formatted(i), "Tree %d is named twice.".formatted(id)));
            }
        }
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults);
        }
        return new InCourse(all.roster(), treeIds.stream().map(byId::get).toList());
    }
}
