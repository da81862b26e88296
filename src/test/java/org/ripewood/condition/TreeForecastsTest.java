package org.ripewood.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.condition.RecordOf.look;
import static org.ripewood.condition.RecordOf.treeOn;
import static org.ripewood.core.progress.Source.INSTRUCTOR;

import java.time.LocalDate;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.growth.CallusPace;
import org.ripewood.core.growth.ClosingBelief;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Recovery;
import org.ripewood.core.progress.Requirement;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.core.season.Outlook;

/** What growing alone will bring about, in days of the calendar. */
@Tag("fast")
class TreeForecastsTest {

    private static final LocalDate DAY = LocalDate.of(2026, 6, 15);
    private static final LocalDate MADE = DAY.minusDays(730);
    private static final Requirement CLOSED = new Requirement.AtMost(0);

    @Test
    void theWidestWoundIsWaitedFor() {
        var one = treeOn(DAY).wound(1, MADE, 30, INSTRUCTOR, look(DAY, 10));
        var both =
                treeOn(DAY)
                        .wound(1, MADE, 30, INSTRUCTOR, look(DAY, 10))
                        .wound(2, MADE, 30, INSTRUCTOR, look(DAY, 25));
        var narrow = new Requirement.AtMost(8);
        var alone = likely(one, Fact.LARGEST_OPENING_MM, narrow);
        assertThat(alone).isAfter(DAY);
        assertThat(likely(both, Fact.LARGEST_OPENING_MM, narrow)).isAfter(alone);
    }

    @Test
    void aShareClosedIsAWidthToReach() {
        var tree = treeOn(DAY).wound(1, MADE, 30, INSTRUCTOR, look(DAY, 15));
        assertThat(when(tree, Fact.SMALLEST_CLOSURE_PERCENT, new Requirement.AtLeast(80)))
                .isEqualTo(when(tree, Fact.LARGEST_OPENING_MM, new Requirement.AtMost(6)));
    }

    @Test
    void ofManyOpenWoundsThoseThatCloseFirstCount() {
        var fast = treeOn(DAY).wound(1, MADE, 30, INSTRUCTOR, look(DAY, 8));
        var three =
                treeOn(DAY)
                        .wound(1, MADE, 30, INSTRUCTOR, look(DAY, 8))
                        .wound(2, MADE, 30, INSTRUCTOR, look(DAY, 22))
                        .wound(3, MADE, 30, INSTRUCTOR, look(DAY, 26));
        assertThat(when(three, Fact.OPEN_WOUNDS, new Requirement.AtMost(2)))
                .isEqualTo(when(fast, Fact.OPEN_WOUNDS, CLOSED));
        assertThat(likely(three, Fact.OPEN_WOUNDS, CLOSED))
                .isAfter(likely(three, Fact.OPEN_WOUNDS, new Requirement.AtMost(1)));
    }

    @Test
    void aStalledWoundIsToldInsteadOfForecast() {
        var tree =
                treeOn(DAY)
                        .wound(
                                1,
                                MADE,
                                30,
                                INSTRUCTOR,
                                look(DAY.minusDays(400), 20),
                                look(DAY, 20));
        assertThat(when(tree, Fact.LARGEST_OPENING_MM, new Requirement.AtMost(8)))
                .isInstanceOfSatisfying(
                        Outlook.Unsaid.class,
                        unsaid -> assertThat(unsaid.because()).contains("20.0 mm"));
    }

    @Test
    void deadwoodByDesignIsNotWaitedFor() {
        var tree = treeOn(DAY).deadwood(1, MADE, 80).wound(2, MADE, 30, INSTRUCTOR, look(DAY, 10));
        assertThat(likely(tree, Fact.LARGEST_OPENING_MM, new Requirement.AtMost(8))).isAfter(DAY);
    }

    @Test
    void aFreshWoundIsFreshForSevenDays() {
        var tree = treeOn(DAY).wound(1, DAY.minusDays(2), 30, INSTRUCTOR);
        assertThat(when(tree, Fact.FRESH_WOUNDS, CLOSED))
                .isEqualTo(Outlook.Expected.on(DAY.plusDays(6)));
    }

