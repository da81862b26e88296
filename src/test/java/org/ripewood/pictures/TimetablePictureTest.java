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
                "Ketta Marrow",
                List.of(
                        phase(from, from + 25, Kind.ALONE, ""),
                        phase(from + 25, from + 45, Kind.TOGETHER, instructor),
                        phase(from + 45, from + 90, Kind.ALONE, "")),
                List.of());
    }

    private static Phase phase(int from, int to, Kind kind, String instructor) {
        return new Phase(from, to, kind, "Wire the primary branches", instructor);
    }

    private static TimetableDrawing drawing(String of, List<String> teachers, Bench... benches) {
        return new TimetableDrawing(
                of, 540, 900, List.of(), "", List.of(), List.of(benches), teachers);
    }

    private static TimetableDrawing day() {
        return new TimetableDrawing(
                "3 March 2026",
                540,
                900,
                List.of(new Pause(720, 765)),
                "Wiring branches",
                List.of(new Pause(540, 630)),
                List.of(
                        wired("A1", "Hornbeam, just arrived", 630, "Ines Instructor"),
                        wired("A2", "Maple with circling roots", 765, "Otto Other"),
                        new Bench(
                                "A3",
                                "Elm",
                                "Bram Sorrel",
                                List.of(
                                        phase(630, 655, Kind.ALONE, ""),
                                        phase(670, 685, Kind.TOGETHER, "Otto Other"),
                                        new Phase(785, 800, Kind.TOGETHER, "Dress", "Otto Other")),
                                List.of(new Pause(655, 670))),
                        new Bench(
                                "B1",
                                "Larch whose long leader is to be chopped this year",
                                "Ketta Marrow",
                                List.of(
                                        phase(640, 680, Kind.ALONE, ""),
                                        new Phase(
                                                685,
                                                705,
                                                Kind.INSPECTION,
                                                "Chop the trunk",
                                                "Otto Other"),
                                        phase(705, 720, Kind.ALONE, ""),
                                        phase(765, 800, Kind.ALONE, "")),
                                List.of(new Pause(680, 685)))),
                List.of("Ines Instructor", "Otto Other"));
    }

    @Test
    void aDayLooksAsItDid() throws IOException {
        Golden.assertUnchanged("timetable-page", TimetablePicture.of(day(), Sheet.PAGE));
        Golden.assertUnchanged("timetable-phone", TimetablePicture.of(day(), Sheet.PHONE));
        Golden.assertUnchanged(
                "timetable-paper", TimetablePicture.of(day(), new Sheet(980, true, Units.METRIC)));
    }

    @Test
    void everyPhaseIsInTheTable() {
        var table = TimetablePicture.of(day(), Sheet.PHONE).table();
        assertThat(table.rows()).hasSize(15);
        assertThat(table.rows().get(12))
                .containsExactly(
                        "B1, Larch whose long leader is to be chopped this year, Ketta Marrow",
                        "11:25 to 11:45",
                        "Chop the trunk: look before the cut, then the cut",
                        "Otto Other");
    }

    @Test
    void itsWordsTellTheLessonTheBreakAndTheCuts() {
        assertThat(TimetablePicture.of(day(), Sheet.PAGE).description())
                .isEqualTo(
                        "09:00 to 15:00, 4 trees. Lesson 09:00 to 10:30: Wiring branches."
                                + " Break 12:00 to 12:45. An instructor looks before 1 cut.");
    }

    /** Every sheet tells of its own benches, and of both instructors. */
    @Test
    void benchesThatDoNotFitComeOnASecondSheet() {
        var sheets = TimetablePicture.sheets(day(), Sheet.PAPER, 3);
        assertThat(sheets).hasSize(2);
        assertThat(Svg.texts(sheets.get(0))).anyMatch(text -> text.startsWith("A3"));
        assertThat(Svg.texts(sheets.get(1)))
                .noneMatch(text -> text.startsWith("A3"))
                .anyMatch(text -> text.startsWith("B1"))
                .contains("II Ines Instructor", "OO Otto Other");
        assertThat(TimetablePicture.sheets(drawing("a day", List.of()), Sheet.PAPER, 3)).hasSize(1);
    }

    @Test
    void whoStandsByIsNamedAtTheBox() {
        var texts = Svg.texts(TimetablePicture.of(day(), Sheet.PAGE));
        assertThat(texts).contains("II Ines Instructor", "OO Otto Other", "II", "OO", "A3");
    }

    @Test
    void instructorsOfTheSameInitialsAreToldApart() {
        var day =
                drawing(
                        "a day",
                        List.of("Mara", "Milo"),
                        wired("A", "Elm", 540, "Mara"),
                        wired("B", "Oak", 560, "Milo"));
        assertThat(Svg.texts(TimetablePicture.of(day, Sheet.PAGE)))
                .contains("M1 Mara", "M2 Milo", "M1", "M2");
    }

    @Test
    void anEmptyDayIsStillDrawn() {
        Svg.assertSound(TimetablePicture.of(drawing("a day", List.of()), Sheet.PHONE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"<script>alert(1)</script>", "]]>&\"'", "\u202Edesrever"})
    void foreignTextStaysText(String text) {
        var day =
                new TimetableDrawing(
                        text,
                        540,
                        600,
                        List.of(),
                        text,
                        List.of(new Pause(540, 560)),
                        List.of(wired(text, text, 545, text)),
                        List.of(text));
        Svg.assertSound(TimetablePicture.of(day, Sheet.PAGE));
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> phase(600, 600, Kind.ALONE, ""))
                .hasMessageContaining("600 to 600");
        assertThatThrownBy(
                        () ->
                                new TimetableDrawing(
                                        "d", 600, 540, List.of(), "", List.of(), List.of(),
                                        List.of()))
                .hasMessageContaining("600 to 540");
    }
}
