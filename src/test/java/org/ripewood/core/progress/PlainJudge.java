package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.Span;
import org.ripewood.core.season.StageRange;
import org.ripewood.core.season.TypicalYear;
import org.ripewood.core.season.WeatherRule;
import org.ripewood.core.season.WorkClocks;

/**
 * The rules as they read, one technique after the other with nothing compiled, shared or left for
 * later: what the rulebook is held against.
 */
final class PlainJudge {

    private static final int NOBODY_LOOKED = -1;

    private final List<TechniqueRule> ordered;
    private final Subject subject;
    private final Traits traits;
    private final LocalDate on;
    private final int stage;
    private final double vigour;

    /**
     * @param ordered by {@link Rulebook#inOrder}
     */
    PlainJudge(List<TechniqueRule> ordered, Subject subject, LocalDate on) {
        this.ordered = ordered;
        this.subject = subject;
        this.traits = subject.traits();
        this.on = on;
        this.stage = subject.stages().stageOn(on);
        this.vigour = subject.facts().number(Fact.VIGOUR_INDEX);
    }

    Standing judge(TechniqueRule rule) {
        if (!rule.isFor(traits)) {
            return standing(rule, Verdict.NOT_NEEDED, List.of(new Reason.OfSpecies()));
        }
        var doneOn = doneOn(rule);
        if (doneOn != null) {
            var repeat = rule.repeatAfterDays();
            var due = repeat == null ? null : doneOn.plusDays(repeat);
            if (due == null || due.isAfter(on)) {
                return standing(rule, Verdict.DONE, List.of(new Reason.OfDone(doneOn, due)));
            }
        }
        if (needed(rule) == Truth.NO) {
            var reason = new Reason.OfNeed(Truth.NO, List.of());
            return standing(rule, Verdict.NOT_NEEDED, List.of(reason));
        }
        return weighed(rule);
    }

    private Standing standing(TechniqueRule rule, Verdict verdict, List<Reason> reasons) {
        return new Standing(rule.code(), on, verdict, reasons);
    }

    private Standing weighed(TechniqueRule rule) {
        var reasons = new ArrayList<Reason>();
        if (needed(rule) == Truth.UNKNOWN) {
            reasons.add(new Reason.OfNeed(Truth.UNKNOWN, missing(rule)));
        }
        order(rule, reasons);
        rule.criteria().forEach(each -> reasons.add(criterion(each, rule)));
        strain(rule, reasons);
        var truth = reasons.stream().map(Reason::truth).reduce(Truth.YES, Truth::and);
        var lesson = rule.skillLesson();
        var skills = subject.skills();
        var skilled = lesson == null || skills == null || skills.contains(lesson);
        if (lesson != null && skills != null) {
            reasons.add(new Reason.OfSkill(lesson, skilled));
        }
        var season = season(rule.season(), truth == Truth.YES && skilled);
        reasons.add(season);
        return standing(rule, verdict(truth, skilled, season.truth()), reasons);
    }

    private static Verdict verdict(Truth truth, boolean skilled, Truth season) {
        if (truth == Truth.NO) {
            return Verdict.HELD;
        }
        if (truth == Truth.UNKNOWN || season == Truth.UNKNOWN) {
            return Verdict.MEASURE;
        }
        if (!skilled) {
            return Verdict.LESSON;
        }
        return season == Truth.YES ? Verdict.READY : Verdict.SEASON;
    }

    private @Nullable LocalDate doneOn(TechniqueRule rule) {
        var day = subject.signedOff().get(rule.code());
        return day == null || day.isAfter(on) ? null : day;
    }

    private Truth needed(TechniqueRule rule) {
        var condition = rule.neededWhen();
        return condition == null ? Truth.YES : condition.holds(subject.facts());
    }

    private List<Fact> missing(TechniqueRule rule) {
        var missing = new ArrayList<Fact>();
        var condition = rule.neededWhen();
        if (condition != null) {
            condition.eachFact(missing::add);
        }
        return missing.stream()
                .filter(fact -> subject.facts().find(fact) == null)
                .distinct()
                .toList();
    }

