package org.ripewood.standing;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.assess.Assessments;
import org.ripewood.condition.StatesUnchecked;
import org.ripewood.condition.TreeState;
import org.ripewood.condition.TreeStates;
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
import org.ripewood.steps.StepBook;
import org.ripewood.trees.Trees;

/** Brings together what the engine has to know of trees, and asks it. */
@ApplicationScoped
public class SubjectGatherer {

    static final int FIRST_YEAR = 1900;

    /** Further ahead nobody can say how a tree will stand. */
    static final int YEARS_AHEAD = 10;

    private final Trees trees;
    private final TreeStates treeStates;
    private final StatesUnchecked statesUnchecked;
    private final PeopleUnchecked peopleUnchecked;
    private final Assessments assessments;
    private final CourseContent content;
    private final StepBook steps;
    private final Today today;
    private final Meters meters;

    SubjectGatherer(
            Trees trees,
            TreeStates treeStates,
            StatesUnchecked statesUnchecked,
            PeopleUnchecked peopleUnchecked,
            Assessments assessments,
            CourseContent content,
            StepBook steps,
            Today today,
            Meters meters) {
        this.trees = trees;
        this.treeStates = treeStates;
        this.statesUnchecked = statesUnchecked;
        this.peopleUnchecked = peopleUnchecked;
        this.assessments = assessments;
        this.content = content;
        this.steps = steps;
        this.today = today;
        this.meters = meters;
    }

    /** One tree within reach; 404 otherwise. */
    public TreeOnDay one(Actor actor, long treeId, LocalDate on) {
        trees.get(actor, treeId);
        requireDay(on);
        var state = treeStates.on(actor, treeId, on);
        var keeper = peopleUnchecked.get(state.tree().keeperId());
        return gather(List.of(state), studentsOf(List.of(keeper)), on).get(0);
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
                : gather(statesUnchecked.on(treeIds, on).values(), studentsOf(keepers), on);
    }

    private List<TreeOnDay> gather(Collection<TreeState> states, Set<Long> students, LocalDate on) {
        var inForce = content.inForce();
        var ids = states.stream().map(state -> state.tree().id()).toList();
        var open = steps.open(ids);
        var done = steps.lastDone(ids, on);
        var skills = assessments.skills(students);
        return states.stream()
                .map(
                        state -> {
                            var tree = state.tree();
                            var signedOff = done.getOrDefault(tree.id(), Map.of());
                            var subject =
                                    subject(inForce, state, signedOff, skills.get(tree.keeperId()));
                            return new TreeOnDay(
                                    inForce,
                                    state,
                                    subject,
                                    meters.time(
                                            Meter.TREE_JUDGED,
                                            () -> inForce.rulebook().openings(subject, on)),
                                    open.getOrDefault(tree.id(), Map.of()));
                        })
                .toList();
    }

    private static Subject subject(
            Content content,
            TreeState state,
            Map<String, LocalDate> signedOff,
            @Nullable Set<String> skills) {
        var traits = content.species(state.tree().species()).traits();
        return new Subject(
                traits,
                state.facts(),
                state.ledger(),
                signedOff,
                skills,
                state.stages(),
                state.forecasts());
    }

    /** Only students have skills to show; everybody else is trusted with the work. */
    private static Set<Long> studentsOf(Collection<Person> keepers) {
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
