package org.ripewood.trees;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.condition.TreeStates;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.Outlook;
import org.ripewood.people.Courses;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.NewWound;
import org.ripewood.records.Wounds;
import org.ripewood.sites.NewSite;
import org.ripewood.sites.ReadingsFault;
import org.ripewood.sites.ReadingsImport;
import org.ripewood.sites.ReadingsKnown;
import org.ripewood.sites.SeasonBasis;
import org.ripewood.sites.SiteSeason;

/** Daily readings of a site, and what they change. */
@QuarkusTest
class SiteReadingsTest {

    private static final String HEADER = "date,tmin,tmax\n";

    @Inject Courses courses;
    @Inject PersonRegistration register;
    @Inject Trees trees;
    @Inject TreeSites treeSites;
    @Inject Wounds wounds;
    @Inject TreeStates treeStates;
    @Inject Today today;

    private School school;
    private LocalDate day;
    private long site;

    @BeforeEach
    void openSchool() {
        day = today.date();
        school = new School(register, courses, trees, treeSites, day);
        site = school.site.id();
    }

    @Test
    void goodLinesAreKeptAndBadOnesTold() {
        var told = take(HEADER + "2024-05-01,1,9\nsoon,1,2\n2024-05-04,2,8\n2024-05-05,9,2\n");
        assertThat(told.kept()).isEqualTo(2);
        assertThat(told.changed()).isEqualTo(2);
        assertThat(told.first()).isEqualTo("2024-05-01");
        assertThat(told.last()).isEqualTo("2024-05-04");
        assertThat(told.faultCount()).isEqualTo(2);
        assertThat(told.faults())
                .extracting(ReadingsFault::line, ReadingsFault::found)
                .containsExactly(tuple(3L, "soon"), tuple(5L, "minimum 9.0, maximum 2.0"));
        assertThat(treeSites.get(school.registrar, site).readings())
                .isEqualTo(
                        new ReadingsKnown(
                                LocalDate.of(2024, 5, 1), LocalDate.of(2024, 5, 4), 2, 2));
    }

    @Test
    void theLayoutByStationIsReadAndDoubtfulValuesAreCounted() {
        var told =
                take(
                        """
                        X1,20240501,TMIN,-35,,,S,
                        X1,20240501,TMAX,120,,,S,
                        X1,20240502,TMIN,10,,,S,
                        X1,20240502,TMAX,999,,X,S,
                        """);
        assertThat(told.kept()).isEqualTo(1);
        assertThat(told.flagged()).isEqualTo(1);
        assertThat(told.incomplete()).isEqualTo(1);
    }

    @Test
    void aDayReadAgainIsReplacedAndTheOthersStay() {
        take(HEADER + "2024-05-01,1,9\n2024-05-02,1,9\n");
        var again = take(HEADER + "2024-05-02,3,7\n2024-05-03,1,9\n");
        assertThat(again.kept()).isEqualTo(2);
        assertThat(again.changed()).isEqualTo(2);
        assertThat(treeSites.get(school.registrar, site).readings())
                .extracting(ReadingsKnown::days)
                .isEqualTo(3);
        assertThat(take(HEADER + "2024-05-02,3,7\n").changed()).isZero();
    }

    @Test
    void aFileWithoutAReadingStoresNothing() {
        for (var text : List.of("", "hello", HEADER, HEADER + "soon,1,2\n")) {
            var problem = problemOf(() -> take(text));
            assertThat(problem.status()).as(text).isEqualTo(400);
        }
        assertThat(problemOf(() -> take(HEADER + "soon,1,2\n")).faults())
                .extracting("field")
                .containsExactly("line 2");
        var known = treeSites.get(school.registrar, site);
        assertThat(known.readings()).isNull();
        assertThat(known.site()).isEqualTo(school.site);
    }

    @Test
    void onlyWhoTeachesOrKeepsTheRegisterWrites() {
        var text = HEADER + "2024-05-01,1,9\n";
        assertThat(problemOf(() -> treeSites.importReadings(school.keeper, site, text)).status())
                .isEqualTo(403);
        assertThat(problemOf(() -> treeSites.change(school.keeper, site, 0, means(5))).status())
                .isEqualTo(403);
        assertThat(treeSites.importReadings(school.registrar, site, text).kept()).isEqualTo(1);
        assertThat(problemOf(() -> treeSites.importReadings(school.teacher, -5, text)).status())
                .isEqualTo(404);
    }

    @Test
    void aSiteIsChangedByTheVersionThatWasSeen() {
        var changed = treeSites.change(school.teacher, site, 0, means(10));
        assertThat(changed.basis()).isEqualTo(SeasonBasis.MONTHLY_MEANS);
        assertThat(changed.site().version()).isEqualTo(1);
        assertThat(problemOf(() -> treeSites.change(school.teacher, site, 0, means(9))).status())
                .isEqualTo(412);
        take(HEADER + "2024-05-01,1,9\n");
        assertThat(treeSites.get(school.registrar, site).site().version())
                .as("readings are no change")
                .isEqualTo(1);
        assertThat(treeSites.change(school.teacher, site, 1, means(11)).basis())
                .isEqualTo(SeasonBasis.READINGS_AND_MEANS);
    }

