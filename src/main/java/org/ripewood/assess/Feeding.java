package org.ripewood.assess;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Rubric;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.platform.Actor;
import org.ripewood.records.NewObservation;
import org.ripewood.records.Observations;
import org.ripewood.records.RecordsUnchecked;

/** Makes an opened judgement count: as a fact of the tree, or as skills of the student. */
@ApplicationScoped
class Feeding {

    private final Observations observations;
    private final RecordsUnchecked recordsUnchecked;
    private final SkillJudgements skills;
    private final JudgementRows rows;
    private final JudgementReach reach;
    private final PeopleUnchecked peopleUnchecked;

    Feeding(
            Observations observations,
            RecordsUnchecked recordsUnchecked,
            SkillJudgements skills,
            JudgementRows rows,
            JudgementReach reach,
            PeopleUnchecked peopleUnchecked) {
        this.observations = observations;
        this.recordsUnchecked = recordsUnchecked;
        this.skills = skills;
        this.rows = rows;
        this.reach = reach;
        this.peopleUnchecked = peopleUnchecked;
    }

    void feed(JudgementEntity judgement, Rubric rubric) {
        // The judge's own word, also when another one's signature opened it.
        var judge = new Actor(judgement.byId, peopleUnchecked.get(judgement.byId).roles());
        if (!rubric.has(judgement.levelGiven()) || !reach.reaches(judge, judgement.of())) {
            return;
        }
        var feeds = rubric.feeds();
        if (feeds != null) {
            judgement.observationId = observe(judge, judgement, rubric, feeds);
        }
        var shows = rubric.shows();
        if (shows != null) {
            shows.lessons().forEach(lesson -> show(judgement, rubric, shows, lesson));
        }
    }

    private long observe(
            Actor judge, JudgementEntity judgement, Rubric rubric, Rubric.Feeds feeds) {
        var value = BigDecimal.valueOf(feeds.perLevel().get(judgement.levelGiven()));
        var seen =
                new NewObservation(
                        feeds.fact().code(),
                        value.stripTrailingZeros().toPlainString(),
                        judgement.judgedOn,
                        words(judgement, rubric),
                        null,
                        null,
                        null,
                        observationCorrected(judgement));
        return observations.observe(judge, judgement.of().id(), seen).id();
    }

    /** The entry that the corrected judgement became, unless somebody corrected it meanwhile. */
    private @Nullable Long observationCorrected(JudgementEntity judgement) {
        var earlier = judgement.corrects == null ? null : rows.findById(judgement.corrects);
        if (earlier == null || earlier.observationId == null) {
            return null;
        }
        return recordsUnchecked.isInForce(earlier.observationId) ? earlier.observationId : null;
    }

    private void show(JudgementEntity judgement, Rubric rubric, Rubric.Shows shows, String lesson) {
        var entity = new SkillJudgementEntity();
        entity.studentId = judgement.of().id();
        entity.lesson = lesson;
        entity.shown = judgement.levelGiven() >= shows.fromLevel();
        entity.judgedOn = judgement.judgedOn;
        entity.byId = judgement.byId;
        entity.note = words(judgement, rubric);
        skills.persist(entity);
    }

    private static String words(JudgementEntity judgement, Rubric rubric) {
        return "%s: %s"
                .formatted(rubric.title(), rubric.levels().get(judgement.levelGiven()).word());
    }
}
