package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whether forecasts keep their promise, eight of ten, on wounds and trunks that grow in ways the
 * model does not know of, see {@link Wounds} and {@link Trunks}. The report of the long run is kept
 * at src/test/resources/calibration/growth.txt, renewed by -Dgolden.renew=true.
 *
 * <p>No forecast can hold eight of ten truths in places of equal years and in places of very
 * unequal ones as long as nothing tells it which place it is at: there it holds more in the one and
 * fewer in the other. Where the school's own wounds have told, it has to hold it at each.
 */
@Tag("fast")
class CalibrationTest {

    private static final Path KEPT = Path.of("src/test/resources/calibration/growth.txt");
    private static final List<Wounds> WOUNDS =
            List.of(new Wounds.YearByYear(), new Wounds.WeekByWeek());
    private static final double[] YEAR_SDS = {0, 0.25, 0.5};
    private static final double[] PACES_MM = {3, 6, 13};
    private static final int[] READINGS = {0, 1, 2, 4, 8};
    private static final int[] TRUNK_READINGS = {1, 2, 3, 6, 12};
    private static final int WOUNDS_OF_A_SCHOOL = 60;
    private static final List<ThickeningTrials> TRUNKS =
            List.of(
                    new ThickeningTrials(new Trunks.Steady(), 0, 0.2),
                    new ThickeningTrials(new Trunks.EqualArea(), 0, 0.2),
                    new ThickeningTrials(new Trunks.TowardsAnEnd(), 1.1, 0.2),
                    new ThickeningTrials(new Trunks.TowardsAnEnd(), 1.3, 0.2),
                    new ThickeningTrials(new Trunks.TowardsAnEnd(), 1.7, 0.2),
                    new ThickeningTrials(new Trunks.TowardsAnEnd(), 3, 0.2),
                    new ThickeningTrials(new Trunks.Gompertz(), 1.1, 0.2),
                    new ThickeningTrials(new Trunks.Gompertz(), 1.3, 0.2),
                    new ThickeningTrials(new Trunks.Gompertz(), 1.7, 0.2));

    private final StringBuilder report = new StringBuilder();

    @Test
    @Tag("calibration")
    void forecastsKeepTheirPromise() throws IOException {
        int many = 100;
        for (boolean known : new boolean[] {false, true}) {
            say("Closing to 5 mm, years %s: %% covered\n", known ? "learnt" : "not known");
            say("%-11s %5s %5s %s\n", "", "years", "pace", heads(READINGS));
            for (var mechanism : WOUNDS) {
                for (double yearSd : YEAR_SDS) {
                    var all = closing(mechanism, yearSd, known, many);
                    // 1,500 forecasts: known to 1 %.
                    assertThat(all.share())
                            .as("%s, years %s, known %s", mechanism, yearSd, known)
                            .isBetween(known ? 0.74 : 0.70, known ? 0.89 : 0.94);
                }
            }
        }
        trunks(many);
        standstill(many);
        keep(report.toString());
    }

    private Coverage closing(Wounds mechanism, double yearSd, boolean known, int many) {
        var all = new Coverage();
        for (double pace : PACES_MM) {
            var trials = new ClosingTrials(mechanism, pace, yearSd, Site.TEMPERATE);
            var years = known ? trials.learnt(WOUNDS_OF_A_SCHOOL, 5) : YearSpread.UNKNOWN;
            say("%-11s %5.2f %5.0f", mechanism.getClass().getSimpleName(), yearSd, pace);
            for (int readings : READINGS) {
                var one = trials.coverage(readings, many, years, 77 + readings);
                say(" %6d", one.percent());
                all.add(one);
            }
            say("\n");
        }
        say("%-24s %5d\n", "  together", all.percent());
        return all;
    }

    private void trunks(int many) {
        say("\nA trunk up to 1.4 times as thick, years 0.20: %% covered\n");
        say("%-18s %5s %s\n", "", "end", heads(TRUNK_READINGS));
        for (var trials : TRUNKS) {
            say("%-18s %5.1f", trials.mechanism().getClass().getSimpleName(), trials.end());
            var all = new Coverage();
            for (int readings : TRUNK_READINGS) {
                var one = trials.coverage(readings, many, 41 + readings);
                say(" %6d", one.percent());
                assertThat(one.share()).as("%s, %d", trials, readings).isGreaterThan(0.6);
                all.add(one);
            }
            say("   together %d\n", all.percent());
            assertThat(all.share()).as("%s", trials).isBetween(0.74, 0.97);
        }
    }

