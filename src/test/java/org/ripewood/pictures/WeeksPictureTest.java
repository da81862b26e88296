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
import org.ripewood.pictures.WeeksDrawing.Row;
import org.ripewood.pictures.WeeksDrawing.Week;

@Tag("fast")
class WeeksPictureTest {

    private static final LocalDate FROM = LocalDate.of(2026, 3, 2);

    /** A window that opens at a week, each year, with more trees the second time. */
    private static Row window(String title, int opens, int open, int trees) {
        var weeks = new ArrayList<Week>();
        for (int week = 0; week < 104; week++) {
            int inYear = week % 52;
            boolean in = inYear >= opens && inYear < opens + open;
            int later = week / 52;
            weeks.add(
                    in
                            ? new Week(trees + 2, trees - 2 + later, Math.max(0, trees - 5 + later))
                            : new Week(0, 0, 0));
        }
        return new Row(title, weeks);
    }

    private static WeeksDrawing course() {
        return new WeeksDrawing(
                "Foundations",
                FROM,
                12,
                List.of(
                        window("Repot and prune the roots", 1, 5, 6),
                        window("Wire the primary branches", 30, 14, 8),
                        window("Remove a sacrifice branch from the lower trunk, left", 12, 8, 4),
                        window("Feed for growth", 8, 20, 10),
                        window("Make a jin", 0, 52, 3)));
    }

    @Test
    void theWeeksLookAsTheyDid() throws IOException {
        Golden.assertUnchanged("weeks-page", WeeksPicture.of(course(), Sheet.PAGE));
        Golden.assertUnchanged("weeks-phone", WeeksPicture.of(course(), Sheet.PHONE));
        Golden.assertUnchanged("weeks-paper", WeeksPicture.of(course(), Sheet.PAPER));
    }

    @Test
    void theTableTellsStretchesOfWeeks() {
        var table = WeeksPicture.of(course(), Sheet.PHONE).table();
        assertThat(table.rows()).hasSize(5);
        assertThat(table.rows().get(0))
                .containsExactly(
                        "Repot and prune the roots",
                        "5",
                        "4 from 9 March 2026 to 12 April 2026; 5 from 8 March 2027 to 11 April 2027");
    }

    @Test
    void withoutTechniquesTheTextSaysSo() {
        var empty = WeeksPicture.of(new WeeksDrawing("Course", FROM, 0, List.of()), Sheet.PAGE);
        Svg.assertSound(empty);
        assertThat(empty.description()).contains("No technique");
    }

    @ParameterizedTest
    @ValueSource(strings = {"<script>alert(1)</script>", "]]>&\"'", "\u202Edesrever"})
    void foreignTextStaysText(String title) {
        var row = new Row(title, List.of(new Week(1, 1, 1)));
        Svg.assertSound(
                WeeksPicture.of(new WeeksDrawing(title, FROM, 1, List.of(row)), Sheet.PAGE));
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> new Week(1, 2, 0)).hasMessageContaining("1");
        var one = new Row("one", List.of(new Week(0, 0, 0)));
        var none = new Row("none", List.of());
        assertThatThrownBy(() -> new WeeksDrawing("c", FROM, 1, List.of(one, none)))
                .hasMessageContaining("as many weeks");
    }
}
