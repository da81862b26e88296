package org.ripewood.standing;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import org.ripewood.condition.Growth;
import org.ripewood.people.Person;
import org.ripewood.records.Branch;
import org.ripewood.records.ContainerStay;
import org.ripewood.records.WorkDone;
import org.ripewood.steps.StepBrief;
import org.ripewood.trees.ReachedTree;
import org.ripewood.trees.Tree;

/**
 * All that is known of a tree within reach on a day, read once and judged once. Pages, papers and
 * answers about it follow from this without reading more.
 *
 * @param steps every step it was given, the latest first
 */
public record TreeLook(ReachedTree reached, Person keeper, TreeOnDay day, List<StepBrief> steps) {

    private static final Comparator<ContainerStay> LATEST_STAY_FIRST =
            Comparator.comparing(ContainerStay::since).thenComparing(ContainerStay::id).reversed();

    private static final Comparator<WorkDone> LATEST_WORK_FIRST =
            Comparator.comparing(WorkDone::doneOn).thenComparing(WorkDone::id).reversed();

    public TreeLook {
        steps = List.copyOf(steps);
    }

    /** The tree with what is said of it, as the reader may read it. */
    public Tree tree() {
        return reached.tree();
    }

    public LocalDate on() {
        return day.on();
    }

    /** How every technique stands. */
    public TreeStanding standing() {
        return new TreeStanding(
                tree().id(),
                on(),
                day.content().revision(),
                day.stage().code(),
                day.tellStage(),
                day.standings().stream().map(day::tell).toList());
    }

    /**
     * READY techniques without an open step, most useful first; none of a tree that left the
     * school.
     *
     * @param standing as {@link #standing} told it
     */
    public List<TechniqueStanding> proposals(TreeStanding standing) {
        if (tree().left()) {
            return List.of();
        }
        var told = new HashMap<String, TechniqueStanding>();
        standing.techniques().forEach(one -> told.put(one.technique(), one));
        return day.free().stream()
                .sorted(new TechniquePriority(day.content()).mostUsefulFirst())
                .map(free -> told.get(free.technique()))
                .toList();
    }

    /** Care that may be given now, in telling order; none of a tree that left the school. */
    public List<TechniqueStanding> careNow() {
        return tree().left() ? List.of() : day.careNow().stream().map(day::tell).toList();
    }

    /** How its wounds are going to close, and how its trunk thickens. */
    public Growth growth() {
        return day.state().growth();
    }

    /** Its branches with their latest readings, also those taken off. */
    public List<Branch> branches() {
        return day.state().record().everyBranch();
    }

    /** What it stood in, the latest first. */
    public List<ContainerStay> containers() {
        return day.state().record().containers().stream().sorted(LATEST_STAY_FIRST).toList();
    }

    /** The same, and whether it was signed off. */
    public List<WorkTold> worksTold() {
        return WorkTold.of(works(), steps);
    }

    /** Work done on it, the latest first, with the words that are for the reader. */
    public List<WorkDone> works() {
        return day.state().works().stream()
                .sorted(LATEST_WORK_FIRST)
                .map(done -> done.withNote(reached.words(done.byId(), done.note())))
                .toList();
    }
}
