package org.ripewood.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.pictures.TimetableDrawing.Bench;
import org.ripewood.pictures.TimetableDrawing.Kind;
import org.ripewood.pictures.TimetableDrawing.Pause;
import org.ripewood.pictures.TimetableDrawing.Phase;

@Tag("fast")
class TimetablePictureTest {

    private static Bench wired(String bench, String tree, int from, String instructor) {
        return new Bench(
                bench,
                tree,
                List.of(
                        new Phase(from, from + 25, Kind.ALONE, false, ""),
                        new Phase(from + 25, from + 45, Kind.TOGETHER, false, instructor),
                        new Phase(from + 45, from + 90, Kind.ALONE, false, "")));
    }

    private static TimetableDrawing day() {
        return new TimetableDrawing(
                "3 March 2026",
                540,
                900,
                List.of(new Pause(720, 765)),
                List.of(
                        wired("A1", "Hornbeam, just arrived", 540, "Ines Instructor"),
                        wired("A2", "Maple with circling roots", 560, "Otto Other"),
                        new Bench(
                                "A3",
                                "Elm",
                                List.of(
                                        new Phase(540, 555, Kind.ALONE, false, ""),
                                        new Phase(670, 674, Kind.TOGETHER, false, "Otto Other"),
                                        new Phase(785, 789, Kind.TOGETHER, false, "Otto Other"),
                                        new Phase(789, 795, Kind.ALONE, false, ""))),
                        new Bench(
                                "B1",
                                "Larch whose long leader is to be chopped this year",
                                List.of(
                                        new Phase(600, 640, Kind.ALONE, false, ""),
                                        new Phase(640, 645, Kind.INSPECTION, false, "Otto Other"),
                                        new Phase(645, 660, Kind.TOGETHER, true, "Otto Other"),
                                        new Phase(660, 800, Kind.ALONE, false, "")))));
    }

    @Test
    void aDayLooksAsItDid() throws IOException {
        Golden.assertUnchanged("timetable-page", TimetablePicture.of(day(), Sheet.PAGE));
        Golden.assertUnchanged("timetable-phone", TimetablePicture.of(day(), Sheet.PHONE));
        Golden.assertUnchanged("timetable-paper", TimetablePicture.of(day(), Sheet.PAPER));
    }

    @Test
    void everyPhaseIsInTheTable() {
        var table = TimetablePicture.of(day(), Sheet.PHONE).table();
        assertThat(table.rows()).hasSize(14);
        assertThat(table.rows().get(11))
                .containsExactly(
                        "B1, Larch whose long leader is to be chopped this year",
                        "10:40 to 10:45",
                        "look before the cut",
                        "Otto Other");
    }

    @Test
    void whoStandsByIsNamedAtTheBox() {
        var texts = Svg.texts(TimetablePicture.of(day(), Sheet.PAGE));
        assertThat(texts).contains("II Ines Instructor", "OO Otto Other", "II", "OO", "A3");
    }

    @Test
    void instructorsOfTheSameInitialsAreToldApart() {
        var day =
                new TimetableDrawing(
                        "a day",
                        540,
                        660,
                        List.of(),
                        List.of(wired("A", "Elm", 540, "Mara"), wired("B", "Oak", 560, "Milo")));
        assertThat(Svg.texts(TimetablePicture.of(day, Sheet.PAGE)))
                .contains("M1 Mara", "M2 Milo", "M1", "M2");
    }

    @Test
    void anEmptyDayIsStillDrawn() {
        var empty = new TimetableDrawing("a day", 540, 600, List.of(), List.of());
        Svg.assertSound(TimetablePicture.of(empty, Sheet.PHONE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"<script>alert(1)</script>", "]]>&\"'", "\u202Edesrever"})
    void foreignTextStaysText(String text) {
        var day =
                new TimetableDrawing(
                        text, 540, 600, List.of(), List.of(wired(text, text, 545, text)));
        Svg.assertSound(TimetablePicture.of(day, Sheet.PAGE));
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> new Phase(600, 600, Kind.ALONE, false, ""))
                .hasMessageContaining("600 to 600");
        assertThatThrownBy(() -> new TimetableDrawing("d", 600, 540, List.of(), List.of()))
                .hasMessageContaining("600 to 540");
    }
}
