package org.ripewood.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.core.growth.TaperProfile;
import org.ripewood.core.growth.TaperProfile.Reading;

@Tag("fast")
class TrunkPictureTest {

    private static final TaperProfile NOTHING_MEASURED = new TaperProfile(List.of());

    private static TrunkDrawing maple() {
        return new TrunkDrawing(
                "Field maple 7",
                new TaperProfile(
                        List.of(
                                new Reading(0, 74),
                                new Reading(50, 62),
                                new Reading(100, 55),
                                new Reading(150, 59),
                                new Reading(220, 38),
                                new Reading(300, 24))),
                380.0,
                List.of(
                        wound("trunk chop", 205.0, 20.0, 34, 46, 19),
                        wound("old low branch", 60.0, 95.0, 16, 20, 0),
                        wound("back branch", 120.0, 190.0, 18, 22, 11),
                        new WoundPlace("shari", 140.0, 340.0, 14, 70, 14, true),
                        new WoundPlace("nick", null, null, 4, 4, 2, false)),
                List.of(
                        branch("first", "primary", false, 130.0, 80.0, 14.0),
                        branch("second", "primary", false, 175.0, 285.0, 11.0),
                        branch("back", "primary", false, 215.0, 170.0, 9.0),
                        branch("low", "sacrifice", true, 25.0, 250.0, 22.0),
                        branch("leader", "leader", false, 310.0, 10.0, null)));
    }

    private static WoundPlace wound(
            String name,
            @Nullable Double height,
            @Nullable Double bearing,
            double width,
            double length,
            double open) {
        return new WoundPlace(name, height, bearing, width, length, open, false);
    }

    private static BranchPlace branch(
            String name,
            String role,
            boolean temporary,
            @Nullable Double height,
            @Nullable Double bearing,
            @Nullable Double diameter) {
        return new BranchPlace(name, role, temporary, height, bearing, diameter);
    }

    @Test
    void aTrunkLooksAsItDid() throws IOException {
        Golden.assertUnchanged("trunk-page", TrunkPicture.of(maple(), Sheet.PAGE));
        Golden.assertUnchanged("trunk-phone", TrunkPicture.of(maple(), Sheet.PHONE));
        Golden.assertUnchanged("trunk-paper", TrunkPicture.of(maple(), Sheet.PAPER));
    }

    /** Smaller by the view from above, with the same words. */
    @Test
    void fromTheFrontAloneItIsNoTallerThanItNeeds() throws IOException {
        var front = TrunkPicture.front(maple(), Sheet.PHONE);
        Golden.assertUnchanged("trunk-front", front);
        Svg.assertSound(front);
        assertThat(height(front)).isLessThan(height(TrunkPicture.of(maple(), Sheet.PHONE)) - 200);
        assertThat(Svg.texts(front)).doesNotContain("from above", "open wound");
        assertThat(front.description())
                .isEqualTo(TrunkPicture.of(maple(), Sheet.PHONE).description());
    }

    private static double height(Picture picture) {
        return Double.parseDouble(Svg.parsed(picture).getDocumentElement().getAttribute("height"));
    }

    @Test
    void aTrunkNobodyMeasuredLooksAsItDid() throws IOException {
        var empty =
                new TrunkDrawing(
                        "Elm 3",
                        NOTHING_MEASURED,
                        null,
                        List.of(wound("cut", 80.0, 0.0, 12, 12, 12)),
                        List.of());
        Golden.assertUnchanged("trunk-unmeasured", TrunkPicture.of(empty, Sheet.PHONE));
    }

    @Test
    void aTreeWithNothingOnRecordIsStillDrawn() {
        var picture =
                TrunkPicture.of(
                        new TrunkDrawing("Elm 3", NOTHING_MEASURED, null, List.of(), List.of()),
                        Sheet.PAGE);
        Svg.assertSound(picture);
        assertThat(Svg.texts(picture)).contains("No diameter measured yet.");
    }

    @Test
    void whatHasNoPlaceIsToldAllTheSame() {
        var picture = TrunkPicture.of(maple(), Sheet.PAGE);
        assertThat(String.join(" ", Svg.texts(picture)))
                .contains("Not drawn, as height or bearing is missing: 1;");
        assertThat(picture.table().rows())
                .contains(List.of("5 nick", "wound", "not noted", "not noted", "open 2 mm"));
    }

