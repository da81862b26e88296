package org.ripewood.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.pictures.StageBandPicture.Band;

/** The stage band: lengths growing shorter, filled as far as the tree is. */
@Tag("fast")
class StageBandPictureTest {

    private static final List<String> TITLES =
            List.of("Establish", "Develop the trunk", "Build the structure", "Refine", "Show");

    @Test
    void isAsItWasFoundGood() throws IOException {
        var band = new Band(TITLES, 3, 0.55);
        Golden.assertUnchanged("stage-band", StageBandPicture.of(band, Sheet.PAGE));
        Golden.assertUnchanged("stage-band-phone", StageBandPicture.of(band, Sheet.PHONE));
    }

    @Test
    void eachLengthIsShorterThanTheOneBefore() {
        var nodes =
                Svg.all(StageBandPicture.of(new Band(TITLES, 1, 0), Sheet.PAGE), "ellipse").stream()
                        .map(node -> Double.parseDouble(node.getAttribute("cx")))
                        .toList();
        assertThat(nodes).hasSize(6);
        for (int i = 2; i < nodes.size(); i++) {
            assertThat(nodes.get(i) - nodes.get(i - 1))
                    .isPositive()
                    .isLessThan(nodes.get(i - 1) - nodes.get(i - 2));
        }
    }

    /** The length drawn in moss ends where the tree is. */
    @ParameterizedTest
    @CsvSource({"1, 0, 0", "1, 0.5, 0.5", "2, 0, 1", "5, 1, 5", "3, 0.25, 2.25", "4, 7, 4"})
    void theLineIsFilledAsFarAsTheTreeIs(int here, double howFar, double lengths) {
        var picture = StageBandPicture.of(new Band(TITLES, here, howFar), Sheet.PAGE);
        Svg.assertSound(picture);
        var nodes =
                Svg.all(picture, "ellipse").stream()
                        .map(node -> Double.parseDouble(node.getAttribute("cx")))
                        .toList();
        var filled =
                Svg.all(picture, "path").stream()
                        .filter(path -> path.getAttribute("stroke").contains("--moss,"))
                        .findFirst()
                        .orElseThrow()
                        .getAttribute("d");
        double end = Double.parseDouble(filled.replaceAll(".*L(\\S+) .*", "$1"));
        int whole = (int) Math.min(4, Math.floor(lengths));
        double expected =
                nodes.get(whole) + (lengths - whole) * (nodes.get(whole + 1) - nodes.get(whole));
        assertThat(end).isCloseTo(expected, org.assertj.core.data.Offset.offset(0.2));
    }

    @Test
    void theWordsTellTheSame() {
        var picture = StageBandPicture.of(new Band(TITLES, 3, 0.559), Sheet.PHONE);
        assertThat(picture.title()).isEqualTo("Stage 3 of 5: Build the structure");
        assertThat(picture.description()).contains("55 %");
        assertThat(picture.table().rows())
                .containsExactly(
                        List.of("Establish", "passed"),
                        List.of("Develop the trunk", "passed"),
                        List.of("Build the structure", "here, 55 %"),
                        List.of("Refine", "to come"),
                        List.of("Show", "to come"));
        assertThat(Svg.texts(picture)).contains("here", "1", "5");
    }

    @Test
    void aStageThatIsNotThereIsRefusedAndNoNumberIsNothing() {
        assertThatThrownBy(() -> new Band(TITLES, 6, 0.5))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("1 to 5, found 6");
        assertThatThrownBy(() -> new Band(List.of(), 1, 0.5))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(new Band(TITLES, 1, Double.NaN).howFar()).isZero();
    }
}
