package org.ripewood.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.LookRhythm;
import org.ripewood.core.season.TypicalYear;
import org.ripewood.course.Technique.Aftercare;

/** The aftercare of the content in the jar; its figures are common practice, no source. */
@Tag("fast")
class AftercareTest {

    private static final Content CONTENT = Objects.requireNonNull(new Editing().read().content());

    static Stream<Aftercare> all() {
        return CONTENT.techniques().values().stream()
                .flatMap(technique -> technique.aftercare().stream());
    }

    private static Aftercare care(String technique, String code) {
        return CONTENT.technique(technique).aftercare().stream()
                .filter(care -> care.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void wireIsLookedAtEveryTwoWeeksInGrowthAndEverySixAtRestUntilItIsOff() {
        for (var technique : List.of("wiring_primary", "wiring_secondary", "heavy_bending")) {
            var look = care(technique, "wire_look");
            assertThat(look.kind()).isEqualTo(Aftercare.Kind.WIRE_CHECK);
            assertThat(look.rhythm()).isEqualTo(new LookRhythm(14, 42));
            assertThat(look.endsWhen())
                    .isEqualTo(new Technique.Effect(Fact.WIRE_ON, Value.of(false)));
        }
    }

    static Stream<String> rootWork() {
        return CONTENT.techniques().values().stream()
                .filter(technique -> "root_work".equals(technique.startsClock()))
                .map(Technique::code);
    }

    @ParameterizedTest
    @MethodSource("rootWork")
    void afterRootWorkThereIsNoFeedForFourToSixWeeksAndNoFrost(String technique) {
        assertThat(care(technique, "no_feed").days()).isBetween(28, 42);
        assertThat(care(technique, "shade").kind()).isEqualTo(Aftercare.Kind.SHADE);
        // roots cut in May: the first frosts come with the leaves' fall, from November on
        var winter =
                care(technique, "winter_storage")
                        .window()
                        .after(LocalDate.of(2025, 5, 5), TypicalYear.of(Habit.DECIDUOUS, 50));
        assertThat(winter.orElseThrow().from()).isEqualTo(LocalDate.of(2025, 11, 1));
    }

    @Test
    void aTropicalSiteNeverHasAFrostGuard() {
        var guards = all().filter(care -> care.kind() == Aftercare.Kind.FROST_GUARD).toList();
        assertThat(guards).isNotEmpty();
        for (var habit : Habit.values()) {
            var year = TypicalYear.of(habit, -3);
            assertThat(guards)
                    .allSatisfy(
                            care ->
                                    assertThat(
                                                    care.window()
                                                            .after(
                                                                    LocalDate.of(2025, 11, 20),
                                                                    year))
                                            .isEmpty());
        }
    }

    /** Whatever the day of the work, care begins within a year and a season of it, or never. */
    @ParameterizedTest
    @MethodSource("all")
    void someDayOfWorkLeadsToEveryTask(Aftercare care) {
        var year = TypicalYear.of(Habit.DECIDUOUS, 50);
        assertThat(
                        LocalDate.of(2025, 1, 1)
                                .datesUntil(LocalDate.of(2026, 1, 1))
                                .filter(day -> care.window().after(day, year).isPresent()))
                .isNotEmpty();
    }
}
