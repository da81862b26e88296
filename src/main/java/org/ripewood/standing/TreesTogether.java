package org.ripewood.standing;

import static java.util.Objects.requireNonNull;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ripewood.platform.Actor;
import org.ripewood.trees.CourseTrees;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeDays;

/**
 * How one technique stands for many trees of a course, in a number of queries that does not depend
 * on how many; each tree is judged by the day at its own site.
 */
@ApplicationScoped
@Transactional
public class TreesTogether {

    private final CourseTrees courseTrees;
    private final SubjectGatherer gatherer;
    private final TreeDays treeDays;

    TreesTogether(CourseTrees courseTrees, SubjectGatherer gatherer, TreeDays treeDays) {
        this.courseTrees = courseTrees;
        this.gatherer = gatherer;
        this.treeDays = treeDays;
    }

    /**
     * How the technique stands for each of these trees of a course, in their order. For those who
     * run the course; 400 names trees that are not of it, or the technique when there is no such.
     */
    public List<Of> look(Actor actor, long courseId, String technique, List<Long> treeIds) {
        var course = courseTrees.chosen(actor, courseId, treeIds, "tree[%d]");
        var days = of(course);
        return course.trees().stream()
                .map(tree -> told(requireNonNull(days.get(tree.id())), technique))
                .toList();
    }

    /** A tree with how the technique stands for it. */
    public record Of(Tree tree, LocalDate on, TechniqueStanding standing) {}

    private static Of told(TreeOnDay day, String technique) {
        return new Of(day.tree(), day.on(), day.tell(AssignmentCheck.standing(day, technique)));
    }

    /** Trees of a course, by id, each judged on the day at its site. */
    Map<Long, TreeOnDay> of(CourseTrees.InCourse course) {
        var bySite = course.trees().stream().collect(Collectors.groupingBy(Tree::siteId));
        var byDay =
                bySite.entrySet().stream()
                        .collect(
                                Collectors.groupingBy(
                                        site -> treeDays.atSite(site.getKey()),
                                        Collectors.flatMapping(
                                                site -> site.getValue().stream(),
                                                Collectors.toList())));
        var found = new HashMap<Long, TreeOnDay>();
        byDay.forEach(
                (day, trees) ->
                        gatherer.of(trees, course.roster().students(), day)
                                .forEach(one -> found.put(one.tree().id(), one)));
        return found;
    }
}