    @Test
    void aFewReadingsMakeNoSeasonAndAYearOfThemDoes() {
        take(yearsOf(1, 0).substring(0, 3000));
        assertThat(treeSites.get(school.registrar, site).basis())
                .isEqualTo(SeasonBasis.TYPICAL_YEAR);
        assertThat(season().days().get(0).degreeDays()).isNull();
        take(yearsOf(1, 0));
        assertThat(treeSites.get(school.registrar, site).basis()).isEqualTo(SeasonBasis.READINGS);
        assertThat(season().days())
                .hasSizeBetween(365, 366)
                .allSatisfy(one -> assertThat(one.degreeDays()).isNotNull());
    }

    @Test
    void aYearWarmerThanUsualBringsClosingNearer() {
        var tree = school.tree();
        wounds.add(
                school.teacher,
                tree.id(),
                new NewWound("behind", day.minusDays(400), 24.0, 30.0, null, null, false));
        treeSites.change(school.teacher, site, 0, usual());
        take(yearsOf(2, 0));
        var cool = likelyClosed(tree);
        double coolDays = sumOf(season());
        take(yearsOf(2, 4));
        assertThat(likelyClosed(tree)).isBefore(cool);
        assertThat(sumOf(season())).isGreaterThan(coolDays);
    }

    /** Open daily weather of 2012 to 2015; where from and under what terms, its folder says. */
    @Test
    void anOpenRecordGivesTheSeasonItsOwnDegreeDays() throws IOException {
        take(open());
        var known = treeSites.get(school.registrar, site);
        assertThat(known.basis()).isEqualTo(SeasonBasis.READINGS);
        assertThat(Objects.requireNonNull(known.readings()).missing()).isZero();
        assertThat(known.readings().days()).isEqualTo(1461);
        // 49 °N has buds closed at the turn of the year and leaves in June
        var stages = season().days();
        assertThat(stages.get(10).stage()).isZero();
        assertThat(stages.get(165).stage()).isBetween(10, 91);
    }

    /** The same record: its years are older than growth is otherwise kept for. */
    @Test
    void yearsWithReadingsMayBeAskedForHoweverOld() throws IOException {
        var refused = problemOf(() -> seasonOf(2012));
        assertThat(refused.status()).isEqualTo(400);
        take(open());
        double warmth2012 = sumOf(seasonOf(2012));
        double warmth2013 = sumOf(seasonOf(2013));
        // summed here over the file: mean of the day above 5 °C, each day's extremes both read
        assertThat(warmth2012).isCloseTo(warmthInFile(2012), within(warmth2012 * 0.1));
        assertThat(warmth2013).isCloseTo(warmthInFile(2013), within(warmth2013 * 0.1));
        assertThat(warmth2012).isNotCloseTo(warmth2013, within(1.0));
        assertThat(problemOf(() -> seasonOf(2011)).faults().get(0).message())
                .startsWith("expected a year from 2012 to ");
    }

    private SiteSeason seasonOf(int year) {
        return treeSites.season(school.registrar, site, Habit.DECIDUOUS, 5, year);
    }

    private static double warmthInFile(int year) throws IOException {
        return open().lines()
                .filter(line -> line.startsWith("" + year))
                .map(line -> line.split(",", -1))
                .mapToDouble(
                        cells ->
                                Math.max(
                                        0,
                                        (Double.parseDouble(cells[2])
                                                                + Double.parseDouble(cells[3]))
                                                        / 2
                                                - 5))
                .sum();
    }

    private static String open() throws IOException {
        try (var file =
                SiteReadingsTest.class.getResourceAsStream("/weather/noaa-daily-2012-2015.csv")) {
            return new String(Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** Whole years up to yesterday: 9 °C on average, 0 °C in January, 18 °C in July. */
    private String yearsOf(int years, double warmer) {
        var text = new StringBuilder(HEADER);
        for (var on = day.minusYears(years); on.isBefore(day); on = on.plusDays(1)) {
            double middle = Math.rint((meanOn(on.getDayOfYear()) + warmer) * 10) / 10;
            text.append("%s,%.1f,%.1f%n".formatted(on, middle - 5, middle + 5));
        }
        return text.toString();
    }

    private static double meanOn(int dayOfYear) {
        return 9 - 9 * Math.cos(2 * Math.PI * (dayOfYear - 20) / 365);
    }

    private static NewSite usual() {
        var middles = IntStream.range(0, 12).mapToObj(m -> meanOn(15 + m * 365 / 12)).toList();
        return new NewSite(
                "Lower yard",
                50.0,
                8.0,
                "UTC",
                true,
                middles.stream().map(middle -> middle - 5).toList(),
                middles.stream().map(middle -> middle + 5).toList());
    }

    private SiteSeason season() {
        return treeSites.season(school.registrar, site, Habit.DECIDUOUS, 5, null);
    }

    private static double sumOf(SiteSeason season) {
        var days = season.days();
        return Objects.requireNonNull(days.get(days.size() - 1).degreeDays());
    }

    private LocalDate likelyClosed(Tree tree) {
        var closing = treeStates.growth(school.teacher, tree.id(), day).closings().get(0);
        return ((Outlook.Expected) closing.closed()).likely();
    }

    private NewSite means(double celsius) {
        return new NewSite(
                "Lower yard",
                50.0,
                8.0,
                "UTC",
                true,
                Collections.nCopies(12, celsius - 5),
                Collections.nCopies(12, celsius + 5));
    }

    private ReadingsImport take(String text) {
        return treeSites.importReadings(school.teacher, site, text);
    }

    private static Problem problemOf(ThrowingCallable call) {
        return Objects.requireNonNull(catchThrowableOfType(Refused.class, call)).problem();
    }
}
