package org.ripewood.routes;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.route.Route;
import org.ripewood.core.season.Outlook;

/**
 * Routes of typical trees by the content in the jar, in bounds a teacher would sign: developed
 * stock takes five to ten years to the show container, raw stock fifteen and more.
 *
 * <p>"Material sold as developed still takes five to ten years to finish": common practice, no
 * source; and so are the bounds.
 */
@Tag("fast")
class TypicalRoutesTest {

    private static final double DAYS = 365.25;

    /**
     * A tree and how many years it may take to a goal.
     *
     * @param first bounds of the years by which one tree of ten is there
     * @param likely of every second one
     * @param last of nine in ten; a bound of 30 lets it lie out of sight
     */
    private record Row(
            String name,
            Supplier<TypicalTree> tree,
            String goal,
            Years first,
            Years likely,
            Years last) {
        @Override
        public String toString() {
            return name + " to " + goal;
        }
    }

    private record Years(double from, double to) {}

    private static Years years(double from, double to) {
        return new Years(from, to);
    }

    private static TypicalTree developed(String species, double latitude) {
        return new TypicalTree(species, latitude)
                .done("root_check")
                .done("front_marking")
                .done("branch_selection")
                .is(Fact.FRONT_MARK, "settled");
    }

    private static TypicalTree nurseryHornbeam() {
        return new TypicalTree("carpinus_betulus", 52).raw(12, 60).gains(3);
    }

    private static TypicalTree rawPine() {
        return new TypicalTree("pinus_sylvestris", 52).raw(20, 60).gains(2.5);
    }

    private static TypicalTree bulgedTrident() {
        return new TypicalTree("acer_buergerianum", 52)
                .done("root_check")
                .done("front_marking")
                .is(Fact.REVERSE_TAPER, true);
    }

    private static TypicalTree fig() {
        return developed("ficus_retusa", 1).branching(false, 2);
    }

    private static TypicalTree weakWhitePine() {
        return developed("pinus_parviflora", 52).branching(false, 2).is(Fact.VIGOUR_INDEX, 45);
    }

    private static TypicalTree juniper(double base) {
        return new TypicalTree("juniperus_chinensis", 45)
                .done("root_check")
                .done("front_marking")
                .base(base, 55)
                .branching(false, 2);
    }

