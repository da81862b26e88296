package org.ripewood.asks;

import static java.util.Objects.requireNonNull;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hibernate.exception.ConstraintViolationException;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.CourseContent;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.steps.StepAssigned;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;
import org.ripewood.trees.TreesUnchecked;

/**
 * What keepers ask of their instructors: to be given a step, or a question at a technique. Answered
 * by an instructor's words, and an ask for a step also by assigning it. One answer each; both stay.
 */
@ApplicationScoped
@Transactional
public class Asks {

    /** Answers are told at home for so long (common practice, no source). */
    private static final Duration TOLD = Duration.ofDays(14);

    private final AskRows rows;
    private final AnswerRows answers;
    private final Trees trees;
    private final TreesUnchecked treesUnchecked;
    private final People people;
    private final CourseContent content;
    private final Today today;

    Asks(
            AskRows rows,
            AnswerRows answers,
            Trees trees,
            TreesUnchecked treesUnchecked,
            People people,
            CourseContent content,
            Today today) {
        this.rows = rows;
        this.answers = answers;
        this.trees = trees;
        this.treesUnchecked = treesUnchecked;
        this.people = people;
        this.content = content;
        this.today = today;
    }

    /**
     * Asks something at a technique of a tree; its keeper only. The same words again count once;
     * 409 for other words while the first wait for an answer.
     */
    public Ask ask(Actor actor, long treeId, NewAsk asked) {
        trees.requireHere(actor, treeId);
        requireKeeper(actor, treeId);
        var code = asked.technique().strip();
        requireTechnique(code);
        var words = asked.words() == null || asked.words().isBlank() ? null : asked.words().strip();
        if (words == null && asked.kind() == AskKind.QUESTION) {
            throw Refused.invalid("words", "Write what you want to know.");
        }
        var before = rows.open(treeId, code, asked.kind());
        if (before != null) {
            if (Objects.equals(before.words, words)) {
                return told(List.of(before), Set.of()).get(0);
            }
            throw alreadyAsked(code);
        }
        return told(List.of(keep(actor, treeId, code, asked.kind(), words)), Set.of()).get(0);
    }

    private AskEntity keep(
            Actor actor, long treeId, String technique, AskKind kind, @Nullable String words) {
        var row = new AskEntity();
        row.treeId = treeId;
        row.technique = technique;
        row.kind = kind;
        row.words = words;
        row.byId = actor.personId();
        row.askedAt = today.now();
        row.openFor = AskEntity.openFor(treeId, technique, kind);
        try {
            rows.persistAndFlush(row);
        } catch (ConstraintViolationException quicker) {
            throw alreadyAsked(technique);
        }
        return row;
    }

    /**
     * Answers in words; instructors who reach the tree only. The same words again count once; 409
     * when it was answered otherwise or taken back.
     */
    public Ask answer(Actor actor, long treeId, long askId, NewAnswer answer) {
        var row = reached(actor, treeId, askId);
        actor.require(Role.INSTRUCTOR, "answer what students ask");
        trees.requireHere(actor, row.treeId);
        var words = answer.words().strip();
        if (row.openFor == null) {
            var before = answers.of(List.of(askId)).get(askId);
            if (before == null || !words.equals(before.words)) {
                throw Refused.conflict(
                        before == null ? "It was taken back." : "It is answered already.", null);
            }
        } else {
            close(row, actor, words, null);
        }
        return told(List.of(row), trees.hiddenKeepers(actor, row.treeId)).get(0);
    }

    /** Takes back what was asked and not answered yet; whoever asked only. */
    public Ask takeBack(Actor actor, long treeId, long askId) {
        var row = reached(actor, treeId, askId);
        trees.requireHere(actor, treeId);
        if (row.byId != actor.personId()) {
            throw Refused.forbidden("Only whoever asked may take it back.");
        }
        if (row.openFor != null) {
            row.close(today.now());
            rows.flush();
        } else if (answers.of(List.of(askId)).containsKey(askId)) {
            throw Refused.conflict("It is answered already.", null);
        }
        return told(List.of(row), Set.of()).get(0);
    }

    /** What was asked of a tree within reach, latest first, at most 50; 404 otherwise. */
    public List<Ask> of(Actor actor, long treeId) {
        trees.get(actor, treeId);
        var found = rows.ofTree(treeId);
        return found.isEmpty() ? List.of() : told(found, trees.hiddenKeepers(actor, treeId));
    }

