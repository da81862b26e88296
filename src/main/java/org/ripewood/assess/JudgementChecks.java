package org.ripewood.assess;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Rubric;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.trees.TreeDays;

/** What a judgement may say. */
@ApplicationScoped
class JudgementChecks {

    private static final int FIRST_YEAR = 1900;

    private final JudgementRows rows;
    private final CourseContent content;
    private final TreeDays treeDays;

    JudgementChecks(JudgementRows rows, CourseContent content, TreeDays treeDays) {
        this.rows = rows;
        this.content = content;
        this.treeDays = treeDays;
    }

    void check(Actor actor, Judged of, NewJudgement judgement) {
        var rubric = rubric(judgement.rubric());
        if (rubric.subject() != of.subject()) {
            throw Refused.invalid(
                    "rubric",
                    "“%s” judges a %s; expected a rubric for a %s."
                            .formatted(rubric.title(), word(rubric.subject()), word(of.subject())));
        }
        requireLevel(rubric, judgement.level());
        requireDay(of, judgement.judgedOn());
        requireOwn(actor, of, judgement);
    }

    Rubric rubric(String code) {
        var rubrics = content.inForce().rubrics();
        var rubric = rubrics.get(code);
        if (rubric == null) {
            throw Refused.invalid(
                    "rubric",
                    "There is no rubric “%s”.".formatted(code)
                            + Suggestion.maybe(rubrics.keySet(), code));
        }
        return rubric;
    }

    private static void requireLevel(Rubric rubric, @Nullable Integer level) {
        if (level != null && !rubric.has(level)) {
            throw Refused.invalid(
                    "level",
                    "Expected a level of “%s”, 0 to %d; found %d."
                            .formatted(rubric.title(), rubric.levels().size() - 1, level));
        }
    }

    private void requireDay(Judged of, LocalDate day) {
        var last = of.isTree() ? treeDays.last(of.id()) : treeDays.lastOfPerson(of.id());
        if (day.isAfter(last) || day.getYear() < FIRST_YEAR) {
            throw Refused.invalid(
                    "judgedOn",
                    "Expected a day from %d up to today, %s; found %s."
                            .formatted(FIRST_YEAR, last, day));
        }
    }

    /** A correction is of the judge's own signed judgement, of the same, and the first of it. */
    private void requireOwn(Actor actor, Judged of, NewJudgement judgement) {
        var id = judgement.corrects();
        if (id == null) {
            return;
        }
        var earlier = rows.findById(id);
        if (earlier == null
                || earlier.byId != actor.personId()
                || earlier.signedAt == null
                || !earlier.of().equals(of)
                || !earlier.rubric.equals(judgement.rubric())) {
            throw Refused.invalid(
                    "corrects",
                    "Expected a judgement you signed, by the same rubric and of the same %s; found %d."
                            .formatted(word(of.subject()), id));
        }
        if (!earlier.judgedOn.equals(judgement.judgedOn())) {
            throw Refused.invalid(
                    "judgedOn",
                    "A correction speaks of the same look, on %s; found %s. Maybe enter a new judgement instead."
                            .formatted(earlier.judgedOn, judgement.judgedOn()));
        }
        if (earlier.supersededBy != null) {
            throw Refused.conflict(
                    "Judgement %d was already corrected.".formatted(id),
                    "Maybe correct judgement %d.".formatted(earlier.supersededBy));
        }
    }

    private static String word(Rubric.Subject subject) {
        return subject == Rubric.Subject.TREE ? "tree" : "student";
    }
}