    static Stream<Row> rows() {
        return Stream.of(
                new Row(
                        "nursery hornbeam, 12 mm of 60",
                        TypicalRoutesTest::nurseryHornbeam,
                        "develop",
                        years(5, 11),
                        years(8, 14),
                        years(11, 30)),
                new Row(
                        "nursery hornbeam, 12 mm of 60",
                        TypicalRoutesTest::nurseryHornbeam,
                        "show",
                        years(14, 22),
                        years(18, 30),
                        years(22, 30)),
                new Row(
                        "raw Scots pine",
                        TypicalRoutesTest::rawPine,
                        "show",
                        years(13, 22),
                        years(17, 30),
                        years(22, 30)),
                new Row(
                        "developed elm, branches set",
                        () -> developed("ulmus_parvifolia", 52).branching(true, 2),
                        "show",
                        years(3, 5),
                        years(4, 7),
                        years(5, 10)),
                new Row(
                        "hornbeam before its first wire",
                        () -> developed("carpinus_betulus", 52).branching(false, 2),
                        "show",
                        years(3.5, 6),
                        years(5, 8),
                        years(6, 10)),
                new Row(
                        "trident maple with a bulge",
                        TypicalRoutesTest::bulgedTrident,
                        "structure",
                        years(2, 5),
                        years(3, 6),
                        years(4.5, 9)),
                new Row(
                        "trident maple with a bulge",
                        TypicalRoutesTest::bulgedTrident,
                        "show",
                        years(6, 11),
                        years(8, 14),
                        years(11, 18)),
                new Row(
                        "fig at the equator",
                        TypicalRoutesTest::fig,
                        "refine",
                        years(1.5, 3),
                        years(2, 4),
                        years(3, 6)),
                new Row(
                        "weak white pine",
                        TypicalRoutesTest::weakWhitePine,
                        "structure",
                        years(1.5, 4),
                        years(2.5, 5.5),
                        years(4, 8)),
                new Row(
                        "weak white pine",
                        TypicalRoutesTest::weakWhitePine,
                        "show",
                        years(5, 9),
                        years(7, 11),
                        years(9, 15)),
                new Row(
                        "juniper, base not yet there",
                        () -> juniper(25),
                        "show",
                        years(5.5, 11),
                        years(8, 14),
                        years(11, 30)),
                new Row(
                        "juniper, 45 mm of 55, which is styled while it thickens",
                        () -> juniper(45),
                        "show",
                        years(3, 6),
                        years(4, 8),
                        years(6, 11)),
                new Row(
                        "azalea, branches set",
                        () -> developed("rhododendron_indicum", 45).branching(true, 2),
                        "show",
                        years(2, 5),
                        years(3, 6),
                        years(4, 9)),
                new Row(
                        "zelkova broom, branches set",
                        () -> developed("zelkova_serrata", 52).branching(true, 3),
                        "show",
                        years(2, 5),
                        years(3, 6),
                        years(4, 9)));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void aTypicalTreeTakesItsYears(Row row) {
        var goal = row.tree().get().route(row.goal()).goal();
        assertThat(goal).isInstanceOf(Outlook.Expected.class);
        var expected = (Outlook.Expected) goal;
        assertThat(yearsTo(expected.earliest()))
                .as("first")
                .isBetween(row.first().from(), row.first().to());
        assertThat(yearsTo(expected.likely()))
                .as("likely")
                .isBetween(row.likely().from(), row.likely().to());
        var latest = expected.latest();
        assertThat(latest == null ? 30 : yearsTo(latest))
                .as("last")
                .isBetween(row.last().from(), row.last().to());
    }

    private static double yearsTo(LocalDate day) {
        return (day.toEpochDay() - TypicalTree.DAY.toEpochDay()) / DAYS;
    }

    @ParameterizedTest
    @MethodSource("rows")
    void noStepAfterTheFirstYearHasOneDayOnly(Row row) {
        for (var step : row.tree().get().route(row.goal()).steps()) {
            if (step.when() instanceof Outlook.Expected when && yearsTo(when.earliest()) >= 1) {
                assertThat(when.earliest()).as(step.code()).isBefore(when.likely());
                assertThat(when.latest() == null ? LocalDate.MAX : when.latest())
                        .as(step.code())
                        .isAfter(when.likely());
            }
        }
    }

    /** What a step of the route changes is never taken to be so, or done the other way round. */
    @Test
    void theBulgeIsThinnedBeforeAnythingIsWired() {
        var route = bulgedTrident().route("show");
        var thinned = route.find("bulge_thinning").orElseThrow();
        var wired = route.find("wiring_primary").orElseThrow();
        assertThat(seasonsBetween(thinned, wired)).isGreaterThan(2);
        assertThat(route.unsaid()).extracting(Route.Unsaid::fact).doesNotContain("reverse_taper");
    }

    @Test
    void theChopComesFirstAndItsLeaderTakesSeasons() {
        var route = nurseryHornbeam().route("structure");
        var chop = route.find("trunk_chop").orElseThrow();
        assertThat(seasonsBetween(chop, route.find("leader_regrowth").orElseThrow()))
                .isBetween(1.0, 4.0);
        assertThat(seasonsBetween(chop, route.find("branch_selection").orElseThrow()))
                .isGreaterThan(3);
        assertThat(seasonsBetween(chop, route.find("wiring_primary").orElseThrow()))
                .isGreaterThan(4);
    }

    @Test
    void wireStaysForOneToTwoSeasonsAndMore() {
        var route = developed("carpinus_betulus", 52).branching(false, 2).route("show");
        var wired = route.find("wiring_primary").orElseThrow();
        var again = route.find("wiring_secondary").orElseThrow();
        assertThat(seasonsBetween(wired, again)).isBetween(1.0, 3.0);
    }

    private static double seasonsBetween(Route.Step one, Route.Step other) {
        var first = ((Outlook.Expected) one.when()).likely();
        var then = ((Outlook.Expected) other.when()).likely();
        return (then.toEpochDay() - first.toEpochDay()) / DAYS;
    }
}
