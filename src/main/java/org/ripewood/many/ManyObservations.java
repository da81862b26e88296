package org.ripewood.many;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.MeasurementSeries;
import org.ripewood.records.Observation;
import org.ripewood.records.Observations;
import org.ripewood.records.Question;
import org.ripewood.trees.CourseTrees;

/** One fact recorded for many trees of a course at once. */
@ApplicationScoped
@Transactional
public class ManyObservations {

    private final CourseTrees courseTrees;
    private final MeasurementSeries series;
    private final Observations observations;

    ManyObservations(CourseTrees courseTrees, MeasurementSeries series, Observations observations) {
        this.courseTrees = courseTrees;
        this.series = series;
        this.observations = observations;
    }

    /**
     * What became of it: everything is kept, or nothing is and something is asked.
     *
     * @param asked questions nobody has said yes to; empty when all is on record
     */
    public record Outcome(List<Observation> stored, List<AskedOf> asked) {
        public Outcome {
            stored = List.copyOf(stored);
            asked = List.copyOf(asked);
        }
    }

    /** What is asked of one tree. */
    public record AskedOf(long treeId, String tree, Question question) {}

    /**
     * Records a fact for each of these trees as {@link MeasurementSeries#observe} would, or for
     * none. Trees for which the value looks odd are asked about first, all of them at once.
     *
     * @throws Refused 400 when a tree is not of the course, 400 or 409 with the tree's name when
     *     one of them cannot be recorded
     */
    public Outcome observe(Actor actor, long courseId, NewFactOfMany seen) {
        var ids = seen.trees().stream().map(NewFactOfMany.OfTree::treeId).toList();
        var trees = courseTrees.chosen(actor, courseId, ids, "trees[%d].treeId").trees();
        var asked = new ArrayList<AskedOf>();
        for (int i = 0; i < trees.size(); i++) {
            var tree = trees.get(i);
            var entry = seen.of(seen.trees().get(i));
            try {
                for (var question : series.questions(actor, tree.id(), entry)) {
                    asked.add(new AskedOf(tree.id(), tree.label(), question));
                }
            } catch (Refused refused) {
                throw named(refused.problem(), tree.label());
            }
        }
        if (!asked.isEmpty()) {
            return new Outcome(List.of(), asked);
        }
        var stored = new ArrayList<Observation>();
        for (int i = 0; i < trees.size(); i++) {
            var entry = seen.of(seen.trees().get(i));
            stored.add(observations.observe(actor, trees.get(i).id(), entry));
        }
        return new Outcome(stored, List.of());
    }

    /** The same refusal, with the tree it is about. */
    private static Refused named(Problem problem, String label) {
        return new Refused(
                new Problem(
                        problem.status(),
                        problem.kind(),
                        problem.title(),
                        "%s: %s Nothing was recorded.".formatted(label, problem.detail()),
                        problem.maybe(),
                        problem.faults()));
    }
}