    private void order(TechniqueRule rule, List<Reason> reasons) {
        var asked = new HashSet<>(rule.after());
        var told = new HashSet<String>();
        rule.criteria().forEach(criterion -> told.add(criterion.key()));
        var latestFirst = new ArrayList<>(ordered);
        Collections.reverse(latestFirst);
        for (var first : latestFirst) {
            if (!asked.contains(first.code())) {
                continue;
            }
            var settled = !first.isFor(traits) || doneOn(first) != null;
            reasons.add(
                    new Reason.OfOrder(first.code(), settled ? Truth.YES : needed(first).not()));
            if (!settled && needed(first) == Truth.NO) {
                asked.addAll(first.after());
                first.criteria().stream()
                        .filter(each -> CompiledOrder.MATERIAL.contains(each.fact()))
                        .filter(each -> told.add(each.key()))
                        .forEach(each -> reasons.add(criterion(each, first)));
            }
        }
        if (rule.purpose() == TechniqueRule.Purpose.STYLING) {
            ordered.stream()
                    .filter(each -> each.purpose() == TechniqueRule.Purpose.DEVELOPMENT)
                    .filter(each -> each.isFor(traits) && needed(each) == Truth.YES)
                    .forEach(each -> reasons.add(new Reason.OfDevelopment(each.code())));
        }
    }

    private Reason criterion(Criterion criterion, TechniqueRule rule) {
        var required = criterion.requirementFor(traits);
        var evidence = subject.facts().find(criterion.fact());
        double howFar = criterion.onTheDay() ? 1 : 0;
        if (evidence != null) {
            howFar = required.howFar(evidence.value());
        }
        return new Reason.OfCriterion(
                criterion.key(),
                criterion,
                required,
                look(criterion, required, evidence, rule),
                evidence,
                howFar);
    }

    private Reason.Look look(
            Criterion criterion,
            Requirement required,
            @Nullable Evidence evidence,
            TechniqueRule rule) {
        if (evidence == null || evidence.observedOn().isAfter(on)) {
            return criterion.onTheDay() ? Reason.Look.ON_THE_DAY : Reason.Look.MISSING;
        }
        var fresh = criterion.freshDays();
        if (fresh != null
                && criterion.ages().between(evidence.observedOn(), on, subject.growing()) > fresh) {
            return criterion.onTheDay() ? Reason.Look.ON_THE_DAY : Reason.Look.STALE;
        }
        if (!required.metBy(evidence.value())) {
            return Reason.Look.NOT_MET;
        }
        var strengthForMore =
                criterion.fact() == Fact.VIGOUR_INDEX && rule.stress() > TechniqueRule.LIGHT_STRESS;
        return evidence.source() == Source.STUDENT
                        && (criterion.instructorsEye() || strengthForMore)
                ? Reason.Look.PROVISIONAL
                : Reason.Look.MET;
    }

    private void strain(TechniqueRule rule, List<Reason> reasons) {
        var ledger = subject.ledger();
        if (rule.stress() > 0) {
            double left = ledger.loadLeft(on);
            double budget = LoadBudget.of(vigour);
            var fits = Truth.of(left + rule.stress() <= budget);
            var truth = Double.isNaN(budget) ? Truth.UNKNOWN : fits;
            reasons.add(new Reason.OfLoad(left, rule.stress(), budget, truth));
        }
        if (rule.stress() >= TechniqueRule.HEAVY_STRESS) {
            reasons.add(new Reason.OfHeavy(ledger.heavyThisSeason(on)));
        }
        int quiet = rule.quietDaysBefore();
        if (quiet > 0) {
            var over = !ledger.quietFrom(quiet, on).isAfter(on);
            reasons.add(new Reason.OfQuiet(ledger.daysSinceHeavy(on), quiet, over));
        }
        if (rule.dose() != null) {
            var dose = rule.dose().forTree(traits, vigour);
            double taken = ledger.takenThisSeason(dose.kind(), on);
            reasons.add(
                    new Reason.OfDose(dose.kind(), taken, dose.typicalShare(), dose.limitShare()));
        }
    }

    private Reason.OfSeason season(SeasonRule rule, boolean tellWhen) {
        int flowers = usesFlowers(rule) ? flowerStage() : NOBODY_LOOKED;
        var because = avoided(rule, stage, flowers);
        var byStage = because == null ? byStage(rule, flowers) : Truth.NO;
        if (byStage != Truth.NO) {
            var shelter = traits.clocks().shelterBelowCelsius();
            because = rule.weather().closedBecause(on, subject.place(), shelter);
        } else if (because == null) {
            because =
                    rule.stagesOf(traits).stream()
                            .filter(part -> holds(part.ranges(), false, stage))
                            .findFirst()
                            .map(this::closedBecause)
                            .orElse(null);
        }
        var truth = because == null ? byStage : Truth.NO;
        var opensOn = truth == Truth.NO && tellWhen ? opensOn(rule) : null;
        return new Reason.OfSeason(stage, rule, because, opensOn, truth);
    }