    private void standstill(int many) {
        say(
                "\nStanding still, years 0.25: %% told after half years; %% told of those that close\n");
        for (var mechanism : WOUNDS) {
            for (double pace : new double[] {3, 5, 7, 13}) {
                var trials = new ClosingTrials(mechanism, pace, 0.25, Site.TEMPERATE);
                say("%-11s %5.0f", mechanism.getClass().getSimpleName(), pace);
                for (int halfYears : new int[] {2, 3, 4, 6}) {
                    double told = trials.standing(halfYears, many, 9).still();
                    say("   +%d: %3.0f", halfYears, 100 * told);
                    assertThat(told)
                            .as("%s, %d", trials, halfYears)
                            .isGreaterThan(pace < 4 ? 0.7 : 0.8);
                }
                for (int readings : new int[] {2, 3, 4, 6, 8}) {
                    var told = trials.closing(readings, many, 19);
                    say("   %d: %3.1f", readings, 100 * told.still());
                    assertThat(told.still()).as("%s, %d", trials, readings).isLessThan(0.12);
                    assertThat(told.opened()).as("%s, %d", trials, readings).isLessThan(0.03);
                }
                say("\n");
            }
        }
    }

    private static String heads(int[] readings) {
        var heads = new StringBuilder();
        IntStream.of(readings)
                .forEach(each -> heads.append(String.format(Locale.ROOT, " %6s", each)));
        return heads + " readings";
    }

    private void say(String format, Object... values) {
        report.append(String.format(Locale.ROOT, format, values));
    }

    /** A smaller run before each change: of 160 forecasts coverage is known to 3.2 %. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.25, 0.5})
    void fewerWoundsKeepItNearly(double yearSd) {
        for (var mechanism : WOUNDS) {
            var unknown = new Coverage();
            var learnt = new Coverage();
            for (double pace : new double[] {3, 13}) {
                var trials = new ClosingTrials(mechanism, pace, yearSd, Site.TEMPERATE);
                var years = trials.learnt(30, 5);
                for (int readings : new int[] {1, 5}) {
                    unknown.add(trials.coverage(readings, 40, YearSpread.UNKNOWN, 11 + readings));
                    learnt.add(trials.coverage(readings, 40, years, 11 + readings));
                }
            }
            assertThat(unknown.share()).as("%s, not known", mechanism).isBetween(0.68, 0.96);
            assertThat(learnt.share()).as("%s, learnt", mechanism).isBetween(0.70, 0.91);
        }
    }

    @Test
    void fewerTrunksKeepItNearly() {
        for (var trials : TRUNKS) {
            var few = trials.coverage(2, 60, 3);
            var many = trials.coverage(10, 60, 3);
            assertThat(few.share()).as("%s, few", trials).isGreaterThan(0.6);
            assertThat(many.share()).as("%s, many", trials).isGreaterThan(0.6);
            few.add(many);
            assertThat(few.share()).as("%s", trials).isBetween(0.70, 0.98);
        }
    }

    /** A trunk that never gets there is told so in as many cases as are given no likely day. */
    @Test
    void whatATrunkNeverReachesIsNotPromised() {
        var trials = new ThickeningTrials(new Trunks.TowardsAnEnd(), 0.95, 0.2);
        assertThat(trials.coverage(12, 80, 17).unsaid()).isGreaterThan(0.5);
        var steady = new ThickeningTrials(new Trunks.Steady(), 0, 0.2);
        assertThat(steady.coverage(12, 80, 17).unsaid()).isLessThan(0.1);
    }

    @Test
    void mostWoundsThatStandStillAreToldAndFewThatClose() {
        for (var mechanism : WOUNDS) {
            for (double pace : new double[] {5, 13}) {
                var trials = new ClosingTrials(mechanism, pace, 0.25, Site.TEMPERATE);
                assertThat(trials.standing(2, 100, 9).still()).as("%s", trials).isGreaterThan(0.82);
                assertThat(trials.standing(4, 100, 9).still()).as("%s", trials).isGreaterThan(0.92);
                var closing = trials.closing(5, 150, 19);
                assertThat(closing.still()).as("%s", trials).isLessThan(0.05);
                assertThat(closing.opened()).as("%s", trials).isLessThan(0.02);
            }
        }
    }

    private static void keep(String report) throws IOException {
        if (Boolean.getBoolean("golden.renew")) {
            Files.createDirectories(KEPT.getParent());
            Files.writeString(KEPT, report);
        }
        assertThat(report).isEqualTo(Files.readString(KEPT));
    }
}
