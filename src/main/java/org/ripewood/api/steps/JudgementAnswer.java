package org.ripewood.api.steps;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ripewood.assess.Judgement;
import org.ripewood.course.Rubric;
import org.ripewood.platform.Paged;

/** A judgement by rubric; one of treeId and studentId is there. */
record JudgementAnswer(
        long id,
        long version,
        String rubric,
        @Nullable Long treeId,
        @Nullable Long studentId,
        long byId,
        @Nullable Integer level,
        LocalDate judgedOn,
        @Nullable String note,
        boolean draft,
        @Nullable Instant signedAt,
        boolean waitsForSecond,
        boolean blind,
        @Nullable Long corrects,
        @Nullable Long supersededBy,
        @Nullable Long observationId) {

    static JudgementAnswer of(Judgement judgement) {
        var of = judgement.of();
        var tree = of.subject() == Rubric.Subject.TREE;
        return new JudgementAnswer(
                judgement.id(),
                judgement.version(),
                judgement.rubric(),
                tree ? of.id() : null,
                tree ? null : of.id(),
                judgement.byId(),
                judgement.level(),
                judgement.judgedOn(),
                judgement.note(),
                judgement.draft(),
                judgement.signedAt(),
                judgement.waitsForSecond(),
                judgement.blind(),
                judgement.corrects(),
                judgement.supersededBy(),
                judgement.observationId());
    }

    static Paged<JudgementAnswer> of(Paged<Judgement> judgements) {
        return new Paged<>(
                judgements.items().stream().map(JudgementAnswer::of).toList(),
                judgements.page(),
                judgements.size(),
                judgements.total());
    }
}
