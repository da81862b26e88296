package org.ripewood.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.core.growth.Closure.Look;
import org.ripewood.core.season.Outlook;
import org.ripewood.pictures.ClosureDrawing.Opening;

@Tag("fast")
class ClosurePictureTest {

    private static final LocalDate CUT = LocalDate.of(2024, 3, 12);
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 20);

    static ClosureDrawing chop() {
        var looks =
                List.of(
                        new Look(CUT, 38),
                        new Look(LocalDate.of(2024, 9, 30), 33.5),
                        new Look(LocalDate.of(2025, 6, 14), 29),
                        new Look(LocalDate.of(2025, 10, 2), 24.5),
                        new Look(LocalDate.of(2026, 6, 15), 20));
        var band = new ArrayList<Opening>();
        for (int month = 0; month <= 60; month++) {
            var day = TODAY.plusMonths(month);
            double seasons = seasonsBy(day) - seasonsBy(TODAY);
            double likely = Math.max(0, 20 - 9 * seasons);
            double spread = 1 + 1.6 * seasons;
            band.add(
                    new Opening(
                            day,
                            Math.max(0, likely - spread - 1.2 * seasons),
                            likely,
                            Math.max(likely, 20 - 9 * seasons + spread + 1.2 * seasons)));
        }
        return new ClosureDrawing(
                "trunk chop, back",
                looks,
                1.5,
                band,
                5,
                new Outlook.Expected(
                        LocalDate.of(2027, 8, 3),
                        LocalDate.of(2028, 5, 26),
                        LocalDate.of(2029, 7, 8)),
                TODAY);
    }

    /** A stand-in for growth-time: seven months of growth, five of rest. */
    private static double seasonsBy(LocalDate day) {
        double inYear = Math.max(0, Math.min(1, (day.getDayOfYear() - 90) / 210.0));
        return day.getYear() + inYear;
    }

    @Test
    void aClosingWoundLooksAsItDid() throws IOException {
        Golden.assertUnchanged("closure-page", ClosurePicture.of(chop(), Sheet.PAGE));
        Golden.assertUnchanged("closure-phone", ClosurePicture.of(chop(), Sheet.PHONE));
        Golden.assertUnchanged("closure-paper", ClosurePicture.of(chop(), Sheet.PAPER));
    }

    @Test
    void aWoundWithoutForecastLooksAsItDid() throws IOException {
        Golden.assertUnchanged("closure-unsaid", ClosurePicture.of(stalled(), Sheet.PHONE));
    }

    private static ClosureDrawing stalled() {
        return new ClosureDrawing(
                "old branch, left",
                List.of(
                        new Look(CUT, 14),
                        new Look(LocalDate.of(2025, 3, 1), 11),
                        new Look(LocalDate.of(2026, 6, 1), 11.2)),
                0.5,
                List.of(),
                5,
                new Outlook.Unsaid("it has not narrowed for a growing season"),
                TODAY);
    }

    @Test
    void whatCannotBeSaidIsToldWithItsReason() {
        var picture = ClosurePicture.of(stalled(), Sheet.PAGE);
        assertThat(picture.description())
                .contains("cannot be said: it has not narrowed for a growing season.");
    }

    @Test
    void whatIsLikelySoUnseenIsToBeMeasured() {
        var chop = chop();
        var unseen =
                new ClosureDrawing(
                        chop.wound(),
                        chop.looks(),
                        chop.errorMm(),
                        chop.band(),
                        chop.thresholdMm(),
                        new Outlook.Expected(TODAY, TODAY, null, TODAY.minusYears(2)),
                        TODAY);
        assertThat(ClosurePicture.of(unseen, Sheet.PAGE).description())
                .contains("likely since", "nobody has looked: measure it");
    }

    @Test
    void theTableHoldsEveryReadingAndTheForecast() {
        var table = ClosurePicture.of(chop(), Sheet.PAGE).table();
        assertThat(table.rows()).hasSizeGreaterThan(10);
        assertThat(table.rows().get(0))
                .containsExactly("12 March 2024", "measured", "38 mm", "± 1.5 mm");
        assertThat(table.rows()).anySatisfy(row -> assertThat(row).contains("expected"));
    }

    /** 38 mm are 1.496 in, by the inch of 25.4 mm. */
    @Test
    void inchesAreShownToThoseWhoMeasureInThem() {
        var picture = ClosurePicture.of(chop(), Sheet.PAGE.in(Units.US));
        assertThat(picture.table().rows().get(0)).contains("1.5 in");
        assertThat(Svg.texts(picture)).contains("opening, in", "1.5");
    }

    @Test
    void aWoundNobodyMeasuredIsStillDrawn() {
        var nothing =
                new ClosureDrawing(
                        "new cut", List.of(), 0, List.of(), 0, new Outlook.Already(), TODAY);
        var picture = ClosurePicture.of(nothing, Sheet.PHONE);
        Svg.assertSound(picture);
        assertThat(picture.description()).startsWith("Nothing measured yet.");
        assertThat(picture.table().rows()).isEmpty();
    }

    @Test
    void tenThousandReadingsMakeNoHugePicture() {
        var looks = new ArrayList<Look>();
        for (int i = 0; i < 10_000; i++) {
            looks.add(new Look(CUT.plusDays(i), 38 - i / 500.0));
        }
        var many =
                new ClosureDrawing("wound", looks, 1, List.of(), 5, new Outlook.Already(), TODAY);
        var picture = ClosurePicture.of(many, Sheet.PAGE);
        Svg.assertSound(picture);
        assertThat(picture.svg().length()).isLessThan(150_000);
        assertThat(picture.table().rows()).hasSize(60);
        assertThat(picture.table().caption()).contains("9940 between");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, Double.MIN_VALUE, 1e-9, 3e5, 1e300, Double.MAX_VALUE})
    void absurdWidthsStayOnTheSheet(double widthMm) {
        var absurd =
                new ClosureDrawing(
                        "wound",
                        List.of(new Look(CUT, widthMm), new Look(LocalDate.MAX, 3)),
                        widthMm,
                        List.of(
                                new Opening(LocalDate.MIN, 0, 0, widthMm),
                                new Opening(TODAY, 0, widthMm, widthMm)),
                        widthMm,
                        new Outlook.Expected(LocalDate.MIN, TODAY, LocalDate.MAX),
                        TODAY);
        Svg.assertSound(ClosurePicture.of(absurd, Sheet.PHONE));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void aThresholdThatIsNoWidthIsRefused(double mm) {
        assertThatThrownBy(
                        () ->
                                new ClosureDrawing(
                                        "wound",
                                        List.of(),
                                        1,
                                        List.of(),
                                        mm,
                                        new Outlook.Already(),
                                        TODAY))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(Double.toString(mm));
        assertThatThrownBy(() -> new Opening(TODAY, 0, mm, 3))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
