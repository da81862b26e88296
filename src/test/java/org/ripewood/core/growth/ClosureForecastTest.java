package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.core.growth.Closure.Look;
import org.ripewood.core.season.Outlook;

@Tag("fast")
class ClosureForecastTest {

    private static final LocalDate MADE = LocalDate.of(2020, 3, 1);
    private static final Site SITE = Site.TEMPERATE;
    private static final RateBelief MODERATE = CallusPace.MODERATE.belief();

    private static Outlook.Expected expected(Outlook outlook) {
        assertThat(outlook).isInstanceOf(Outlook.Expected.class);
        return (Outlook.Expected) outlook;
    }

    private static Outlook ask(
            Closure closure, @Nullable Double vigour, @Nullable Increment trunk) {
        return ClosureForecast.of(closure, MODERATE, vigour, trunk, SITE)
                .whenAtMost(5, closure.latest().on());
    }

    private static Closure fresh(double widthMm) {
        return Closure.of(MADE, widthMm, List.of());
    }

    private static double years(LocalDate to) {
        return ChronoUnit.DAYS.between(MADE, to) / 365.25;
    }

    /** The trade's rule; common practice, no source. "A few seasons" is taken as at most four. */
    @Test
    void aLargeCutClosesInAFewSeasonsOnAVigorousTreeAndNotOnAWeakOne() {
        var vigorous = expected(ask(fresh(24), 95.0, null));
        var weak = expected(ask(fresh(24), 15.0, null));
        assertThat(years(vigorous.likely())).isBetween(1.0, 4.0);
        assertThat(years(weak.likely())).isGreaterThan(6);
        assertThat(weak.latest() == null || years(weak.latest()) > 15).isTrue();
    }

    /**
     * Neely 1979, J. Arboric. 5(6):135-140: widths closed in one season by landscape trees of
     * substantial, moderate and modest growth 17.5, 12.7, 9.5 mm. The vigour each stands for (100,
     * 75, 55) and six tenths of it for a tree in a container are common practice, no source; so the
     * tolerance is the half of one season.
     */
    @ParameterizedTest
    @CsvSource({"17.46, 100", "12.70, 75", "9.53, 55"})
    void whatClosedInOneSeasonInTheLandscapeTakesSixTenthsOfThePaceInAContainer(
            double widthMm, double vigour) {
        var outlook =
                ClosureForecast.of(fresh(widthMm), MODERATE, vigour, null, SITE)
                        .whenAtMost(0, MADE);
        double years = SITE.between(MADE, expected(outlook).likely()) / SITE.meanPerYear();
        assertThat(years).isBetween(1 / 0.6 - 0.5, 1 / 0.6 + 0.5);
    }

    /**
     * Directions of Hein 2008, Forest Ecol. Manage., and Hein and Spiecker 2007, Can. J. For. Res.
     * 37(8): occlusion takes longer the wider the wound, and shorter the more the stem grows; of
     * Niemistö et al. 2019, Silva Fennica 53(1) 10052: a spring cut closes sooner than an autumn
     * one (here one small enough to close in the season it is made in).
     */
    @Test
    void widerTakesLongerAndMoreGrowthShorterAndAutumnLongerThanSpring() {
        long seed = 4_711;
        var dice = new SplittableRandom(seed);
        for (int i = 0; i < 60; i++) {
            double width = dice.nextDouble(8, 30);
            double more = width + dice.nextDouble(0, 10);
            double radial = dice.nextDouble(0.5, 4);
            var trunk = new Increment(radial, 0.2);
            var faster = new Increment(radial + dice.nextDouble(0, 2), 0.2);
            assertThat(expected(ask(fresh(more), 75.0, trunk)).likely())
                    .as("seed %d, round %d", seed, i)
                    .isAfterOrEqualTo(expected(ask(fresh(width), 75.0, trunk)).likely());
            assertThat(expected(ask(fresh(width), 75.0, faster)).likely())
                    .as("seed %d, round %d", seed, i)
                    .isBeforeOrEqualTo(expected(ask(fresh(width), 75.0, trunk)).likely());
        }
        var spring = expected(ask(fresh(8), 75.0, null));
        var autumnCut = LocalDate.of(2020, 9, 15);
        var autumn = expected(ask(Closure.of(autumnCut, 8, List.of()), 75.0, null));
        assertThat(ChronoUnit.DAYS.between(autumnCut, autumn.likely()))
                .isGreaterThan(ChronoUnit.DAYS.between(MADE, spring.likely()));
    }

    /**
     * Neely 1988, J. Arboric. 14(6):148-152: slow trees close more per unit of radial growth than
     * fast ones.
     */
    @Test
    void slowTreesCloseMorePerMillimetreOfGrowth() {
        var slow = ClosurePriors.prior(ClosingBelief.of(MODERATE), 75.0, new Increment(1, 0), SITE);
        var fast = ClosurePriors.prior(ClosingBelief.of(MODERATE), 75.0, new Increment(4, 0), SITE);
        assertThat(slow.rateMm() / 1).isGreaterThan(fast.rateMm() / 4);
        assertThat(slow.rateMm()).isLessThan(fast.rateMm());
    }

