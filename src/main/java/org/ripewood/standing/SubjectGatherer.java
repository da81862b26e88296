package org.ripewood.standing;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.assess.Assessments;
import org.ripewood.condition.StatesUnchecked;
import org.ripewood.condition.TreeState;
import org.ripewood.core.progress.Subject;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.meters.Meter;
import org.ripewood.platform.meters.Meters;
import org.ripewood.platform.problems.Refused;
import org.ripewood.sites.Sites;
import org.ripewood.steps.StepBook;
import org.ripewood.steps.StepBrief;
import org.ripewood.trees.ReachedTree;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;

/** Brings together what the engine has to know of trees, and asks it. */
@ApplicationScoped
public class SubjectGatherer {

    static final int FIRST_YEAR = 1900;

    /** Further ahead nobody can say how a tree will stand. */
    static final int YEARS_AHEAD = 10;

    private final Trees trees;
    private final Sites sites;
    private final StatesUnchecked states;
    private final PeopleUnchecked people;
    private final Assessments assessments;
    private final CourseContent content;
    private final StepBook steps;
    private final Today today;
    private final Meters meters;

    SubjectGatherer(
            Trees trees,
            Sites sites,
            StatesUnchecked states,
            PeopleUnchecked people,
            Assessments assessments,
            CourseContent content,
            StepBook steps,
            Today today,
            Meters meters) {
        this.trees = trees;
        this.sites = sites;
        this.states = states;
        this.people = people;
        this.assessments = assessments;
        this.content = content;
        this.steps = steps;
        this.today = today;
        this.meters = meters;
    }

    /** One tree within reach; 404 otherwise. */
    public TreeOnDay one(Actor actor, long treeId, LocalDate on) {
        return look(actor, treeId, on).day();
    }

    /** The same with all that was read for it. */
    public TreeLook look(Actor actor, long treeId, LocalDate on) {
        var reached = trees.reached(actor, treeId);
        requireDay(on);
        return look(reached, states.of(reached, on));
    }

    /** The same on the day it is at the tree's site, which is read once for both. */
    public TreeLook lookToday(Actor actor, long treeId) {
        var reached = trees.reached(actor, treeId);
        var siteId = reached.tree().siteId();
        var site = Objects.requireNonNull(sites.byIds(Set.of(siteId)).get(siteId));
        return look(reached, states.of(reached, site, today.in(site.zone())));
    }

    private TreeLook look(ReachedTree reached, TreeState state) {
        var treeId = reached.tree().id();
        var inForce = content.inForce();
        var keeper = people.get(reached.tree().keeperId());
        var given = steps.all(treeId);
        var skills = skillsOf(List.of(keeper));
        var day =
                judge(
                        inForce,
                        state,
                        lastDone(given, state.on()),
                        skills.get(keeper.id()),
                        open(given));
        return new TreeLook(reached, keeper, day, given);
    }

    private static Map<String, LocalDate> lastDone(List<StepBrief> steps, LocalDate on) {
        return steps.stream()
                .filter(step -> step.state().isDone())
                .filter(step -> step.doneOn() != null && !step.doneOn().isAfter(on))
                .collect(
                        Collectors.toMap(
                                StepBrief::technique,
                                StepBrief::doneOn,
                                BinaryOperator.maxBy(Comparator.naturalOrder())));
    }

    private static Map<String, StepBrief> open(List<StepBrief> steps) {
        return steps.stream()
                .filter(step -> step.state().isOpen())
                .collect(Collectors.toMap(StepBrief::technique, step -> step));
    }

    /**
     * Many trees, in a number of queries that does not depend on how many; no reach is asked.
     *
     * @param keepers the persons who keep them
     */
    public List<TreeOnDay> many(
            Collection<Long> treeIds, Collection<Person> keepers, LocalDate on) {
        requireDay(on);
        return treeIds.isEmpty()
                ? List.of()
                : gather(
                        states.on(treeIds, on).values(), skillsOf(keepers), steps.all(treeIds), on);
    }

    /** The same of trees that were just read. */
    public List<TreeOnDay> of(List<Tree> trees, Collection<Person> keepers, LocalDate on) {
        return of(trees, students(keepers), steps.all(idsOf(trees)), on);
    }

    /**
     * The same, with the steps they were given, which were just read.
     *
     * @param students ids of those keepers who are students
     * @param given every step of each tree; trees without any may be absent
     */
    public List<TreeOnDay> of(
            List<Tree> trees, Set<Long> students, Map<Long, List<StepBrief>> given, LocalDate on) {
        requireDay(on);
        return trees.isEmpty()
                ? List.of()
                : gather(states.of(trees, on), assessments.skills(students), given, on);
    }

    private static List<Long> idsOf(List<Tree> trees) {
        return trees.stream().map(Tree::id).toList();
    }

    private List<TreeOnDay> gather(
            Collection<TreeState> trees,
            Map<Long, Set<String>> skills,
            Map<Long, List<StepBrief>> given,
            LocalDate on) {
        var inForce = content.inForce();
        return trees.stream()
                .map(
                        state -> {
                            var tree = state.tree();
                            var steps = given.getOrDefault(tree.id(), List.of());
                            return judge(
                                    inForce,
                                    state,
                                    lastDone(steps, on),
                                    skills.get(tree.keeperId()),
                                    open(steps));
                        })
                .toList();
    }

    private TreeOnDay judge(
            Content content,
            TreeState state,
            Map<String, LocalDate> signedOff,
            @Nullable Set<String> skills,
            Map<String, StepBrief> open) {
        var subject = subject(content, state, signedOff, skills);
        var openings =
                meters.time(
                        Meter.TREE_JUDGED, () -> content.rulebook().openings(subject, state.on()));
        return new TreeOnDay(content, state, subject, openings, open);
    }

    /**
     * A tree as the engine sees it.
     *
     * @param skills of its keeper; null when the keeper is no student
     */
    public static Subject subject(
            Content content,
            TreeState state,
            Map<String, LocalDate> signedOff,
            @Nullable Set<String> skills) {
        var traits = content.kindOf(state.tree().species()).traits();
        return new Subject(
                traits,
                state.facts(),
                state.ledger(),
                signedOff,
                skills,
                state.stages(),
                state.place(),
                state.forecasts(),
                state.growing());
    }

    /** Only students have skills to show; everybody else is trusted with the work. */
    private Map<Long, Set<String>> skillsOf(Collection<Person> keepers) {
        return assessments.skills(students(keepers));
    }

    private static Set<Long> students(Collection<Person> keepers) {
        return keepers.stream()
                .filter(person -> person.roles().contains(Role.STUDENT))
                .map(Person::id)
                .collect(Collectors.toSet());
    }

    private void requireDay(LocalDate on) {
        var last = today.date().plusYears(YEARS_AHEAD);
        if (on.getYear() < FIRST_YEAR || on.isAfter(last)) {
            throw Refused.invalid(
                    "on",
                    "Expected a day from %d to %s; found %s.".formatted(FIRST_YEAR, last, on));
        }
    }
}
