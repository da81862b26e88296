package org.ripewood.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.core.season.GrowingSeason;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.TypicalYear;
import org.ripewood.pictures.SeasonDrawing.Span;
import org.ripewood.pictures.SeasonDrawing.Window;

@Tag("fast")
class SeasonPictureTest {

    private static final LocalDate NEW_YEAR = LocalDate.of(2026, 1, 1);
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 20);

    /** Warmth as a wave over the year, a stand-in for a place. */
    private static List<Double> wave(double mean) {
        var sums = new ArrayList<Double>();
        double sum = 0;
        for (int day = 0; day < 365; day++) {
            sum += Math.max(0, mean - 10 * Math.cos(2 * Math.PI * (day - 15) / 365));
            sums.add(sum);
        }
        return sums;
    }

    private static SeasonDrawing garden() {
        var typical = TypicalYear.of(Habit.DECIDUOUS, 52);
        var bare =
                SeasonDrawing.of(
                        "Field maple 7",
                        GrowthDays.plain(),
                        typical,
                        GrowingSeason.of(TODAY, 52),
                        List.of(),
                        TODAY);
        return new SeasonDrawing(
                "Field maple 7, garden",
                NEW_YEAR,
                wave(6),
                wave(5.2),
                bare.spans(),
                List.of(
                        new Window(
                                "Repot and prune the roots",
                                LocalDate.of(2026, 2, 16),
                                LocalDate.of(2026, 4, 15)),
                        new Window(
                                "Defoliate in part",
                                LocalDate.of(2026, 6, 1),
                                LocalDate.of(2026, 7, 15))),
                TODAY);
    }

    @Test
    void aSeasonLooksAsItDid() throws IOException {
        Golden.assertUnchanged("season-page", SeasonPicture.of(garden(), Sheet.PAGE));
        Golden.assertUnchanged("season-phone", SeasonPicture.of(garden(), Sheet.PHONE));
        Golden.assertUnchanged("season-paper", SeasonPicture.of(garden(), Sheet.PAPER));
    }

    @Test
    void theSpansOfAYearFollowEachOtherWithoutAGap() {
        var spans = garden().spans();
        assertThat(spans.get(0).from()).isEqualTo(NEW_YEAR);
        for (int i = 1; i < spans.size(); i++) {
            assertThat(spans.get(i).from()).isEqualTo(spans.get(i - 1).to().plusDays(1));
            assertThat(spans.get(i).phase()).isNotEqualTo(spans.get(i - 1).phase());
        }
        assertThat(spans.get(spans.size() - 1).to()).isEqualTo(LocalDate.of(2026, 12, 31));
    }

    /** Codes of the BBCH scale and their meaning: Meier 2001, BBCH Monograph, 2nd edition. */
    @ParameterizedTest
    @CsvSource({
        "0, REST",
        "1, SWELLING",
        "9, SWELLING",
        "10, LEAVES",
        "19, LEAVES",
        "31, SHOOTS",
        "39, SHOOTS",
        "91, HARDENED",
        "92, FALL",
        "95, FALL",
        "97, REST",
        "99, REST"
    })
    void aStageBelongsToAPhase(int stage, Phase phase) {
        assertThat(Phase.of(stage)).isEqualTo(phase);
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 100})
    void aStageOutsideTheScaleIsRefused(int stage) {
        assertThatThrownBy(() -> Phase.of(stage))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(Integer.toString(stage));
    }

    @Test
    void theWordsTellWarmthAndStage() {
        assertThat(SeasonPicture.of(garden(), Sheet.PAGE).description())
                .isEqualTo(
                        "On 20 June 2026 "
                                + Math.round(garden().sums().get(170))
                                + " °C·d have gone by; the tree is at: shoots grow.");
    }

    /** A Fahrenheit degree is 5/9 of a Celsius one. */
    @Test
    void degreeDaysAreShownInFahrenheitToThoseWhoUseThem() {
        var picture = SeasonPicture.of(garden(), Sheet.PAGE.in(Units.US));
        assertThat(picture.description())
                .contains(Math.round(garden().sums().get(170) * 9 / 5) + " °F·d");
    }

    @Test
    void aPlaceWithoutTemperaturesIsStillDrawn() {
        var nothing =
                new SeasonDrawing(
                        "Elm", NEW_YEAR, List.of(), List.of(), List.of(), List.of(), TODAY);
        var picture = SeasonPicture.of(nothing, Sheet.PHONE);
        Svg.assertSound(picture);
        assertThat(picture.description())
                .isEqualTo(
                        "On 20 June 2026 no degree-days are known;"
                                + " the growth stage is not known.");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, Double.MIN_VALUE, 1e300, Double.MAX_VALUE})
    void absurdWarmthStaysOnTheSheet(double sum) {
        var absurd =
                new SeasonDrawing(
                        "Elm",
                        LocalDate.of(9999, 6, 1),
                        Collections.nCopies(366, sum),
                        Collections.nCopies(3, sum),
                        List.of(new Span(Phase.REST, LocalDate.MIN, LocalDate.MAX)),
                        List.of(new Window("all", LocalDate.MIN, LocalDate.MAX)),
                        LocalDate.of(9999, 6, 1));
        Svg.assertSound(SeasonPicture.of(absurd, Sheet.PHONE));
        Svg.assertSound(SeasonPicture.of(absurd, Sheet.PAGE.in(Units.US)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void sumsThatAreNoneAreRefused(double sum) {
        assertThatThrownBy(
                        () ->
                                new SeasonDrawing(
                                        "Elm",
                                        NEW_YEAR,
                                        List.of(sum),
                                        List.of(),
                                        List.of(),
                                        List.of(),
                                        TODAY))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(Double.toString(sum));
    }

    @Test
    void aWindowThatEndsBeforeItBeginsIsRefused() {
        assertThatThrownBy(() -> new Window("repot", TODAY, TODAY.minusDays(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("repot");
    }
}
