package org.ripewood.life;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.progress.StageRule;
import org.ripewood.course.Stage;
import org.ripewood.life.LifeEntry.Kind;

/** What a year brought: from the record alone, each with its days. */
@Tag("fast")
class GainedTest {

    private static final List<Stage> STAGES =
            List.of(stage("establish", 1, "Establish"), stage("develop", 2, "Develop the trunk"));

    private static Stage stage(String code, int order, String title) {
        return new Stage(new StageRule(code, order, List.of()), title, "", "");
    }

    private static LifeEntry entry(
            String on, Kind kind, String title, String detail, long id, @Nullable Double mm) {
        return new LifeEntry(LocalDate.parse(on), kind, title, detail, id, mm);
    }

    private static LifeEntry trunk(String on, double mm) {
        return entry(on, Kind.TRUNK, "Trunk base", LifeWords.mm(mm), 1, mm);
    }

    private static LifeEntry wound(String on, double mm) {
        return entry(on, Kind.WOUND, "stump", LifeWords.mm(mm), 7, mm);
    }

    private static Life.Gains in2026(LifeEntry... entries) {
        return Gained.in(2026, List.of(entries), STAGES);
    }

    @Test
    void nothingMeasuredTwiceIsSaidAndNothingInvented() {
        var gains =
                in2026(trunk("2025-11-01", 40), trunk("2026-03-01", 43), wound("2024-01-01", 9));
        assertThat(gains.measuredTwice()).isFalse();
        assertThat(gains.sentences()).isEmpty();
        assertThat(in2026().sentences()).isEmpty();
    }

    @Test
    void twoMeasuresOfTheYearTellGrowthOrNone() {
        assertThat(in2026(trunk("2026-03-01", 40), trunk("2026-11-01", 43.25)).sentences())
                .containsExactly(
                        "Trunk base: grew from 40 mm to 43.3 mm between 1 March 2026 and 1"
                                + " November 2026.");
        var none = in2026(trunk("2026-03-01", 40), trunk("2026-11-01", 40));
        assertThat(none.measuredTwice()).isTrue();
        assertThat(none.sentences()).singleElement().asString().contains("no growth measured");
        assertThat(in2026(trunk("2026-03-01", 40), trunk("2026-03-01", 41)).measuredTwice())
                .isFalse();
    }

    @Test
    void aWoundClosesFromTheReadingBeforeWheneverThatWas() {
        assertThat(in2026(wound("2025-06-01", 3), wound("2026-05-01", 0)).sentences())
                .containsExactly("Wound closed: stump, 3 mm on 1 June 2025, closed on 1 May 2026.");
        assertThat(in2026(wound("2026-04-01", 9), wound("2026-10-01", 6)).sentences())
                .containsExactly(
                        "Wound closing: stump, from 9 mm to 6 mm between 1 April 2026 and 1"
                                + " October 2026.");
        assertThat(in2026(wound("2025-06-01", 0), wound("2026-05-01", 0)).sentences()).isEmpty();
        var opened = in2026(wound("2026-04-01", 6), wound("2026-10-01", 9));
        assertThat(opened.sentences()).isEmpty();
        assertThat(opened.measuredTwice()).isTrue();
    }

    @Test
    void stepsAndStagesAreToldWithTheirDays() {
        var gains =
                in2026(
                        entry("2026-03-01", Kind.STEP, "Feed", "signed off", 1, null),
                        entry("2026-04-01", Kind.STEP, "Chop", "found done", 2, null),
                        entry("2025-01-01", Kind.STAGE, "Establish", "", 3, null),
                        entry("2026-02-01", Kind.STAGE, "Develop the trunk", "", 4, null));
        assertThat(gains.sentences())
                .containsExactly(
                        "Step signed off: Feed, done on 1 March 2026.",
                        "Stage passed: from “Establish” to “Develop the trunk” on 1 February"
                                + " 2026.");
        assertThat(
                        in2026(
                                        entry(
                                                "2025-01-01",
                                                Kind.STAGE,
                                                "Develop the trunk",
                                                "",
                                                3,
                                                null),
                                        entry("2026-02-01", Kind.STAGE, "Establish", "", 4, null))
                                .sentences())
                .isEmpty();
    }

    @Test
    void moreThanFiveStepsAreCounted() {
        var steps =
                java.util.stream.IntStream.rangeClosed(1, 7)
                        .mapToObj(
                                day ->
                                        entry(
                                                "2026-03-0" + day,
                                                Kind.STEP,
                                                "Step " + day,
                                                "signed off",
                                                day,
                                                null))
                        .toArray(LifeEntry[]::new);
        assertThat(in2026(steps).sentences())
                .hasSize(6)
                .last()
                .asString()
                .isEqualTo("2 steps signed off besides, the last done on 7 March 2026.");
    }
}
