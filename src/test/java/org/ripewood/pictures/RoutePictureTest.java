package org.ripewood.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.core.season.Outlook;
import org.ripewood.pictures.RouteDrawing.Stage;
import org.ripewood.pictures.RouteDrawing.Step;

@Tag("fast")
class RoutePictureTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 6, 20);

    private static Outlook expected(String earliest, String likely, @Nullable String latest) {
        return new Outlook.Expected(
                LocalDate.parse(earliest),
                LocalDate.parse(likely),
                latest == null ? null : LocalDate.parse(latest));
    }

    private static RouteDrawing maple(double latitude) {
        return new RouteDrawing(
                "Field maple 7",
                "Show",
                latitude,
                TODAY,
                expected("2034-09-01", "2036-09-20", "2040-10-01"),
                List.of(
                        new Stage(
                                "Establish",
                                List.of(
                                        new Step(
                                                "Uncover the root flare", done(), false, "", false),
                                        new Step(
                                                "Repot and prune the roots",
                                                expected("2027-03-05", "2027-03-20", "2028-03-18"),
                                                true,
                                                "the season",
                                                false))),
                        new Stage(
                                "Develop the trunk",
                                List.of(
                                        new Step(
                                                "Chop the trunk",
                                                expected("2028-02-20", "2029-02-25", "2030-03-01"),
                                                true,
                                                "recovery from root work",
                                                false),
                                        new Step(
                                                "Thin a bulge",
                                                new Outlook.Unsaid("measure the trunk first"),
                                                false,
                                                "a measurement",
                                                false),
                                        new Step(
                                                "Remove a sacrifice branch from the lower trunk, left",
                                                expected("2029-02-20", "2031-02-25", "2033-03-01"),
                                                false,
                                                "girth of the base",
                                                false))),
                        new Stage(
                                "Build the structure",
                                List.of(
                                        new Step(
                                                "Wire the primary branches",
                                                expected("2031-10-20", "2033-11-01", "2036-11-10"),
                                                true,
                                                "closing of the chop",
                                                true))),
                        new Stage(
                                "Refine",
                                List.of(
                                        new Step(
                                                "Plant in the show container",
                                                expected("2034-03-10", "2036-03-20", null),
                                                true,
                                                "twigs",
                                                false)))),
                "closing of the chop",
                true);
    }

    private static Outlook done() {
        return new Outlook.Already();
    }

    @Test
    void aRouteLooksAsItDid() throws IOException {
        Golden.assertUnchanged("route-page", RoutePicture.of(maple(52), Sheet.PAGE));
        Golden.assertUnchanged("route-phone", RoutePicture.of(maple(52), Sheet.PHONE));
        Golden.assertUnchanged("route-paper", RoutePicture.of(maple(-34), Sheet.PAPER));
    }

    @Test
    void southOfTheEquatorASeasonHasTwoYears() {
        assertThat(Svg.texts(RoutePicture.of(maple(-34), Sheet.PAGE))).contains("2028/29");
        assertThat(Svg.texts(RoutePicture.of(maple(52), Sheet.PAGE)))
                .contains("2028")
                .doesNotContain("2028/29");
    }

    @Test
    void everyStepIsInTheTableInItsOrder() {
        var table = RoutePicture.of(maple(52), Sheet.PHONE).table();
        assertThat(table.rows().stream().map(row -> row.get(0)))
                .startsWith("Uncover the root flare", "Repot and prune the roots")
                .hasSize(7);
        assertThat(table.rows().get(3))
                .containsExactly(
                        "Thin a bulge",
                        "Develop the trunk",
                        "cannot be said: measure the trunk first",
                        "no",
                        "a measurement");
        assertThat(table.rows().get(6).get(2))
                .isEqualTo(
                        "about spring 2036; not before spring 2034, and how late cannot be said");
    }

    @Test
    void theTextSaysWhatHoldsTheTreeUp() {
        assertThat(RoutePicture.of(maple(52), Sheet.PAGE).description())
                .isEqualTo(
                        "Show: not before autumn 2034, more likely about autumn 2036, if what is"
                                + " taken for granted is so. It waits longest for: closing of the"
                                + " chop.");
    }

    @Test
    void aRouteWithoutStepsIsStillDrawn() {
        var picture = RoutePicture.of(empty(TODAY, done()), Sheet.PHONE);
        Svg.assertSound(picture);
        assertThat(picture.table().rows()).isEmpty();
    }

    private static RouteDrawing empty(LocalDate today, Outlook reached) {
        return new RouteDrawing("Elm", "Show", 0, today, reached, List.of(), "", false);
    }

    @Test
    void hundredsOfStepsAreEachGivenARow() {
        var steps =
                IntStream.range(0, 300)
                        .mapToObj(i -> new Step("step " + i, day(i), i % 2 == 0, "", false))
                        .toList();
        var many =
                new RouteDrawing(
                        "Elm",
                        "Show",
                        52,
                        TODAY,
                        done(),
                        List.of(new Stage("All", steps)),
                        "",
                        false);
        var picture = RoutePicture.of(many, Sheet.PAGE);
        Svg.assertSound(picture);
        assertThat(Svg.texts(picture)).contains("step 0", "step 299");
        assertThat(picture.table().rows()).hasSize(300);
    }

    private static Outlook day(int later) {
        return Outlook.Expected.on(TODAY.plusMonths(later));
    }

    @ParameterizedTest
    @ValueSource(strings = {"-0001-01-01", "0001-01-01", "2026-06-20", "9999-12-31"})
    void absurdDaysStayOnTheSheet(String day) {
        var absurd = new Outlook.Expected(LocalDate.MIN, LocalDate.parse(day), LocalDate.MAX);
        var steps = List.of(new Step("step", absurd, true, "", true));
        for (double latitude : new double[] {-90, 0, 90}) {
            var drawing =
                    new RouteDrawing(
                            "Elm",
                            "Show",
                            latitude,
                            LocalDate.parse(day),
                            absurd,
                            List.of(new Stage("All", steps)),
                            "",
                            true);
            Svg.assertSound(RoutePicture.of(drawing, Sheet.PHONE));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-91, Double.NaN, 90.1})
    void aPlaceBeyondThePolesIsRefused(double latitude) {
        assertThatThrownBy(() -> maple(latitude))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(Double.toString(latitude));
    }
}
