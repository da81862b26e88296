package org.ripewood.web.judgements;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.assess.Judged;
import org.ripewood.assess.Judgement;
import org.ripewood.assess.Judgements;
import org.ripewood.assess.NewJudgement;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Rubric;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.platform.problems.Refused;
import org.ripewood.trees.TreeDays;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.EditConflicts;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.Label;

/** Lays out the judgements of a tree or a student, and reads the form for one. */
@ApplicationScoped
class JudgementPageAssembler {

    static final String FORM = "judge";
    private static final long NO_DRAFT = 0;
    private static final int ROWS = 30;
    private static final String LEVEL = "level";

    /** What the form says beside the judgement itself. */
    record Beside(@Nullable Long version, @Nullable String then) {}

    private final CurrentUser user;
    private final Judgements judgements;
    private final CourseContent content;
    private final People people;
    private final Trees trees;
    private final Inputs inputs;
    private final EditConflicts clashes;
    private final TreeDays treeDays;

    JudgementPageAssembler(
            CurrentUser user,
            Judgements judgements,
            CourseContent content,
            People people,
            Trees trees,
            Inputs inputs,
            EditConflicts clashes,
            TreeDays treeDays) {
        this.user = user;
        this.judgements = judgements;
        this.content = content;
        this.people = people;
        this.trees = trees;
        this.inputs = inputs;
        this.clashes = clashes;
        this.treeDays = treeDays;
    }

    JudgementPageModel lay(Judged of, int page, FormState typed) {
        var actor = user.actor();
        var list = judgements.list(actor, of, new PageRequest(page, ROWS));
        var latest = judgements.latest(actor, of);
        return new JudgementPageModel(
                address(of),
                home(of),
                name(actor, of),
                of.subject() == Rubric.Subject.TREE ? trees.get(actor, of.id()) : null,
                rubrics(of),
                latest.stream().collect(Collectors.toMap(Judgement::rubric, Function.identity())),
                list,
                people.names(
                        Stream.concat(latest.stream(), list.items().stream())
                                .map(Judgement::byId)
                                .collect(Collectors.toSet())),
                judges(actor, of),
                actor.personId(),
                typed);
    }

    private LocalDate day(Judged of) {
        return of.subject() == Rubric.Subject.TREE
                ? treeDays.at(of.id())
                : treeDays.ofKeepers(Set.of(of.id()));
    }

    /** The form, with the judge's draft in it when there is one. */
    JudgePageModel form(Judged of, String rubric, @Nullable Long corrects) {
        var actor = user.actor();
        var draft = judgements.findDraft(actor, of, rubric);
        var typed =
                draft.map(JudgementPageAssembler::typed)
                        .orElseGet(() -> FormState.fresh(FORM).with("judgedOn", day(of)));
        if (draft.isEmpty() && corrects != null) {
            typed = typed(judgements.get(actor, corrects), corrects);
        }
        return form(of, rubric, typed);
    }

    JudgePageModel form(Judged of, String rubric, FormState typed) {
        var actor = user.actor();
        var name = name(actor, of);
        var found =
                rubrics(of).stream()
                        .filter(one -> one.code().equals(rubric))
                        .findFirst()
                        .orElseThrow(() -> Refused.notFound("rubric", rubric));
        var draft = judgements.findDraft(actor, of, rubric);
        var now = draft.map(JudgementPageAssembler::typed).orElseGet(() -> FormState.fresh(FORM));
        var id = draft.map(Judgement::id).orElse(NO_DRAFT);
        var about = new EditConflicts.About("rubric_judgement", id, labels(found), people::names);
        return new JudgePageModel(address(of), name, found, clashes.mend(typed, now, about));
    }

    private static List<Label> labels(Rubric rubric) {
        return List.of(
                new Label(LEVEL, "Level", level -> word(rubric, level)),
                Label.of("judgedOn", "Day"),
                Label.of("note", "What was seen"),
                new Label(
                        "secondWanted",
                        "Second judge wanted",
                        wanted -> wanted.equals("true") ? "yes" : "no"));
    }

    private static String word(Rubric rubric, String level) {
        return rubric.levels().stream()
                .filter(one -> level.equals(String.valueOf(one.level())))
                .map(one -> level + ", " + one.word())
                .findFirst()
                .orElse(level);
    }

    /** Keeps or signs what the form says; answers the address to go on to. */
    String take(Judged of, String rubric, MultivaluedMap<String, String> form) {
        var fields = new MultivaluedHashMap<String, String>();
        fields.putAll(form);
        fields.putSingle("rubric", rubric);
        var judgement = inputs.read(fields, NewJudgement.class);
        var beside = inputs.read(form, Beside.class);
        if ("sign".equals(beside.then())) {
            judgements.sign(user.actor(), of, judgement, beside.version());
        } else {
            judgements.keep(user.actor(), of, judgement, beside.version());
        }
        return address(of);
    }

    static String address(Judged of) {
        return home(of) + "/judgements";
    }

    private static String home(Judged of) {
        return (of.subject() == Rubric.Subject.TREE ? "/trees/" : "/students/") + of.id();
    }

    private List<Rubric> rubrics(Judged of) {
        return content.inForce().rubrics().values().stream()
                .filter(rubric -> rubric.subject() == of.subject())
                .toList();
    }

    /** What is judged, by name; the tree's or the student's room says whether it is in reach. */
    private String name(Actor actor, Judged of) {
        if (of.subject() == Rubric.Subject.TREE) {
            return trees.get(actor, of.id()).label();
        }
        if (!people.reaches(actor, of.id())) {
            throw Refused.notFound("person", of.id());
        }
        return people.name(of.id());
    }

    private boolean judges(Actor actor, Judged of) {
        return actor.is(Role.INSTRUCTOR)
                && (of.subject() == Rubric.Subject.TREE
                        ? !trees.get(actor, of.id()).left()
                        : of.id() != actor.personId());
    }

    private static FormState typed(Judgement draft) {
        return typed(draft, draft.corrects()).with("version", draft.version());
    }

    private static FormState typed(Judgement judgement, @Nullable Long corrects) {
        return FormState.fresh(FORM)
                .with("judgedOn", judgement.judgedOn())
                .withIfKnown(LEVEL, judgement.level())
                .withIfKnown("note", judgement.note())
                .with("secondWanted", judgement.secondWanted())
                .withIfKnown("corrects", corrects);
    }
}