    /** What waits for this instructor's answer, longest first, at most 50; nothing for others. */
    public List<AskWaiting> waiting(Actor actor) {
        if (!actor.is(Role.INSTRUCTOR) || !rows.anyOpen()) {
            return List.of();
        }
        return named(rows.openOf(people.reachable(actor)), true);
    }

    /** What this person asked and was answered of late, latest first. */
    public List<AskWaiting> answeredOf(Actor actor) {
        return named(rows.answered(actor.personId(), today.now().minus(TOLD)), false);
    }

    /** An instructor who assigns the step has answered whoever asked for it. */
    void assigned(@Observes StepAssigned step) {
        var row = rows.open(step.treeId(), step.technique(), AskKind.STEP);
        if (row != null) {
            close(row, step.by(), null, step.stepId());
        }
    }

    private void close(AskEntity row, Actor by, @Nullable String words, @Nullable Long stepId) {
        var answer = new AnswerEntity();
        answer.askId = requireNonNull(row.id);
        answer.words = words;
        answer.stepId = stepId;
        answer.byId = by.personId();
        answer.answeredAt = today.now();
        answers.persist(answer);
        row.close(today.now());
        rows.flush();
    }

    private AskEntity reached(Actor actor, long treeId, long askId) {
        trees.get(actor, treeId);
        return rows.toAnswer(askId)
                .filter(row -> row.treeId == treeId)
                .orElseThrow(() -> Refused.notFound("ask", askId));
    }

    private void requireKeeper(Actor actor, long treeId) {
        if (trees.get(actor, treeId).keeperId() != actor.personId()) {
            throw Refused.forbidden("Only the tree's keeper asks; an instructor assigns.");
        }
    }

    private void requireTechnique(String code) {
        var known = content.inForce().techniques();
        if (!known.containsKey(code)) {
            throw Refused.invalid(
                    "technique",
                    "There is no technique “%s”.".formatted(code)
                            + Suggestion.maybe(known.keySet(), code));
        }
    }

    private Refused alreadyAsked(String technique) {
        return Refused.conflict(
                "You asked about “%s” already, and nobody has answered yet."
                        .formatted(content.inForce().titleOf(technique)),
                "Maybe take the first back, and ask anew.");
    }

    private List<AskWaiting> named(List<AskEntity> found, boolean allOpen) {
        if (found.isEmpty()) {
            return List.of();
        }
        var asks = allOpen ? told(found, Map.of(), Set.of()) : told(found, Set.of());
        var byId =
                treesUnchecked
                        .byIds(asks.stream().map(Ask::treeId).collect(Collectors.toSet()))
                        .stream()
                        .collect(Collectors.toMap(Tree::id, Function.identity()));
        var persons = new HashSet<Long>();
        for (var ask : asks) {
            persons.add(ask.byId());
            if (ask.answer() != null) {
                persons.add(ask.answer().byId());
            }
        }
        var names = people.names(persons);
        return asks.stream()
                .map(
                        ask ->
                                new AskWaiting(
                                        ask,
                                        requireNonNull(byId.get(ask.treeId())).label(),
                                        names.getOrDefault(ask.byId(), ""),
                                        ask.answer() == null
                                                ? null
                                                : names.getOrDefault(ask.answer().byId(), "")))
                .toList();
    }

    private List<Ask> told(Collection<AskEntity> found, Set<Long> hidden) {
        return told(found, answers.of(found.stream().map(row -> row.id).toList()), hidden);
    }

    private List<Ask> told(
            Collection<AskEntity> found, Map<Long, AnswerEntity> answered, Set<Long> hidden) {
        var inForce = content.inForce();
        return found.stream()
                .map(
                        row -> {
                            var id = requireNonNull(row.id);
                            var answer = answered.get(id);
                            return new Ask(
                                    id,
                                    row.treeId,
                                    row.technique,
                                    inForce.titleOf(row.technique),
                                    row.kind,
                                    hidden.contains(row.byId) ? null : row.words,
                                    row.byId,
                                    row.askedAt,
                                    answer == null ? null : answer.told(),
                                    answer == null && row.closedAt != null);
                        })
                .toList();
    }
}
