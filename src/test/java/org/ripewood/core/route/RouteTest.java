package org.ripewood.core.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.ripewood.core.route.Ways.DAY;
import static org.ripewood.core.route.Ways.likely;
import static org.ripewood.core.route.Ways.start;
import static org.ripewood.core.route.Ways.steps;
import static org.ripewood.core.route.Ways.sure;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.progress.DoseRule;
import org.ripewood.core.progress.Work;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.core.route.Ways.StepOf;
import org.ripewood.core.season.Outlook;

/** Routes worked out by hand; the calendar is the only outside there is for them. */
@Tag("fast")
class RouteTest {

    private static LocalDate day(int year, int month, int day) {
        return LocalDate.of(year, month, day);
    }

    @Test
    void nothingAheadIsAlreadyThere() {
        var done = new StepOf("check");
        done.doneOn = DAY.minusYears(1);
        done.turns = 0;
        var route = sure(done);
        assertThat(route.goal()).isEqualTo(new Outlook.Already());
        assertThat(route.steps()).isEmpty();
        assertThat(route.chain()).isEmpty();
    }

    @Test
    void aStepIsDoneInItsNextWindow() {
        var route = sure(new StepOf("repot").open(3, 4));
        assertThat(likely(route, "repot")).isEqualTo(day(2025, 3, 1));
        assertThat(route.waitings())
                .containsExactly(new Route.Waiting(Cause.SEASON, "repot", 59, 1));
    }

    @Test
    void oneHeavyWorkIsDoneInAGrowingSeason() {
        var route =
                sure(
                        new StepOf("chop").heavy().open(2, 3),
                        new StepOf("repot").heavy().open(3, 4),
                        new StepOf("wire").open(6, 6));
        assertThat(likely(route, "chop")).isEqualTo(day(2025, 2, 1));
        assertThat(likely(route, "repot")).isEqualTo(day(2026, 3, 1));
        assertThat(likely(route, "wire")).isEqualTo(day(2025, 6, 1));
        assertThat(route.chain()).extracting(Route.Link::code).containsExactly("chop", "repot");
        assertThat(route.find("repot").orElseThrow().decider())
                .isEqualTo(new Route.Decider(Cause.HEAVY, "chop", 1));
    }

    @Test
    void heavyWorkOfThisSeasonCounts() {
        var work = new Work("chop", day(2025, 1, 20), 7, 0, 0, 0);
        var heavy = steps(new StepOf("repot").heavy().open(3, 4));
        var route = Route.simulate(start(day(2025, 2, 1), work), heavy, 1, 1, 1);
        assertThat(likely(route, "repot")).isEqualTo(day(2026, 3, 1));
    }

    @Test
    void theEarlierStageGoesFirstWithinASeason() {
        var late = new StepOf("carve").heavy().open(2, 3);
        late.stageOrder = 3;
        var early = new StepOf("repot").heavy().open(4, 5);
        early.stageOrder = 1;
        var route = sure(late, early);
        assertThat(likely(route, "repot")).isEqualTo(day(2025, 4, 1));
        assertThat(likely(route, "carve")).isEqualTo(day(2026, 2, 1));
    }

    @Test
    void withinAStageTheOneWithMoreHeavyWorkBehindItGoesFirst() {
        var route =
                sure(
                        new StepOf("alone").heavy(),
                        new StepOf("root").heavy().open(2, 3),
                        new StepOf("then", "root").heavy());
        assertThat(likely(route, "root")).isEqualTo(day(2025, 2, 1));
        assertThat(likely(route, "alone")).isEqualTo(day(2026, 1, 1));
    }

    @Test
    void quietIsKeptAfterHeavyWork() {
        var wire = new StepOf("wire", "chop");
        wire.quietDaysBefore = 100;
        var route = sure(new StepOf("chop").heavy().open(3, 3), wire);
        assertThat(likely(route, "wire")).isEqualTo(day(2025, 3, 1).plusDays(100));
        assertThat(route.find("wire").orElseThrow().decider().cause()).isEqualTo(Cause.QUIET);
    }

    /** 6 left of 6 after 0 of 100 days; 4 may be left when 4 are added to a budget of 8: day 34. */
    @Test
    void loadIsRecoveredFromBeforeMoreIsAdded() {
        var chop = new StepOf("chop").heavy();
        chop.recoveryDays = 100;
        var prune = new StepOf("prune", "chop");
        prune.stress = 4;
        var route = sure(chop, prune);
        assertThat(likely(route, "prune")).isEqualTo(DAY.plusDays(34));
        assertThat(route.find("prune").orElseThrow().decider())
                .isEqualTo(new Route.Decider(Cause.LOAD, "chop", 1));
    }