    @Test
    void aBulgeIsToldWhereItLies() {
        var picture = TrunkPicture.of(maple(), Sheet.PAGE);
        assertThat(picture.description()).contains("thicker than below at 150 mm");
        assertThat(Svg.texts(picture)).contains("bulge");
    }

    /** Clockwise from above, so that who stands before the tree has 90 degrees at the left. */
    @ParameterizedTest
    @CsvSource({
        "0, front",
        "90, left",
        "180, back",
        "270, right",
        "-90, right",
        "360, front",
        "337.4, front right",
        "338, front"
    })
    void aBearingIsSaidAsThePlaceItMeans(double degrees, String word) {
        assertThat(Wording.bearing(degrees)).isEqualTo(word);
    }

    @Test
    void aWoundAtTheLeftIsDrawnLeftOfTheTrunksMiddle() {
        assertThat(xOfWound(90)).isLessThan(xOfWound(0));
        assertThat(xOfWound(0)).isLessThan(xOfWound(270));
    }

    private static double xOfWound(double bearing) {
        var drawing =
                new TrunkDrawing(
                        "Elm 3",
                        new TaperProfile(List.of(new Reading(0, 60), new Reading(100, 40))),
                        null,
                        List.of(wound("cut", 50.0, bearing, 12, 12, 0)),
                        List.of());
        var ovals = Svg.all(TrunkPicture.of(drawing, Sheet.PAGE), "ellipse");
        return Double.parseDouble(ovals.get(0).getAttribute("cx"));
    }

    @Test
    void manyMarksNeverLieOverEachOther() {
        var wounds = new ArrayList<WoundPlace>();
        for (int i = 0; i < 40; i++) {
            wounds.add(wound("cut " + i, 100.0, i * 9.0, 6, 6, i % 3));
        }
        var picture =
                TrunkPicture.of(
                        new TrunkDrawing("Elm 3", NOTHING_MEASURED, 200.0, wounds, List.of()),
                        Sheet.PHONE);
        Svg.assertSound(picture);
        var rows =
                Svg.all(picture, "text").stream()
                        .filter(text -> text.getTextContent().matches("\\d+ (open|closed).*"))
                        .map(text -> Double.parseDouble(text.getAttribute("y")))
                        .sorted()
                        .toList();
        assertThat(rows).hasSize(40);
        for (int i = 1; i < rows.size(); i++) {
            assertThat(rows.get(i) - rows.get(i - 1)).isGreaterThanOrEqualTo(Pen.LETTER_PX);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, Double.MIN_VALUE, 1e-9, 1e5, 1e300, Double.MAX_VALUE})
    void absurdSizesStayOnTheSheet(double mm) {
        var absurd =
                new TrunkDrawing(
                        "Elm 3",
                        new TaperProfile(
                                List.of(new Reading(mm, mm), new Reading(mm == 0 ? 7 : mm / 2, 3))),
                        mm,
                        List.of(
                                wound("a", mm, -360.0, mm, mm, mm),
                                wound("b", 3.0, 90.0, 0, 0, mm)),
                        List.of(branch("c", "primary", true, mm, 10.0, mm)));
        Svg.assertSound(TrunkPicture.of(absurd, Sheet.PHONE));
        Svg.assertSound(TrunkPicture.of(absurd, Sheet.PAGE.in(Units.US)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void aLengthThatIsNoneIsRefused(double mm) {
        assertThatThrownBy(() -> wound("cut", mm, 0.0, 1, 1, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(Double.toString(mm));
        assertThatThrownBy(() -> branch("first", "primary", false, 1.0, Double.NaN, 1.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("NaN");
    }

    @Test
    void lettersGoOnAfterTheAlphabet() {
        assertThat(TrunkDrawing.letter(0)).isEqualTo("A");
        assertThat(TrunkDrawing.letter(25)).isEqualTo("Z");
        assertThat(TrunkDrawing.letter(26)).isEqualTo("AA");
        assertThat(TrunkDrawing.letter(701)).isEqualTo("ZZ");
        assertThat(TrunkDrawing.letter(702)).isEqualTo("AAA");
    }
}
