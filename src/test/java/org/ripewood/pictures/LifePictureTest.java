package org.ripewood.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.season.Outlook;
import org.ripewood.pictures.LifePicture.Ahead;
import org.ripewood.pictures.LifePicture.Dot;
import org.ripewood.pictures.LifePicture.Drawing;
import org.ripewood.pictures.LifePicture.Since;
import org.ripewood.pictures.LifePicture.Wedge;
import org.ripewood.pictures.LifePicture.Width;

/** A life on one axis: past left of today, what is ahead right of it. */
@Tag("fast")
class LifePictureTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 2, 20);

    private static Drawing maple(String place) {
        return new Drawing(
                "Maple 3",
                LocalDate.of(2022, 3, 1),
                TODAY,
                TODAY,
                List.of(
                        new Since(LocalDate.of(2022, 4, 1), "Establish"),
                        new Since(LocalDate.of(2024, 4, 1), "Develop the trunk")),
                List.of(
                        new Since(LocalDate.of(2022, 3, 21), "Into a nursery container"),
                        new Since(LocalDate.of(2025, 3, 9), "Into a training container")),
                List.of(
                        new Dot(LocalDate.of(2023, 2, 1), "Trunk chop", true),
                        new Dot(LocalDate.of(2024, 6, 1), "Feed", false)),
                List.of(LocalDate.of(2022, 5, 1), LocalDate.of(2025, 5, 3)),
                List.of(
                        new Wedge(
                                place,
                                List.of(
                                        new Width(LocalDate.of(2023, 2, 1), 24),
                                        new Width(LocalDate.of(2024, 2, 1), 12),
                                        new Width(LocalDate.of(2025, 9, 1), 0))),
                        new Wedge("left, low", List.of(new Width(LocalDate.of(2024, 2, 1), 10)))),
                List.of(
                        new Width(LocalDate.of(2022, 4, 1), 31),
                        new Width(LocalDate.of(2025, 10, 1), 38)),
                List.of(
                        new Ahead(
                                "Wire the primary branches",
                                new Outlook.Expected(
                                        LocalDate.of(2026, 10, 1),
                                        LocalDate.of(2027, 2, 1),
                                        LocalDate.of(2028, 2, 1),
                                        null),
                                false),
                        new Ahead("Refine", new Outlook.Unsaid("nothing is measured"), true)));
    }

    @Test
    void isAsItWasFoundGood() throws IOException {
        Golden.assertUnchanged("life", LifePicture.of(maple("stump"), Sheet.PAGE));
        Golden.assertUnchanged(
                "life-wide", LifePicture.of(maple("stump"), new Sheet(1100, false, Units.METRIC)));
    }

    @Test
    void todayPartsWhatWasFromWhatIsAhead() {
        var picture = LifePicture.of(maple("stump"), Sheet.PAGE);
        Svg.assertSound(picture);
        var words = Svg.all(picture, "text");
        var today =
                words.stream()
                        .filter(text -> text.getTextContent().equals("today"))
                        .findFirst()
                        .orElseThrow();
        double x = Double.parseDouble(today.getAttribute("x"));
        assertThat(x).isBetween(300.0, 560.0);
        assertThat(Svg.texts(picture)).contains("Stage: Refine", "?", "Wound: stump", "31", "38");
    }

    /** A closed wound ends in a point; an open one keeps its width up to today. */
    @Test
    void aWoundThatClosesRunsToAPoint() {
        var wedges =
                Svg.all(LifePicture.of(maple("stump"), Sheet.PAGE), "path").stream()
                        .map(path -> path.getAttribute("d"))
                        .filter(d -> d.startsWith("M") && d.endsWith("z") && d.contains("L"))
                        .filter(d -> !d.contains("h"))
                        .toList();
        var closed = wedges.get(0).replaceAll("[Mz]", "").split("L");
        assertThat(closed).hasSize(6);
        assertThat(closed[2]).isEqualTo(closed[3]);
        var open = wedges.get(1).replaceAll("[Mz]", "").split("L");
        assertThat(open).hasSize(4);
        assertThat(open[1].split(" ", 0)[0]).isEqualTo(open[2].split(" ", 0)[0]);
        assertThat(open[1]).isNotEqualTo(open[2]);
    }

    @Test
    void theTableHoldsEverythingDrawn() {
        assertThat(LifePicture.of(maple("stump"), Sheet.PHONE).table().rows())
                .hasSize(2 + 2 + 2 + 2 + 4 + 2 + 2)
                .contains(List.of("1 February 2024", "Wound", "stump, 12 mm"))
                .anySatisfy(
                        row -> {
                            assertThat(row.get(0)).contains("likely by 1 February 2027");
                            assertThat(row.get(2)).isEqualTo("Wire the primary branches");
                        });
    }

    @Test
    void foreignTextStaysTextAndAnEmptyLifeIsDrawn() {
        Svg.assertSound(LifePicture.of(maple("</text><script>"), Sheet.PAGE));
        var nothing =
                new Drawing(
                        "New", TODAY, TODAY, TODAY, List.of(), List.of(), List.of(), List.of(),
                        List.of(), List.of(), List.of());
        Svg.assertSound(LifePicture.of(nothing, Sheet.PAGE));
        assertThatThrownBy(() -> new Wedge("a", List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
