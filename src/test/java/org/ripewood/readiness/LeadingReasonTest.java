package org.ripewood.readiness;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.progress.Criterion;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Opening;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Requirement;
import org.ripewood.core.progress.SeasonRule;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Strength;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.Verdict;
import org.ripewood.core.season.Outlook;
import org.ripewood.readiness.ReadinessSheet.Weight;

/** Which reason is told of a technique, and when nothing of the tree's own holds it any more. */
@Tag("fast")
class LeadingReasonTest {

    private static final LocalDate ON = LocalDate.of(2026, 11, 30);

    private static final Opening.Wait WOUND =
            wait(
                    criterion(Fact.LARGEST_OPENING_MM, Value.of(9.5), new Requirement.AtMost(8)),
                    expected(5));
    private static final Opening.Wait REST = wait(new Reason.OfQuiet(30, 84, false), expected(2));
    private static final Opening.Wait ROOT =
            wait(
                    criterion(Fact.CIRCLING_TURN, Value.of(0.5), new Requirement.AtMost(0.32)),
                    unsaid());
    private static final Opening.Wait FRONT =
            wait(
                    criterion(
                            Fact.FRONT_MARK,
                            Value.of("none"),
                            new Requirement.Is(Value.of("settled"))),
                    unsaid());
    private static final Opening.Wait TURN =
            wait(new Reason.OfOrder("branch_selection", Truth.NO), unsaid());

    @Test
    void theTreesOwnReasonThatLastsLongestIsToldOfAHold() {
        assertThat(told(Verdict.HELD, TURN, REST, WOUND)).isEqualTo(WOUND);
    }

    @Test
    void whatHasNoDateLastsLongest() {
        assertThat(told(Verdict.HELD, WOUND, ROOT, REST)).isEqualTo(ROOT);
    }

    @Test
    void aPlanNobodyMadeIsToldBeforeATurnAndAfterTheTree() {
        assertThat(told(Verdict.HELD, TURN, FRONT)).isEqualTo(FRONT);
        assertThat(told(Verdict.HELD, FRONT, REST)).isEqualTo(REST);
    }

    @Test
    void aTurnIsToldWhenNothingElseHolds() {
        assertThat(told(Verdict.HELD, TURN, season())).isEqualTo(TURN);
    }

    /** Until its turn has come nobody can say more of it than the day its own reason goes. */
    @Test
    void whatIsNotNextIsToldByItsTurnUnlessAReasonHasADate() {
        assertThat(later(TURN, ROOT, FRONT)).isEqualTo(TURN);
        assertThat(later(TURN, ROOT, REST, WOUND)).isEqualTo(WOUND);
        assertThat(later(ROOT, WOUND)).isEqualTo(ROOT);
        assertThat(told(Verdict.HELD, TURN, ROOT)).isEqualTo(ROOT);
    }

    private static Opening.Wait later(Opening.Wait... waits) {
        return LeadingReason.of(Verdict.HELD, opening(waits), false).orElseThrow();
    }

    /** A tree of vigour 40 may carry 3.8: that it is weak is told once, as its vigour. */
    @Test
    void aLoadTheTreeIsTooWeakForIsToldByItsVigour() {
        var tooWeak = wait(new Reason.OfLoad(0, 7, 3.8, Truth.NO), unsaid());
        var debt = wait(new Reason.OfLoad(4, 2, 3.8, Truth.NO), expected(3));
        var vigour =
                wait(
                        criterion(Fact.VIGOUR_INDEX, Value.of(40), new Requirement.AtLeast(70)),
                        unsaid());
        assertThat(told(Verdict.HELD, tooWeak, vigour)).isEqualTo(vigour);
        assertThat(told(Verdict.HELD, tooWeak, WOUND)).isEqualTo(tooWeak);
        assertThat(told(Verdict.HELD, debt, TURN)).isEqualTo(debt);
    }

    @Test
    void onlyWhatTheTreeHoldsWhenItsTurnHasComeIsHeavy() {
        assertThat(CellMaker.weight(Verdict.HELD, WOUND.reason(), true)).isEqualTo(Weight.HELD);
        assertThat(CellMaker.weight(Verdict.HELD, WOUND.reason(), false)).isEqualTo(Weight.WAITS);
        assertThat(CellMaker.weight(Verdict.HELD, FRONT.reason(), true)).isEqualTo(Weight.WAITS);
        assertThat(CellMaker.weight(Verdict.HELD, TURN.reason(), true)).isEqualTo(Weight.WAITS);
    }

    @Test
    void ofWhatIsToBeMeasuredTheFirstIsTold() {
        var unknownTurn = wait(new Reason.OfOrder("root_check", Truth.UNKNOWN), unsaid());
        var vigour = wait(look(Fact.VIGOUR_INDEX), unsaid());
        var pests = wait(look(Fact.PEST_LEVEL), unsaid());
        assertThat(told(Verdict.MEASURE, unknownTurn, vigour, pests)).isEqualTo(vigour);
    }

    @Test
    void aSeasonAndALessonAreToldByThemselves() {
        var skill = wait(new Reason.OfSkill("wiring-branches", false), unsaid());
        assertThat(told(Verdict.SEASON, season())).isEqualTo(season());
        assertThat(told(Verdict.LESSON, season(), skill)).isEqualTo(skill);
    }

    @Test
    void freeIsWhenTheLastOfTheTreesOwnReasonsHasGone() {
        assertThat(free(TURN, FRONT, WOUND, REST)).isEqualTo(ON.plusMonths(5));
    }

    @Test
    void nobodyCanSayWhenATreeIsFreeWhileOneReasonHasNoDateOrNoneIsItsOwn() {
        assertThat(free(WOUND, ROOT)).isNull();
        assertThat(free(TURN, FRONT)).isNull();
    }

    private static Opening.Wait told(Verdict verdict, Opening.Wait... waits) {
        return LeadingReason.of(verdict, opening(waits), true).orElseThrow();
    }

    private static @Nullable LocalDate free(Opening.Wait... waits) {
        return LeadingReason.freeOn(opening(waits)).orElse(null);
    }

    private static Opening opening(Opening.Wait... waits) {
        return new Opening("wiring_primary", ON, List.of(waits), unsaid());
    }

    private static Opening.Wait season() {
        var rule = new SeasonRule(List.of(), List.of(), "");
        return wait(new Reason.OfSeason(97, rule, null, ON.plusMonths(1), Truth.NO), expected(1));
    }

    private static Opening.Wait wait(Reason reason, Outlook outlook) {
        return new Opening.Wait(reason, outlook, null);
    }

    private static Reason look(Fact fact) {
        var criterion = criterionOn(fact, new Requirement.AtLeast(50));
        return new Reason.OfCriterion(
                criterion.key(), criterion, criterion.requirement(), Reason.Look.MISSING, null, 0);
    }

    private static Reason criterion(Fact fact, Value value, Requirement required) {
        var criterion = criterionOn(fact, required);
        return new Reason.OfCriterion(
                criterion.key(),
                criterion,
                required,
                Reason.Look.NOT_MET,
                new Evidence(fact, value, ON.minusDays(9), Source.INSTRUCTOR, "", 1),
                required.howFar(value));
    }

    private static Criterion criterionOn(Fact fact, Requirement required) {
        return new Criterion(fact, required, null, Strength.MUST, false, false, List.of(), "");
    }

    private static Outlook expected(int months) {
        return Outlook.Expected.on(ON.plusMonths(months));
    }

    private static Outlook unsaid() {
        return new Outlook.Unsaid("Nobody can say.");
    }
}