    @Test
    void moreVigourNeverClosesLater() {
        long seed = 81_231;
        var dice = new SplittableRandom(seed);
        for (int i = 0; i < 150; i++) {
            var wound = closing(dice, dice.nextInt(0, 5));
            double vigour = dice.nextDouble(5, 95);
            double more = vigour + dice.nextDouble(0, 100 - vigour);
            var before = ask(wound, vigour, null);
            var after = ask(wound, more, null);
            for (double p : new double[] {0.1, 0.5, 0.9}) {
                var day = before.dayAt(p, wound.latest().on());
                if (day.isPresent()) {
                    assertThat(after.dayAt(p, wound.latest().on()).orElseThrow())
                            .as("seed %d, round %d, %s", seed, i, wound)
                            .isBeforeOrEqualTo(day.get());
                }
            }
        }
    }

    @Test
    void aReadingNearerToClosedNeverMovesTheForecastLater() {
        long seed = 20_033;
        var dice = new SplittableRandom(seed);
        for (int i = 0; i < 150; i++) {
            var wound = closing(dice, 3);
            var looks = new ArrayList<>(wound.looks());
            var last = looks.remove(looks.size() - 1);
            looks.add(new Look(last.on(), last.openMm() - dice.nextDouble(0, last.openMm() / 3)));
            var later = ask(wound, 75.0, null);
            var sooner = ask(new Closure(looks), 75.0, null);
            if (later instanceof Outlook.Expected before
                    && sooner instanceof Outlook.Expected after) {
                assertThat(after.likely())
                        .as("seed %d, round %d, %s", seed, i, wound)
                        .isBeforeOrEqualTo(before.likely());
            }
        }
    }

    private static Closure closing(SplittableRandom dice, int readings) {
        double width = dice.nextDouble(12, 35);
        double share = dice.nextDouble(0.1, 0.6);
        var looks = new ArrayList<Look>();
        for (int i = 1; i <= readings; i++) {
            double open = width * (1 - share * i / readings) + dice.nextDouble(-0.5, 0.5);
            looks.add(new Look(MADE.plusDays(230L * i), open));
        }
        return Closure.of(MADE, width, looks);
    }

