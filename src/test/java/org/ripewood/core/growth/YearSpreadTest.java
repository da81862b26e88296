package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.season.GrowthDays;

@Tag("fast")
class YearSpreadTest {

    private static final LocalDate MADE = LocalDate.of(2016, 3, 1);

    /** A wound read each March that closed by these widths from year to year. */
    private static YearEvidence closedBy(double... mm) {
        double open = 4;
        for (double one : mm) {
            open += one;
        }
        double first = open;
        var looks = new ArrayList<Closure.Look>();
        for (int year = 1; year <= mm.length; year++) {
            open -= mm[year - 1];
            looks.add(new Closure.Look(MADE.plusYears(year), open));
        }
        looks.add(new Closure.Look(MADE.plusYears(mm.length + 1), 0));
        var closure = Closure.of(MADE, first, looks);
        return YearEvidence.of(closure, CallusPace.GOOD.belief(), GrowthDays.plain()).orElseThrow();
    }

    @Test
    void equalYearsNarrowTheBeliefAndUnequalOnesWidenIt() {
        double before = YearSpread.UNKNOWN.mean();
        var alike = List.of(closedBy(8, 10, 10, 10, 10, 10), closedBy(9, 11, 11, 11, 11, 11));
        assertThat(YearSpread.UNKNOWN.learn(alike).mean()).isLessThan(before - 0.05);
        var unlike = List.of(closedBy(3, 16, 5, 17, 4, 15), closedBy(2, 15, 4, 18, 3, 14));
        assertThat(YearSpread.UNKNOWN.learn(unlike).mean()).isGreaterThan(before + 0.05);
    }

    @Test
    void theOrderOfWoundsDoesNotMatterAndNoneChangesNothing() {
        var wounds =
                new ArrayList<>(
                        List.of(
                                closedBy(8, 10, 10, 10),
                                closedBy(3, 16, 5, 17),
                                closedBy(6, 12, 9, 8)));
        double mean = YearSpread.UNKNOWN.learn(wounds).mean();
        Collections.shuffle(wounds, new Random(3));
        assertThat(YearSpread.UNKNOWN.learn(wounds).mean()).isCloseTo(mean, within(1e-9));
        assertThat(YearSpread.UNKNOWN.learn(List.of())).isSameAs(YearSpread.UNKNOWN);
    }

    /** Wounds of the same years had the same good and bad ones: a hundred say no more than one. */
    @Test
    void eachYearIsHeardOnce() {
        var one = closedBy(3, 16, 5, 17, 4, 15);
        assertThat(YearSpread.UNKNOWN.learn(Collections.nCopies(100, one)).mean())
                .isCloseTo(YearSpread.UNKNOWN.learn(List.of(one)).mean(), within(1e-9));
    }

    @Test
    void whatWasReadTooSeldomOrOpenedAgainSaysNothing() {
        var days = GrowthDays.plain();
        var kind = CallusPace.GOOD.belief();
        var seldom = Closure.of(MADE, 20, List.of(new Closure.Look(MADE.plusYears(1), 12)));
        assertThat(YearEvidence.of(seldom, kind, days)).isEmpty();
        var looks = new ArrayList<Closure.Look>();
        for (int year = 1; year < 6; year++) {
            looks.add(new Closure.Look(MADE.plusYears(year), year == 3 ? 19 : 20 - 3 * year));
        }
        assertThat(YearEvidence.of(Closure.of(MADE, 20, looks), kind, days)).isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> YearSpread.exactly(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> YearSpread.exactly(Double.NaN));
    }
}
