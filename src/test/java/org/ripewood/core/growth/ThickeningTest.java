package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.growth.Thickening.Form;
import org.ripewood.core.growth.Thickening.Reading;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.core.season.Outlook;

@Tag("fast")
class ThickeningTest {

    private static final LocalDate FIRST = LocalDate.of(2010, 3, 1);
    private static final GrowthDays PLAIN = GrowthDays.plain();

    private static Reading after(double years, double diameterMm) {
        return new Reading(FIRST.plusDays(Math.round(years * 365.25)), diameterMm);
    }

    private static Thickening of(List<Reading> readings) {
        return Thickening.of(readings, Thickening.IN_TRAINING, PLAIN);
    }

    private static Outlook.Expected expected(Outlook outlook) {
        assertThat(outlook).isInstanceOf(Outlook.Expected.class);
        return (Outlook.Expected) outlook;
    }

    @Test
    void nothingReadTellsNothing() {
        var nothing = of(List.of());
        assertThat(nothing.form()).isEqualTo(Form.NOTHING_READ);
        assertThat(nothing.increment()).isEqualTo(Thickening.IN_TRAINING);
        assertThat(nothing.whenAtLeast(40, FIRST).toString()).contains("measure it");
        assertThat(nothing.band(List.of(FIRST))).isEmpty();
    }

    /** 30 mm growing by the believed 3 mm a year are 42 after four. */
    @Test
    void oneReadingGoesOnAtTheBelievedPace() {
        var outlook = expected(of(List.of(after(0, 30))).whenAtLeast(42, FIRST));
        assertThat(outlook.likely()).isBetween(FIRST.plusYears(3), FIRST.plusYears(5));
        assertThat(
                        outlook.latest() == null
                                || outlook.latest().isAfter(outlook.likely().plusYears(4)))
                .isTrue();
    }

    @Test
    void readingsOutweighTheBelief() {
        var quick = of(List.of(after(0, 30), after(1, 36), after(2, 42), after(3, 48)));
        assertThat(quick.form()).isEqualTo(Form.STRAIGHT);
        assertThat(quick.increment().radialMm()).isCloseTo(3, within(0.3));
        assertThat(expected(quick.whenAtLeast(60, FIRST)).likely())
                .isBetween(FIRST.plusMonths(58), FIRST.plusMonths(66));
    }

    /** 60 − 40 e^(−0.25 t) passes 56 after ln(40 / 4) / 0.25 = 9.2 years and never 61. */
    @Test
    void aTrunkThatSlowsDownIsForecastAlongItsWay() {
        var readings =
                IntStream.range(0, 15)
                        .mapToObj(i -> after(i / 2.0, 60 - 40 * Math.exp(-0.125 * i)))
                        .toList();
        var today = FIRST.plusYears(7);
        assertThat(of(readings).form()).isEqualTo(Form.CURVED);
        var soon = expected(of(readings).whenAtLeast(56, today));
        assertThat(soon.likely()).isBetween(FIRST.plusMonths(98), FIRST.plusMonths(122));
        assertThat(of(readings).whenAtLeast(75, today)).isInstanceOf(Outlook.Unsaid.class);
    }

    /** With the way beyond the readings grows what is not known, whatever the readings. */
    @Test
    void theBandWidensBeyondTheReadings() {
        var readings = IntStream.range(0, 8).mapToObj(i -> after(i, 20 + 3 * i)).toList();
        var days =
                List.of(
                        FIRST.plusYears(7),
                        FIRST.plusYears(9),
                        FIRST.plusYears(13),
                        FIRST.plusYears(25));
        double before = 0;
        for (var band : of(readings).band(days)) {
            assertThat(band.highMm() - band.lowMm()).isGreaterThan(2 * before);
            before = band.highMm() - band.lowMm();
        }
    }

    /** Nobody has looked for fifteen years: it has likely got there, and is to be measured. */
    @Test
    void whatHasLikelyBeenReachedUnseenIsToBeMeasured() {
        var readings = IntStream.range(0, 5).mapToObj(i -> after(i, 20 + 4 * i)).toList();
        var outlook = expected(of(readings).whenAtLeast(44, FIRST.plusYears(19)));
        assertThat(outlook.likelySince()).isBetween(FIRST.plusYears(5), FIRST.plusYears(8));
        assertThat(outlook.likely()).isEqualTo(FIRST.plusYears(19));
    }

    @Test
    void steadyGrowthStaysAStraightLineHoweverOftenItIsRead() {
        var dice = new Random(5);
        var readings =
                IntStream.range(0, 10)
                        .mapToObj(i -> after(i, 20 + 4 * i + 0.5 * dice.nextGaussian()))
                        .toList();
        assertThat(of(readings).form()).isEqualTo(Form.STRAIGHT);
    }

    @Test
    void theOrderOfReadingsDoesNotMatter() {
        var readings = new ArrayList<Reading>();
        for (int i = 0; i < 8; i++) {
            readings.add(after(i, 60 - 50 * Math.exp(-0.3 * i)));
        }
        var expected = of(readings).whenAtLeast(58, FIRST);
        Collections.shuffle(readings, new Random(17));
        assertThat(of(readings).whenAtLeast(58, FIRST)).isEqualTo(expected);
    }

    @Test
    void aTrunkThatDoesNotGrowIsGivenNoDay() {
        var still = of(List.of(after(0, 40), after(2, 40), after(4, 40), after(6, 39.8)));
        assertThat(still.whenAtLeast(60, FIRST.plusYears(6))).isInstanceOf(Outlook.Unsaid.class);
        assertThat(still.increment().radialMm()).isLessThan(0.1);
    }

    @Test
    void absurdSeriesAreAnswered() {
        var sameDay = Collections.nCopies(9, after(0, 30));
        assertThat(of(sameDay).form()).isEqualTo(Form.STRAIGHT);
        assertThat(of(sameDay).whenAtLeast(40, FIRST)).isInstanceOf(Outlook.Expected.class);
        var zeros = IntStream.range(0, 8).mapToObj(i -> after(i, 0)).toList();
        assertThat(of(zeros).whenAtLeast(40, FIRST.plusYears(8)))
                .isInstanceOf(Outlook.Unsaid.class);
        var many = IntStream.range(0, 10_000).mapToObj(i -> after(i / 700.0, 20 + i / 200.0));
        assertThat(of(many.toList()).whenAtLeast(80, FIRST.plusYears(15)))
                .isInstanceOf(Outlook.Expected.class);
        var ice = new Site(-40, day -> true);
        assertThat(
                        Thickening.of(List.of(after(0, 30)), Thickening.IN_TRAINING, ice)
                                .whenAtLeast(40, FIRST)
                                .toString())
                .contains("Nothing grows");
    }

    @Test
    void whatIsNoDiameterIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> after(0, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> after(0, -1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of(List.of(after(0, 30))).whenAtLeast(Double.NaN, FIRST));
    }
}