    @Test
    void withTheFirstWidthAloneItIsTheBeliefThatSpeaksAndItSaysSo() {
        var alone = ClosureForecast.of(fresh(20), MODERATE, 75.0, null, SITE);
        assertThat(alone.basis()).isEqualTo(ClosureForecast.Basis.PRIOR_ONLY);
        assertThat(alone.readings()).isZero();
        var read =
                ClosureForecast.of(
                        Closure.of(MADE, 20, List.of(new Look(MADE.plusDays(400), 13))),
                        MODERATE,
                        75.0,
                        null,
                        SITE);
        assertThat(read.basis()).isEqualTo(ClosureForecast.Basis.READINGS);
        var before = expected(alone.whenAtMost(5, MADE.plusDays(400)));
        var after = expected(read.whenAtMost(5, MADE.plusDays(400)));
        assertThat(ChronoUnit.DAYS.between(after.earliest(), after.latest()))
                .isLessThan(ChronoUnit.DAYS.between(before.earliest(), before.latest()));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "stood still for a year,        20, 20,   seems not to have narrowed",
        "opened again,                  10, 14,   opened again"
    })
    void whatDoesNotCloseIsToldAndNotForecast(String what, double first, double now, String why) {
        var wound =
                Closure.of(
                        MADE,
                        24,
                        List.of(
                                new Look(MADE.plusDays(230), first),
                                new Look(MADE.plusDays(600), now)));
        var forecast = ClosureForecast.of(wound, MODERATE, 75.0, null, SITE);
        assertThat(forecast.whenAtMost(5, MADE.plusDays(600)))
                .as(what)
                .isInstanceOfSatisfying(
                        Outlook.Unsaid.class, unsaid -> assertThat(unsaid.because()).contains(why));
        assertThat(forecast.band(List.of(MADE.plusDays(700)))).isEmpty();
    }

    @Test
    void deadwoodAndAPlaceWithoutGrowthAreToldAndNotForecast() {
        assertThat(ClosureForecast.deadwood(fresh(30), SITE).whenAtMost(5, MADE).toString())
                .contains("deadwood");
        var ice = new Site(-40, day -> true);
        assertThat(
                        ClosureForecast.of(fresh(30), MODERATE, 75.0, null, ice)
                                .whenAtMost(5, MADE)
                                .toString())
                .contains("Nothing grows");
    }

    @Test
    void whatLiesBeyondThirtyYearsIsNotSaid() {
        assertThat(ask(fresh(900), 75.0, null)).isInstanceOf(Outlook.Unsaid.class);
    }

    @Test
    void anOpeningSeenSmallEnoughHasBeenReachedWhateverElseIsTrue() {
        var stalled =
                Closure.of(
                        MADE,
                        24,
                        List.of(new Look(MADE.plusDays(230), 8), new Look(MADE.plusDays(900), 8)));
        var forecast = ClosureForecast.of(stalled, MODERATE, 75.0, null, SITE);
        assertThat(forecast.whenAtMost(8, MADE)).isInstanceOf(Outlook.Already.class);
        assertThat(forecast.whenAtMost(7.9, MADE)).isInstanceOf(Outlook.Unsaid.class);
    }

    /** A look in October and one in April are half a year apart but no growing season. */
    @Test
    void winterRestIsNoStalling() {
        var rested =
                Closure.of(
                        LocalDate.of(2020, 9, 20),
                        20,
                        List.of(new Look(LocalDate.of(2021, 4, 5), 20)));
        assertThat(rested.stalled(ClosingBelief.of(MODERATE), SITE)).isFalse();
        assertThat(ask(rested, 75.0, null)).isInstanceOf(Outlook.Expected.class);
    }

    @Test
    void onlyWhatWasReadSinceItOpenedAgainCounts() {
        var looks =
                List.of(
                        new Look(MADE.plusDays(200), 10),
                        new Look(MADE.plusDays(300), 20),
                        new Look(MADE.plusDays(600), 12));
        var forecast = ClosureForecast.of(Closure.of(MADE, 30, looks), MODERATE, 75.0, null, SITE);
        assertThat(forecast.readings()).isEqualTo(1);
        assertThat(forecast.whenAtMost(5, MADE.plusDays(600))).isInstanceOf(Outlook.Expected.class);
    }

    /** Nobody has looked for six years: no later day is likely, and no three days are told. */
    @Test
    void whatHasLikelyClosedUnseenIsToBeMeasured() {
        var looks = List.of(new Look(MADE.plusDays(230), 20), new Look(MADE.plusDays(600), 14));
        var seen = MADE.plusDays(600);
        var forecast = ClosureForecast.of(Closure.of(MADE, 24, looks), MODERATE, 75.0, null, SITE);
        var then = expected(forecast.whenAtMost(5, seen));
        assertThat(then.likelySince()).isNull();
        var today = seen.plusYears(6);
        var late = expected(forecast.whenAtMost(5, today));
        assertThat(late.likelySince()).isEqualTo(then.likely());
        assertThat(late.likely()).isEqualTo(today);
        var reRead = new ArrayList<>(looks);
        reRead.add(new Look(today, 5.2));
        var again = ClosureForecast.of(Closure.of(MADE, 24, reRead), MODERATE, 75.0, null, SITE);
        if (again.whenAtMost(5, today) instanceof Outlook.Expected expected) {
            assertThat(expected.likelySince()).isNull();
        }
    }

    @Test
    void looksOfOneDayInAnyOrderForecastTheSame() {
        var day = MADE.plusDays(457);
        var up = Closure.of(MADE, 20, List.of(new Look(day, 12.0), new Look(day, 13.5)));
        var down = Closure.of(MADE, 20, List.of(new Look(day, 13.5), new Look(day, 12.0)));
        assertThat(expected(ask(up, 75.0, null))).isEqualTo(expected(ask(down, 75.0, null)));
    }

    @Test
    void theBandNarrowsAtReadingsAndWidensAhead() {
        var wound =
                Closure.of(
                        MADE,
                        24,
                        List.of(
                                new Look(MADE.plusDays(230), 20),
                                new Look(MADE.plusDays(600), 14)));
        var band =
                ClosureForecast.of(wound, MODERATE, 75.0, null, SITE)
                        .band(
                                List.of(
                                        MADE.minusDays(5),
                                        MADE.plusDays(600),
                                        MADE.plusDays(1000),
                                        MADE.plusDays(9000)));
        assertThat(band).hasSize(3);
        assertThat(band.get(0).highMm() - band.get(0).lowMm())
                .isLessThan(band.get(1).highMm() - band.get(1).lowMm());
        assertThat(band.get(2)).isEqualTo(new ClosureForecast.Band(MADE.plusDays(9000), 0, 0, 0));
    }

    /**
     * Several looks on one day, widths beyond the first, and thousands of looks are no reason to
     * fail.
     */
    @Test
    void absurdSeriesAreAnswered() {
        var many =
                IntStream.range(0, 10_000)
                        .mapToObj(i -> new Look(MADE.plusDays(i % 700), 20 - (i % 700) / 70.0))
                        .toList();
        assertThat(ask(new Closure(many), 75.0, null)).isInstanceOf(Outlook.Expected.class);
        var sameDay = Closure.of(MADE, 20, List.of(new Look(MADE, 20), new Look(MADE, 19)));
        assertThat(ask(sameDay, null, null)).isInstanceOf(Outlook.Expected.class);
        var wider = Closure.of(MADE, 10, List.of(new Look(MADE.plusDays(9), 40)));
        assertThat(ask(wider, null, null)).isInstanceOf(Outlook.Unsaid.class);
    }

    @Test
    void whatIsNoWidthOrVigourIsRefused() {
        var forecast = ClosureForecast.of(fresh(20), MODERATE, null, null, SITE);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> forecast.whenAtMost(Double.NaN, MADE))
                .withMessageContaining("NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ask(fresh(20), 100.1, null))
                .withMessageContaining("100.1");
        assertThatIllegalArgumentException().isThrownBy(() -> new Increment(Double.NaN, 0));
    }
}
