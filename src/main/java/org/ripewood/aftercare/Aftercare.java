package org.ripewood.aftercare;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.condition.StatesUnchecked;
import org.ripewood.condition.TreeState;
import org.ripewood.condition.TreeStates;
import org.ripewood.core.season.CareState;
import org.ripewood.core.season.Span;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Technique;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeDays;
import org.ripewood.trees.Trees;
import org.ripewood.trees.TreesUnchecked;

/**
 * Care after work on trees. Tasks follow from the record and the content in force and are worked
 * out each time; what people say of them is kept.
 */
@ApplicationScoped
@Transactional
public class Aftercare {

    /** Tasks done, not needed or over are told for so many days more. */
    static final int TOLD_AFTERWARDS_DAYS = 60;

    private static final Comparator<MeasuringDay> SOONEST_FIRST =
            Comparator.comparing(MeasuringDay::by).thenComparing(MeasuringDay::id);

    private final Trees trees;
    private final TreeStates treeStates;
    private final TreesUnchecked treesUnchecked;
    private final StatesUnchecked statesUnchecked;
    private final People people;
    private final CourseContent content;
    private final WordRows rows;
    private final WordBook book;
    private final Today today;
    private final TreeDays treeDays;

    Aftercare(
            Trees trees,
            TreeStates treeStates,
            TreesUnchecked treesUnchecked,
            StatesUnchecked statesUnchecked,
            People people,
            CourseContent content,
            WordRows rows,
            WordBook book,
            Today today,
            TreeDays treeDays) {
        this.trees = trees;
        this.treeStates = treeStates;
        this.treesUnchecked = treesUnchecked;
        this.statesUnchecked = statesUnchecked;
        this.people = people;
        this.content = content;
        this.rows = rows;
        this.book = book;
        this.today = today;
        this.treeDays = treeDays;
    }

    /**
     * Care of a tree within reach as it stands on a day; 404 otherwise. Of one that left the school
     * only what is done, not needed or over.
     */
    public Care of(Actor actor, long treeId, LocalDate on) {
        return of(treeStates.on(actor, treeId, on));
    }

    /** The same of a tree that was just read. */
    public Care of(TreeState state) {
        var on = state.on();
        var tasks = tasks(state);
        var here = !state.tree().left();
        return new Care(
                on,
                tasks.stream()
                        .filter(task -> here || !task.open())
                        .filter(task -> toldOn(task, on))
                        .toList(),
                MeasuringDays.by(content.inForce()).of(state).stream()
                        .filter(day -> here)
                        .sorted(SOONEST_FIRST)
                        .toList(),
                worked(List.of(state)));
    }

    /**
     * Open care of the trees of a person within reach, 404 otherwise, as it stands today: what is
     * late, and what is in time on a day of the span; looks that repeat are told as if each were
     * taken when it is due. In a number of queries that does not depend on how many trees.
     */
    public Care ofKeeper(Actor actor, long keeperId, Span span) {
        if (!people.reaches(actor, keeperId)) {
            throw Refused.notFound("person", keeperId);
        }
        var ids = treesUnchecked.ofKeepers(List.of(keeperId)).stream().map(Tree::id).toList();
        var on = treeDays.ofKeepers(List.of(keeperId));
        return of(statesUnchecked.on(ids, on).values(), span);
    }

    /** The same of trees that were just read, as they stand today. */
    public Care of(Collection<TreeState> states, Span span) {
        var on =
                states.stream()
                        .map(TreeState::on)
                        .max(Comparator.naturalOrder())
                        .orElseGet(today::date);
        var words = words(states, on);
        var measuring = MeasuringDays.by(content.inForce());
        return new Care(
                on,
                states.stream()
                        .flatMap(state -> tasks(state, words, span.to()).stream())
                        .filter(task -> isIn(task, span))
                        .sorted(CareTask.DUE_FIRST)
                        .toList(),
                states.stream()
                        .flatMap(state -> measuring.of(state).stream())
                        .filter(day -> span.holds(day.by()))
                        .sorted(SOONEST_FIRST)
                        .toList(),
                worked(states));
    }

