package org.ripewood.web.trees;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.records.BranchRole;
import org.ripewood.records.NewBranch;
import org.ripewood.records.NewContainer;
import org.ripewood.records.NewObservation;
import org.ripewood.records.NewWound;
import org.ripewood.standing.NewEarlierWork;

/** The sentences that say what a form recorded, one by one. */
@Tag("fast")
class RecordTellerTest {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 3);

    private static final Content CONTENT =
            Objects.requireNonNull(CourseContent.check(Path.of("course-content"), null).content());

    private final RecordTeller teller = new RecordTeller(CONTENT);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "wound_open_mm | 7.50 | - | - | Recorded “Open width of a wound”: 7.50 mm.",
                "wound_open_mm | 7,5 | - | - | Recorded “Open width of a wound”: 7,5 mm.",
                "wound_open_mm | 0.0 | - | - | Recorded “Open width of a wound”: 0.0 mm. The wound is"
                        + " closed.",
                "wound_open_mm | 0.4 | - | - | Recorded “Open width of a wound”: 0.4 mm.",
                "wound_open_mm | 8 | - | 41 | Corrected “Open width of a wound”: 8 mm.",
                "trunk_diameter_mm | 32.5 | 40,5 | - | Recorded “Trunk diameter at a height”:"
                        + " 32.5 mm at a height of 40,5 mm.",
                "soil_moist | yes | - | - | Recorded “Soil moist”: yes.",
                "pest_level | 3 | - | - | Recorded “Pests and disease”: 3.",
                "root_spread_deg | 270 | - | - | Recorded “Spread of surface roots”: 270°.",
                "training_stage | structure | - | - | Recorded: the tree is in the stage"
                        + " “Build the structure”.",
                "no_such_fact | 3 | - | - | Recorded 3.",
            })
    void anObservation(
            String fact,
            String value,
            @Nullable String height,
            @Nullable Long corrects,
            String sentence) {
        var seen = new NewObservation(fact, value, DAY, null, null, null, null, corrects);
        assertThat(teller.observation(seen, height)).isEqualTo(sentence);
    }

    @Test
    void aWoundABranchAndWork() {
        assertThat(RecordTeller.wound(wound(false), " 12,0 "))
                .isEqualTo("Entered the wound “low, left”, 12,0 mm wide.");
        assertThat(RecordTeller.wound(wound(true), "12"))
                .isEqualTo("Entered the wound “low, left”, 12 mm wide, deadwood by design.");
        assertThat(
                        RecordTeller.branch(
                                new NewBranch(" first left", BranchRole.PRIMARY, null, null)))
                .isEqualTo("Entered the branch “first left”.");
        assertThat(teller.work(work(null)))
                .isEqualTo("Entered “Check the roots”, done on 3 March 2026.");
        assertThat(teller.work(work(true)))
                .isEqualTo("Entered “Check the roots”, done on 3 March 2026. It counts as done.");
    }

    private static NewWound wound(boolean deadwood) {
        return new NewWound("low, left", DAY, 12.0, 30.0, null, null, deadwood);
    }

    private static NewEarlierWork work(@Nullable Boolean counts) {
        return new NewEarlierWork("root_check", DAY, null, null, counts, null);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "ground | - | Entered: in the ground since 3 March 2026.",
                "training | 3,50 | Entered: in a training container of 3,50 litres since 3 March"
                        + " 2026.",
                "show | '' | Entered: in a show container since 3 March 2026.",
            })
    void aContainer(String kind, @Nullable String litres, String sentence) {
        assertThat(RecordTeller.container(new NewContainer(kind, null, null, DAY), litres))
                .isEqualTo(sentence);
    }

    @Test
    void whatWasMeasuredInOneGo() {
        assertThat(series(Map.of("40.5", "32,5"), Map.of(), Map.of()))
                .isEqualTo("Recorded the trunk at 40.5 mm: 32,5 mm.");
        assertThat(
                        series(
                                Map.of("40.5", "32,5"),
                                Map.of("7", "20.0"),
                                Map.of("shoot_extension_mm", "180")))
                .isEqualTo(
                        "Recorded 4 values: the trunk at 40.5 mm: 32,5 mm, the trunk at 120 mm: 24"
                                + " mm, a wound 20.0 mm open and “Shoot length this season”: 180"
                                + " mm.");
        var many =
                IntStream.range(0, 9)
                        .boxed()
                        .collect(Collectors.toMap(i -> "" + i * 10, i -> "" + (50 - i)));
        assertThat(series(many, Map.of(), Map.of()))
                .startsWith("Recorded 9 values: the trunk at 0 mm: 50 mm, ")
                .endsWith(" and 3 more.");
    }

    private String series(
            Map<String, String> mark, Map<String, String> wound, Map<String, String> whole) {
        var blank = wound.isEmpty() ? Map.<String, String>of() : Map.of("1", "120");
        var widths = wound.isEmpty() ? Map.<String, String>of() : Map.of("1", "24");
        return teller.series(new MeasureForm(DAY, null, mark, blank, widths, wound, whole, null));
    }
}