    @Test
    void aSmallFreshCutIsWaitedForAsWell() {
        var tree =
                treeOn(DAY)
                        .wound(1, DAY.minusDays(170), 30, INSTRUCTOR)
                        .wound(2, DAY.minusDays(2), 3, INSTRUCTOR);
        assertThat(when(tree, Fact.FRESH_WOUNDS, CLOSED))
                .isEqualTo(Outlook.Expected.on(DAY.plusDays(6)));
    }

    @Test
    void aTrunkReachesItsPlannedBase() {
        var tree =
                treeOn(DAY)
                        .seen(Fact.TRUNK_BASE_MM, 30, DAY.minusYears(2))
                        .seen(Fact.TRUNK_BASE_MM, 34, DAY.minusYears(1))
                        .seen(Fact.TRUNK_BASE_MM, 38, DAY);
        assertThat(when(tree, Fact.TRUNK_BASE_SHARE, new Requirement.AtLeast(1)))
                .isInstanceOf(Outlook.Unsaid.class);
        var planned = tree.seen(Fact.TRUNK_TARGET_MM, 50, DAY);
        // 12 mm at 4 mm a year are three years; the belief before anything was read pulls a little.
        assertThat(likely(planned, Fact.TRUNK_BASE_SHARE, new Requirement.AtLeast(1)))
                .isBetween(DAY.plusDays(900), DAY.plusDays(1400));
        assertThat(when(planned, Fact.TRUNK_BASE_SHARE, new Requirement.AtLeast(1)))
                .isEqualTo(when(planned, Fact.TRUNK_BASE_MM, new Requirement.AtLeast(50)));
    }

    @Test
    void whatTimeDoesNotChangeIsSaidByItsTitle() {
        var tree = treeOn(DAY).seen(Fact.ROOT_SPREAD_DEG, 90, DAY);
        assertThat(when(tree, Fact.ROOT_SPREAD_DEG, new Requirement.AtLeast(270)))
                .isInstanceOfSatisfying(
                        Outlook.Unsaid.class,
                        unsaid ->
                                assertThat(unsaid.because()).contains("Title of ROOT_SPREAD_DEG"));
    }

    /** Nobody is sent to work on a weak tree only to have something to look at. */
    @Test
    void aWeakTreeIsNotToldToWaitForWork() {
        var tree = treeOn(DAY).seen(Fact.VIGOUR_INDEX, 30, DAY).seen(Fact.ROOT_SPREAD_DEG, 90, DAY);
        assertThat(because(tree, Fact.VIGOUR_INDEX)).contains("light, feed and no work");
        assertThat(because(tree, Fact.ROOT_SPREAD_DEG)).contains("grow strong first");
        tree.seen(Fact.VIGOUR_INDEX, 80, DAY);
        assertThat(because(tree, Fact.ROOT_SPREAD_DEG)).contains("after the next work");
    }

    private static String because(RecordOf tree, Fact fact) {
        return ((Outlook.Unsaid) when(tree, fact, new Requirement.AtLeast(270))).because();
    }

    private static LocalDate likely(RecordOf tree, Fact fact, Requirement required) {
        return ((Outlook.Expected) when(tree, fact, required)).likely();
    }

    private static Outlook when(RecordOf tree, Fact fact, Requirement required) {
        var record = tree.record();
        var growth = GrowthDays.plain();
        var closing = ClosingBelief.of(CallusPace.MODERATE.belief());
        var facts =
                new FactsOnDay(record, RecordOf.KIND)
                        .all(record.ledger(Recovery.PLAIN, Set.of()), growth, closing);
        return new TreeForecasts(
                        record,
                        asked -> "Title of " + asked,
                        closing,
                        facts,
                        growth,
                        RecordOf.KIND.leastWoundMm())
                .whenMet(fact, required, DAY);
    }
}