    private Map<Long, Set<String>> worked(Collection<TreeState> states) {
        var techniques = content.inForce().techniques();
        return states.stream()
                .collect(
                        Collectors.toMap(
                                state -> state.tree().id(),
                                state ->
                                        state.works().stream()
                                                .map(done -> done.work().technique())
                                                .map(techniques::get)
                                                .filter(Objects::nonNull)
                                                .map(Technique::title)
                                                .collect(Collectors.toSet())));
    }

    /**
     * Keeps what the keeper, or an instructor who reaches the tree, says of a task. The same word
     * sent twice counts once; another word on a task already spoken of is refused with what was
     * said (409), unless it corrects it.
     *
     * @param taskId as told; 404 when the tree has no such task
     */
    public CareTask say(Actor actor, long treeId, String taskId, Saying what, NewWord word) {
        var tree = trees.get(actor, treeId);
        if (tree.keeperId() != actor.personId()) {
            actor.require(Role.INSTRUCTOR, "speak of care of a tree they do not keep");
        }
        trees.requireHere(actor, treeId);
        var state = treeStates.on(actor, treeId, treeDays.at(treeId));
        var before = tasks(state);
        var task = find(before, taskId);
        var key = keyOf(taskId);
        book.keep(
                actor,
                task,
                key,
                what,
                word,
                neighbour(before, key, -1),
                neighbour(before, key, 1) != null);
        return find(tasks(state), taskId);
    }

    private List<CareTask> tasks(TreeState state) {
        var on = state.on();
        return tasks(state, words(List.of(state), on), on);
    }

    private List<CareTask> tasks(TreeState state, Words words, LocalDate until) {
        return TreeTasks.of(content.inForce(), state, words, until);
    }

    /** Of trees without work nothing is asked: every task follows from some. */
    private Words words(Collection<TreeState> states, LocalDate on) {
        var treeIds =
                states.stream()
                        .filter(state -> !state.works().isEmpty())
                        .map(state -> state.tree().id())
                        .toList();
        var latest = rows.latest(treeIds, on);
        var speakers = latest.values().stream().map(word -> word.byId).collect(Collectors.toSet());
        return speakers.isEmpty()
                ? new Words(latest, Map.of(), Map.of())
                : new Words(latest, people.names(speakers), treesUnchecked.formerKeepers(treeIds));
    }

    private static boolean isIn(CareTask task, Span span) {
        return task.open()
                && (task.span().meets(span)
                        || (task.state() == CareState.LATE && !task.to().isAfter(span.to())));
    }

    private static boolean toldOn(CareTask task, LocalDate on) {
        var said = task.said();
        var last = said == null || said.on().isBefore(task.to()) ? task.to() : said.on();
        return task.open() || !last.plusDays(TOLD_AFTERWARDS_DAYS).isBefore(on);
    }

    private static CareTask find(List<CareTask> tasks, String taskId) {
        return tasks.stream()
                .filter(task -> task.id().equals(taskId))
                .findFirst()
                .orElseThrow(() -> Refused.notFound("aftercare task", taskId));
    }

    /** The key of a task that was found by its text. */
    private static TaskKey keyOf(String taskId) {
        int first = taskId.indexOf('-');
        int last = taskId.lastIndexOf('-');
        return new TaskKey(
                Long.parseLong(taskId.substring(0, first)),
                taskId.substring(first + 1, last),
                Integer.parseInt(taskId.substring(last + 1)));
    }

    /** The day spoken for the look before or after; null when there is none or nobody spoke. */
    private static @Nullable LocalDate neighbour(List<CareTask> tasks, TaskKey key, int away) {
        var text = new TaskKey(key.workId(), key.task(), key.time() + away).text();
        return tasks.stream()
                .filter(task -> task.id().equals(text))
                .map(CareTask::said)
                .filter(Objects::nonNull)
                .map(CareTask.Said::on)
                .findFirst()
                .orElse(null);
    }
}
