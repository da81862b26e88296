package org.ripewood.boards;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.ripewood.condition.TreeState;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.readiness.StylingHeld;
import org.ripewood.standing.SubjectGatherer;
import org.ripewood.standing.TechniquePriority;
import org.ripewood.standing.TreeOnDay;
import org.ripewood.steps.StepBook;
import org.ripewood.steps.StepBrief;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeDays;

/**
 * The trees of somebody's first page: their own, and those of the courses they teach. Read and
 * judged at once, in a number of queries that does not depend on how many trees or courses.
 */
@ApplicationScoped
@Transactional
public class HomeTrees {

    /** As many of one's own trees are told of one by one. */
    public static final int MOST_OWN = 20;

    private final PeopleUnchecked people;
    private final SubjectGatherer gatherer;
    private final StepBook steps;
    private final TreeDays treeDays;

    HomeTrees(PeopleUnchecked people, SubjectGatherer gatherer, StepBook steps, TreeDays treeDays) {
        this.people = people;
        this.gatherer = gatherer;
        this.steps = steps;
        this.treeDays = treeDays;
    }

    /**
     * What a first page tells of trees.
     *
     * @param on the day it is where the trees stand
     * @param ownCount how many trees the person keeps
     * @param own the first {@link #MOST_OWN} of them by label, with what comes next
     * @param states all of their own trees
     * @param lessons lessons their own trees wait for, the one that frees most first
     * @param headlines how many trees of each taught course each headline leads
     * @param styling how many trees of each taught course are held from styling
     */
    public record Seen(
            LocalDate on,
            int ownCount,
            List<TreeNext> own,
            List<TreeState> states,
            List<LessonNeed> lessons,
            Map<Long, Map<Board.Headline, Integer>> headlines,
            Map<Long, StylingHeld> styling) {

        public Seen {
            own = List.copyOf(own);
            states = List.copyOf(states);
            lessons = List.copyOf(lessons);
            headlines = Map.copyOf(headlines);
            styling = Map.copyOf(styling);
        }
    }

    /**
     * The trees of the actor and of courses they teach.
     *
     * @param taught ids of courses the actor teaches
     */
    public Seen of(Actor actor, Collection<Long> taught) {
        var students = people.members(taught, Role.STUDENT);
        var keepers = idsOf(students.values(), student -> true);
        var learning = idsOf(students.values(), student -> student.roles().contains(Role.STUDENT));
        keepers.add(actor.personId());
        if (actor.is(Role.STUDENT)) {
            learning.add(actor.personId());
        }
        var known = treeDays.keptBy(keepers);
        var kept = known.trees();
        var on = known.on();
        var given = steps.all(kept.stream().map(Tree::id).toList());
        var gathered =
                gatherer.of(kept, learning, given, on).stream()
                        .collect(Collectors.groupingBy(tree -> tree.tree().keeperId()));
        var own = ownOf(actor, gathered);
        return new Seen(
                on,
                own.size(),
                next(own.stream().limit(MOST_OWN).toList(), given),
                own.stream().map(TreeOnDay::state).toList(),
                own.isEmpty() || !actor.is(Role.STUDENT)
                        ? List.of()
                        : LessonsNext.of(own.get(0).content(), own),
                headlines(students, gathered),
                styling(students, gathered, on));
    }

    private static Set<Long> idsOf(Collection<List<Person>> courses, Predicate<Person> which) {
        return courses.stream()
                .flatMap(List::stream)
                .filter(which)
                .map(Person::id)
                .collect(Collectors.toCollection(HashSet::new));
    }

    private static Map<Long, StylingHeld> styling(
            Map<Long, List<Person>> students, Map<Long, List<TreeOnDay>> byKeeper, LocalDate on) {
        var styling = new HashMap<Long, StylingHeld>();
        students.forEach(
                (course, members) ->
                        styling.put(
                                course,
                                StylingHeld.of(
                                        members.stream()
                                                .flatMap(
                                                        one ->
                                                                byKeeper
                                                                        .getOrDefault(
                                                                                one.id(), List.of())
                                                                        .stream())
                                                .toList(),
                                        on)));
        return styling;
    }

    private static List<TreeOnDay> ownOf(Actor actor, Map<Long, List<TreeOnDay>> byKeeper) {
        return byKeeper.getOrDefault(actor.personId(), List.of()).stream()
                .sorted(BY_LABEL)
                .toList();
    }

    private static final Comparator<TreeOnDay> BY_LABEL =
            Comparator.comparing((TreeOnDay tree) -> tree.tree().label())
                    .thenComparing(tree -> tree.tree().id());

    private static List<TreeNext> next(List<TreeOnDay> own, Map<Long, List<StepBrief>> given) {
        return own.stream()
                .map(tree -> next(tree, given.getOrDefault(tree.tree().id(), List.of())))
                .toList();
    }

    private static TreeNext next(TreeOnDay tree, List<StepBrief> given) {
        var content = tree.content();
        var measure = MeasureNext.of(tree);
        var ready = ChecklistMaker.ready(tree);
        return new TreeNext(
                tree.tree(),
                content.kindOf(tree.tree().species()).common(),
                ChecklistMaker.withStudent(tree).stream()
                        .map(
                                step ->
                                        new TreeNext.Given(
                                                step,
                                                content.technique(step.technique()),
                                                tree.tell(
                                                        tree.find(step.technique()).orElseThrow())))
                        .toList(),
                ChecklistMaker.reported(tree).stream()
                        .map(step -> content.titleOf(step.technique()))
                        .toList(),
                ready.isEmpty() ? null : tree.tell(ready.get(0)),
                Math.max(0, ready.size() - 1),
                measure.isEmpty() ? null : measure.get(0).title(),
                ChecklistMaker.waitingStandings(tree).findFirst().map(tree::tell).orElse(null),
                ChecklistMaker.care(tree, given));
    }

    private static Map<Long, Map<Board.Headline, Integer>> headlines(
            Map<Long, List<Person>> students, Map<Long, List<TreeOnDay>> byKeeper) {
        var leading = leading(byKeeper);
        var headlines = new HashMap<Long, Map<Board.Headline, Integer>>();
        students.forEach(
                (course, members) -> {
                    var counts = new EnumMap<Board.Headline, Integer>(Board.Headline.class);
                    members.stream()
                            .flatMap(
                                    member -> leading.getOrDefault(member.id(), List.of()).stream())
                            .forEach(headline -> counts.merge(headline, 1, Integer::sum));
                    headlines.put(course, counts);
                });
        return headlines;
    }

    /** What leads each tree, by keeper: worked out once, however many courses a keeper is in. */
    private static Map<Long, List<Board.Headline>> leading(Map<Long, List<TreeOnDay>> byKeeper) {
        var leading = new HashMap<Long, List<Board.Headline>>();
        byKeeper.forEach(
                (keeper, kept) -> {
                    var headlines = new Headlines(new TechniquePriority(kept.get(0).content()));
                    leading.put(
                            keeper,
                            kept.stream().map(tree -> headlines.of(tree).headline()).toList());
                });
        return leading;
    }
}
