package org.ripewood.core.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.ripewood.core.route.Ways.DAY;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.progress.Work;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.core.route.Ways.StepOf;
import org.ripewood.core.season.Outlook;

/** Years and people that differ, against what the distributions say by hand. */
@Tag("fast")
class SpreadTest {

    private static final int DRAWS = 4_000;

    private static Outlook.Expected when(Spread spread, StepOf step, Work... works) {
        var ledger = new WorkLedger(List.of(works), 50);
        var start = new RouteStart(DAY, ledger, 8, Ways.MONTHS, spread);
        var route = Route.simulate(start, Ways.steps(step), 1, DRAWS, 11);
        return (Outlook.Expected) route.find(step.code).orElseThrow().when();
    }

    private static double days(LocalDate from, LocalDate to) {
        return ChronoUnit.DAYS.between(from, to);
    }

    /** Tenths of an exponential of mean 20: 20 ln(10/9) = 2.1, 20 ln 2 = 13.9, 20 ln 10 = 46.1. */
    @Test
    void delaysFallOffExponentially() {
        var late = when(new Spread(0, 0, 0, 20), new StepOf("wire"));
        assertThat(days(DAY, late.earliest())).isCloseTo(2.1, within(1.0));
        assertThat(days(DAY, late.likely())).isCloseTo(13.9, within(2.0));
        assertThat(days(DAY, late.latest())).isCloseTo(46.1, within(5.0));
    }

    @Test
    void aMissedWindowIsNextYears() {
        var step = new StepOf("repot").open(3, 4);
        var often = when(new Spread(0, 0, 0.2, 0), step);
        assertThat(often.likely()).isEqualTo(LocalDate.of(2025, 3, 1));
        assertThat(often.latest()).isEqualTo(LocalDate.of(2026, 3, 1));
        var seldom = when(new Spread(0, 0, 0.05, 0), step);
        assertThat(seldom.latest()).isEqualTo(LocalDate.of(2025, 3, 1));
    }

    /** A tenth of a normal lies 1.28 standard deviations out; this year is as it is. */
    @Test
    void laterYearsComeEarlyOrLate() {
        var spread = new Spread(10, 0, 0, 0);
        var now = when(spread, new StepOf("repot").open(3, 3));
        assertThat(now.earliest()).isEqualTo(now.latest());
        var wait = Outlook.Expected.on(LocalDate.of(2025, 6, 1));
        var later = when(spread, new StepOf("repot").open(3, 3).waits("rest", wait));
        var usual = LocalDate.of(2026, 3, 1);
        assertThat(days(later.earliest(), usual)).isCloseTo(12.8, within(1.5));
        assertThat(days(later.likely(), usual)).isCloseTo(0, within(1.0));
        assertThat(days(usual, later.latest())).isCloseTo(12.8, within(1.5));
    }

    /**
     * Of a load of 5 two fifths of its 100 days have to go by before 5 more are borne: 40 days, and
     * at e^(±0.2 · 1.28) times the usual pace 31 and 52.
     */
    @Test
    void recoveryTakesLongerOrLess() {
        var step = new StepOf("wire");
        step.stress = 5;
        var rested = when(new Spread(0, 0.2, 0, 0), step, new Work("chop", DAY, 5, 100, 0, 0));
        assertThat(days(DAY, rested.earliest())).isCloseTo(31, within(2.0));
        assertThat(days(DAY, rested.likely())).isCloseTo(40, within(2.0));
        assertThat(days(DAY, rested.latest())).isCloseTo(52, within(2.0));
    }

    @Test
    void impossibleSpreadsAreRefusedByName() {
        assertThatThrownBy(() -> new Spread(-1, 0, 0, 0)).hasMessageContaining("seasonDays");
        assertThatThrownBy(() -> new Spread(0, 0, 1, 0)).hasMessageContaining("missed");
        assertThatThrownBy(() -> new Spread(0, Double.NaN, 0, 0)).hasMessageContaining("recovery");
        assertThatThrownBy(() -> new Seasons(2, 1, 3)).hasMessageContaining("2.0, 1.0, 3.0");
    }
}