    @Test
    void theRouteAndTheLedgerAgreeOnTheDayLoadFits() {
        var works =
                List.of(
                        new Work("a", DAY.minusDays(10), 5, 200, 0, 0),
                        new Work("b", DAY.minusDays(30), 4, 90, 0, 0),
                        new Work("c", DAY.minusDays(400), 6, 300, 0, 0));
        var ledger = new WorkLedger(works, 50);
        for (double stress = 0.5; stress < 8; stress += 0.5) {
            var step = new StepOf("next");
            step.stress = stress;
            var route = Route.simulate(start(works.toArray(Work[]::new)), steps(step), 1, 1, 1);
            var expected = DAY;
            while (ledger.loadLeft(expected) + stress > 8 + 1e-9) {
                expected = expected.plusDays(1);
            }
            assertThat(likely(route, "next")).as("stress %s", stress).isEqualTo(expected);
        }
    }

    @Test
    void aWorkTooHeavyForTheBudgetIsDoneAlone() {
        var step = new StepOf("next");
        step.stress = 9;
        var work = new Work("a", DAY, 5, 50, 0, 0);
        var route = Route.simulate(start(work), steps(step), 1, 1, 1);
        assertThat(likely(route, "next")).isEqualTo(DAY.plusDays(50));
    }

    @Test
    void theSeasonsShareOfRootsIsKept() {
        var first = new StepOf("comb");
        first.dose = new DoseRule(DoseRule.Kind.ROOT, 0.25, 0.4);
        var second = new StepOf("cut", "comb");
        second.dose = first.dose;
        var leaves = new StepOf("pluck", "comb");
        leaves.dose = new DoseRule(DoseRule.Kind.FOLIAGE, 0.25, 0.4);
        var route = sure(first, second, leaves);
        assertThat(likely(route, "cut")).isEqualTo(day(2026, 1, 1));
        assertThat(likely(route, "pluck")).isEqualTo(DAY);
    }

    @Test
    void theSouthernSeasonTurnsInJuly() {
        var south = new RouteStart(DAY, new WorkLedger(List.of(), -35), 8, Ways.MONTHS);
        var both = steps(new StepOf("chop").heavy(), new StepOf("repot", "chop").heavy());
        assertThat(likely(Route.simulate(south, both, 1, 1, 1), "repot"))
                .isEqualTo(day(2025, 7, 1));
    }

    @Test
    void turnsFollowEachOtherWithTimeBetween() {
        var prune = new StepOf("prune").open(6, 6);
        prune.turns = 3;
        prune.repeatAfterDays = 300;
        prune.doneOn = day(2024, 6, 20);
        var route = sure(prune, new StepOf("after", "prune"));
        assertThat(route.steps())
                .filteredOn(step -> step.code().equals("prune"))
                .extracting(step -> likely(step.when()))
                .containsExactly(day(2025, 6, 1), day(2026, 6, 1), day(2027, 6, 1));
        assertThat(likely(route, "after")).isEqualTo(DAY);
    }

    @Test
    void timeThatRunsSinceWorkDoneIsCountedFromThatWork() {
        var chop = new StepOf("chop");
        chop.doneOn = DAY.minusDays(200);
        chop.turns = 0;
        var route = sure(chop, new StepOf("wire").lag("chop", 365));
        assertThat(likely(route, "wire")).isEqualTo(DAY.plusDays(165));
    }

    @Test
    void whatLiesBehindTheGoalIsLeftOut() {
        var later = new StepOf("show", "wire");
        later.stageOrder = 5;
        var needed = new StepOf("front");
        needed.stageOrder = 3;
        var route =
                Route.simulate(start(), steps(later, needed, new StepOf("wire", "front")), 2, 1, 1);
        assertThat(route.steps()).extracting(Route.Step::code).containsExactly("front", "wire");
    }

