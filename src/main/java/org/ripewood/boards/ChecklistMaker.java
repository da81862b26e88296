package org.ripewood.boards;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Verdict;
import org.ripewood.platform.Actor;
import org.ripewood.standing.SubjectGatherer;
import org.ripewood.standing.TechniquePriority;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.standing.TreeLook;
import org.ripewood.standing.TreeOnDay;
import org.ripewood.steps.Step;
import org.ripewood.steps.StepBrief;
import org.ripewood.steps.StepHistories;
import org.ripewood.steps.StepState;

/**
 * Makes a tree's checklist: do now, ready to be asked for, waiting and why, measure, done, care.
 */
@ApplicationScoped
@Transactional
public class ChecklistMaker {

    private static final Set<Verdict> WAITING =
            Set.of(Verdict.HELD, Verdict.SEASON, Verdict.LESSON);

    private final SubjectGatherer gatherer;
    private final StepHistories teller;

    ChecklistMaker(SubjectGatherer gatherer, StepHistories teller) {
        this.gatherer = gatherer;
        this.teller = teller;
    }

    /** A student's checklist for a tree. */
    public Checklist make(Actor actor, long treeId, LocalDate on) {
        return of(gatherer.look(actor, treeId, on));
    }

    /** The same of a tree that was just looked at. */
    public Checklist of(TreeLook look) {
        var tree = look.day();
        return new Checklist(
                look.tree().id(),
                look.on(),
                tree.tellStage(),
                look.careNow(),
                items(tree, StepState::isWithStudent),
                ready(tree).stream().map(tree::tell).toList(),
                items(tree, state -> state == StepState.REPORTED),
                waiting(tree),
                MeasureNext.of(tree),
                done(tree),
                care(tree, look.steps()));
    }

    /** Steps whose work was reported or signed off, the latest work first. */
    private static List<StepBrief> worked(List<StepBrief> steps) {
        return steps.stream()
                .filter(step -> WORKED.contains(step.state()) && step.doneOn() != null)
                .sorted(LATEST_WORK_FIRST)
                .toList();
    }

    /**
     * Sent-back steps first, then those due soonest; steps whose technique is gone are left out.
     */
    private List<Checklist.Item> items(TreeOnDay tree, Predicate<StepState> which) {
        return teller.told(open(tree, which)).stream().map(step -> item(tree, step)).toList();
    }

    /** Steps the student has, in the same order. */
    static List<StepBrief> withStudent(TreeOnDay tree) {
        return open(tree, StepState::isWithStudent);
    }

    /** Steps that wait for an instructor's look, in the same order. */
    static List<StepBrief> reported(TreeOnDay tree) {
        return open(tree, state -> state == StepState.REPORTED);
    }

    /**
     * Steps that are ready and that nobody was given, the most useful first; none of a tree that
     * left the school.
     */
    static List<Standing> ready(TreeOnDay tree) {
        return tree.tree().left()
                ? List.of()
                : tree.free().stream()
                        .sorted(new TechniquePriority(tree.content()).mostUsefulFirst())
                        .toList();
    }

    private static List<StepBrief> open(TreeOnDay tree, Predicate<StepState> which) {
        return tree.open().values().stream()
                .filter(step -> which.test(step.state()))
                .filter(step -> tree.find(step.technique()).isPresent())
                .sorted(SENT_BACK_FIRST)
                .toList();
    }

    private static final Set<StepState> WORKED = Set.of(StepState.SIGNED_OFF, StepState.REPORTED);

    private static final Comparator<StepBrief> LATEST_WORK_FIRST =
            Comparator.comparing(StepBrief::doneOn).thenComparing(StepBrief::id).reversed();

    static final Comparator<StepBrief> SENT_BACK_FIRST =
            Comparator.<StepBrief, Boolean>comparing(step -> step.state() != StepState.SENT_BACK)
                    .thenComparing(
                            step -> step.until(), Comparator.nullsLast(Comparator.naturalOrder()))
                    .thenComparing(StepBrief::id);

    private static Checklist.Item item(TreeOnDay tree, Step step) {
        var standing = tree.find(step.technique()).orElseThrow();
        return new Checklist.Item(
                step, tree.content().technique(step.technique()), tree.tell(standing));
    }

    private static List<TechniqueStanding> waiting(TreeOnDay tree) {
        return waitingStandings(tree).map(tree::tell).toList();
    }

    /** Those of the tree's stage and the next come first. */
    static Stream<Standing> waitingStandings(TreeOnDay tree) {
        var near = tree.stage().order() + 1;
        return tree.standings().stream()
                .filter(standing -> WAITING.contains(standing.verdict()))
                .filter(standing -> !tree.isCare(standing))
                .filter(standing -> !tree.open().containsKey(standing.technique()))
                .sorted(Comparator.comparing(standing -> stageOrder(tree, standing) > near));
    }

    private static int stageOrder(TreeOnDay tree, Standing standing) {
        return tree.content().technique(standing.technique()).rule().stageOrder();
    }

    /** What was signed off on a tree, the latest first. */
    public static List<Checklist.Done> done(TreeOnDay tree) {
        return tree.subject().signedOff().entrySet().stream()
                .map(entry -> done(tree, entry))
                .sorted(
                        Comparator.comparing(Checklist.Done::doneOn)
                                .reversed()
                                .thenComparing(Checklist.Done::title))
                .toList();
    }

    private static Checklist.Done done(TreeOnDay tree, Map.Entry<String, LocalDate> entry) {
        var technique = tree.content().techniques().get(entry.getKey());
        if (technique == null) {
            return new Checklist.Done(entry.getKey(), entry.getKey(), entry.getValue(), null);
        }
        var repeat = technique.rule().repeatAfterDays();
        return new Checklist.Done(
                entry.getKey(),
                technique.title(),
                entry.getValue(),
                repeat == null ? null : entry.getValue().plusDays(repeat));
    }

    /**
     * The tree needs its care from the day of the work, not from the day somebody signs; of
     * repeated work the latest counts.
     */
    public static List<Checklist.Care> care(TreeOnDay tree, List<StepBrief> given) {
        var care = new ArrayList<Checklist.Care>();
        var told = new HashSet<String>();
        for (var step : worked(given)) {
            var technique = tree.content().techniques().get(step.technique());
            var doneOn = step.doneOn();
            if (technique == null
                    || doneOn == null
                    || doneOn.isAfter(tree.on())
                    || !told.add(step.technique())) {
                continue;
            }
            for (var after : technique.aftercare()) {
                var from = doneOn.plusDays(after.fromDay());
                var until = from.plusDays(Math.max(1, after.days()) - 1L);
                if (!tree.on().isBefore(from) && !tree.on().isAfter(until)) {
                    care.add(new Checklist.Care(after.task(), technique.title(), from, until));
                }
            }
        }
        care.sort(Comparator.comparing(Checklist.Care::until));
        return care;
    }
}