    private @Nullable LocalDate opensOn(SeasonRule rule) {
        var within = new Span(on.plusDays(1), on.plusDays(StagesAhead.LOOK_AHEAD_DAYS));
        return rule.open(traits, subject.stages(), subject.place(), within).stream()
                .map(Span::from)
                .findFirst()
                .orElse(null);
    }

    private boolean usesFlowers(SeasonRule rule) {
        return opensByFlowers(rule) || closesByFlowers(rule);
    }

    private boolean opensByFlowers(SeasonRule rule) {
        return rule.stagesOf(traits).stream()
                .flatMap(part -> part.ranges().stream())
                .anyMatch(StageRange::onFlowerTrack);
    }

    private boolean closesByFlowers(SeasonRule rule) {
        return rule.avoid().stream()
                .filter(avoid -> avoid.speaksOf(traits))
                .flatMap(avoid -> avoid.stages().stream())
                .anyMatch(StageRange::onFlowerTrack);
    }

    /** Looks of the last three weeks count. */
    private int flowerStage() {
        var seen = subject.facts().find(Fact.FLOWER_STAGE);
        return seen == null
                        || seen.observedOn().isAfter(on)
                        || seen.observedOn().isBefore(on.minusDays(21))
                ? NOBODY_LOOKED
                : (int) subject.facts().number(Fact.FLOWER_STAGE);
    }

    private @Nullable String avoided(SeasonRule rule, int leaves, int flowers) {
        for (var avoid : rule.avoid()) {
            if (avoid.speaksOf(traits)
                    && (holds(avoid.stages(), false, leaves)
                            || (flowers >= 0 && holds(avoid.stages(), true, flowers)))) {
                return avoid.why();
            }
        }
        return null;
    }

    private static boolean holds(List<StageRange> ranges, boolean flowers, int stage) {
        return ranges.stream()
                .anyMatch(range -> range.onFlowerTrack() == flowers && range.holds(stage));
    }

    private Truth byStage(SeasonRule rule, int flowers) {
        var inLeaves = inLeaves(rule);
        if (flowers >= 0) {
            return Truth.of(inLeaves || isOpen(rule, true, flowers));
        }
        if (inLeaves) {
            return closesByFlowers(rule) ? Truth.UNKNOWN : Truth.YES;
        }
        return opensByFlowers(rule) && mayOpenUnseen(rule) ? Truth.UNKNOWN : Truth.NO;
    }

    /** Whether unseen flowers may open it now; they fade from BBCH 67 to 69 (Meier 2001). */
    private boolean mayOpenUnseen(SeasonRule rule) {
        var parts = rule.stagesOf(traits);
        var atFade =
                parts.stream()
                        .anyMatch(
                                part ->
                                        holds(part.ranges(), true, 67)
                                                || holds(part.ranges(), true, 68)
                                                || holds(part.ranges(), true, 69));
        if (atFade) {
            var fade = traits.clocks().flowersFade();
            return fade.isEmpty() || fade.stream().anyMatch(range -> range.holds(stage));
        }
        return IntStream.range(0, 100)
                .filter(leaves -> avoided(rule, leaves, NOBODY_LOOKED) == null)
                .noneMatch(
                        leaves ->
                                parts.stream()
                                        .anyMatch(part -> holds(part.ranges(), false, leaves)));
    }

    private boolean inLeaves(SeasonRule rule) {
        if (stage != TypicalYear.GROWING || !subject.place().withoutWinter()) {
            return rule.anyStage() || isOpen(rule, false, stage);
        }
        for (int growing = 31; growing <= 35; growing++) {
            if (avoided(rule, growing, NOBODY_LOOKED) == null
                    && (rule.anyStage() || isOpen(rule, false, growing))) {
                return true;
            }
        }
        return subject.place().coolestWeeks(on);
    }

    private boolean isOpen(SeasonRule rule, boolean flowers, int asked) {
        return rule.stagesOf(traits).stream()
                .filter(part -> holds(part.ranges(), flowers, asked))
                .anyMatch(part -> closedBecause(part) == null);
    }

    private @Nullable String closedBecause(WorkClocks.Stages part) {
        int left = subject.place().growingDaysLeft(on);
        if (left < part.growingDaysLeft()) {
            return WeatherRule.tooLate(left, part.growingDaysLeft());
        }
        return subject.place().maxCelsius(on) > part.notAboveCelsius()
                ? WeatherRule.tooHot(part.notAboveCelsius())
                : null;
    }
}