    @Test
    void whatCannotBeSaidIsToldAndAssumed() {
        var wound = new Outlook.Unsaid("The wound does not close any more.");
        var look = new Outlook.Unsaid("Nobody has looked at the roots.");
        var check = new StepOf("check").open(5, 5);
        check.waits.add(new Wait("roots", "roots", look, Wait.Assumption.MET_WHEN_LOOKED_AT));
        var route =
                sure(
                        check,
                        new StepOf("wire").waits("wound", wound),
                        new StepOf("next", "wire"),
                        new StepOf("other"));
        assertThat(likely(route, "check")).isEqualTo(day(2025, 5, 1));
        assertThat(likely(route, "wire")).isEqualTo(day(2026, 1, 1));
        assertThat(route.steps())
                .filteredOn(Route.Step::assumed)
                .extracting(Route.Step::code)
                .containsExactlyInAnyOrder("check", "wire", "next");
        assertThat(route.unsaid())
                .extracting(Route.Unsaid::because)
                .containsExactlyInAnyOrder(wound.because(), look.because());
    }

    @Test
    void aSeasonThatNeverComesIsNotForecast() {
        var never = new StepOf("never");
        never.open = Set.of();
        var route = sure(never, new StepOf("behind", "never"), new StepOf("free"));
        assertThat(route.goal()).isInstanceOf(Outlook.Unsaid.class);
        assertThat(route.find("behind").orElseThrow().when()).isInstanceOf(Outlook.Unsaid.class);
        assertThat(likely(route, "free")).isEqualTo(DAY);
        assertThat(route.chain()).isEmpty();
        assertThat(route.waitings()).isEmpty();
    }

    @Test
    void theLastTenthMayLieBeyondReachWhileTheRestIsTold() {
        var slow = new Outlook.Expected(DAY.plusYears(5), DAY.plusYears(15), null);
        var when = sure(new StepOf("thick").waits("girth", slow)).find("thick").orElseThrow();
        var many =
                Route.simulate(
                        start(), steps(new StepOf("thick").waits("girth", slow)), 1, 2000, 5);
        assertThat(when.code()).isEqualTo("thick");
        var expected = (Outlook.Expected) many.goal();
        assertThat(expected.latest()).isNull();
        // sampling error of a quantile: sqrt(0.09 / 2000) of probability is about two months here
        assertThat((double) expected.earliest().toEpochDay())
                .isCloseTo((double) DAY.plusYears(5).toEpochDay(), within(250.0));
    }

    @Test
    void wrongStepsAreRefusedByName() {
        assertThatThrownBy(() -> sure(new StepOf("a", "b"), new StepOf("b", "a")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("circle at a");
        assertThatThrownBy(() -> sure(new StepOf("a"), new StepOf("a")))
                .hasMessageContaining("two steps are called a");
        assertThatThrownBy(() -> Route.simulate(start(), List.of(), 1, 0, 1))
                .hasMessageContaining("found 0");
        var odd = new StepOf("a");
        odd.stress = Double.NaN;
        assertThatThrownBy(odd::make).hasMessageContaining("found NaN in a");
        assertThatThrownBy(() -> Lag.sure("a", "b", -1)).hasMessageContaining("-1");
        assertThatThrownBy(
                        () ->
                                new RouteStart(
                                        DAY,
                                        new WorkLedger(List.of(), 50),
                                        Double.NaN,
                                        Ways.MONTHS))
                .hasMessageContaining("NaN");
    }

    @Test
    void laterStagesWaitForAllOfTheEarlierOnes() {
        var chop = new StepOf("chop").open(5, 5);
        var repot = new StepOf("repot").open(9, 9);
        var wire = new StepOf("wire");
        wire.stageOrder = 2;
        var show = new StepOf("show");
        show.stageOrder = 4;
        var care = new StepOf("care");
        care.stageOrder = 4;
        List.of(chop, repot, wire, show).forEach(step -> step.inTurn = true);
        var route = sure(show, wire, chop, repot, care);
        assertThat(likely(route, "wire")).isEqualTo(day(2025, 9, 1));
        assertThat(likely(route, "show")).isEqualTo(day(2025, 9, 1));
        assertThat(likely(route, "care")).isEqualTo(DAY);
    }

    /** What {@code after} says the other way round stays so, and is no circle. */
    @Test
    void anOrderAgainstTheStagesStands() {
        var early = new StepOf("early", "late");
        var late = new StepOf("late").open(5, 5);
        late.stageOrder = 2;
        early.inTurn = true;
        late.inTurn = true;
        assertThat(likely(sure(early, late), "early")).isEqualTo(day(2025, 5, 1));
    }
}
