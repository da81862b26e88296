package org.ripewood.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.Verdict;

/** What saves a tree is not held up by the weakness it is done for (common practice, no source). */
@Tag("fast")
class WorkThatSavesTest {

    private static final Content CONTENT = Objects.requireNonNull(new Editing().read().content());

    /** A tree nearly dead in its container, whose soil holds water. */
    private static final Map<Fact, Value> ROTTING =
            Map.of(
                    Fact.VIGOUR_INDEX, Value.of(5),
                    Fact.CONTAINER_KIND, Value.of("training"),
                    Fact.SUBSTRATE_DRAINS, Value.of(false),
                    Fact.SOIL_MOIST, Value.of(true),
                    Fact.DIEBACK_PERCENT, Value.of(30),
                    Fact.PEST_LEVEL, Value.of(3),
                    Fact.ROOT_FILL_SHARE, Value.of(0.9));

    static Stream<Species> species() {
        return CONTENT.species().values().stream();
    }

    private static Verdict verdict(
            String technique, Species species, Map<Fact, Value> values, int stage) {
        return new ReadySearch(
                        CONTENT.rulebook(), CONTENT.technique(technique).rule(), species.traits())
                .judge(values, stage)
                .verdict();
    }

    @ParameterizedTest
    @MethodSource("species")
    void aRottingTreeIsRescuedWhileItGrowsAndRepottedByNobody(Species species) {
        for (int stage : new int[] {3, 15, 33, 39, 92}) {
            assertThat(verdict("rescue_repot", species, ROTTING, stage))
                    .as("stage %d", stage)
                    .isEqualTo(Verdict.READY);
            assertThat(verdict("root_pruning_repot", species, ROTTING, stage))
                    .as("stage %d", stage)
                    .isEqualTo(Verdict.HELD);
        }
    }

    @ParameterizedTest
    @MethodSource("species")
    void aWeakTreeInSoundSoilIsLeftInIt(Species species) {
        var sound = new EnumMap<>(ROTTING);
        sound.put(Fact.SUBSTRATE_DRAINS, Value.of(true));
        assertThat(verdict("rescue_repot", species, sound, 33)).isEqualTo(Verdict.NOT_NEEDED);
    }

    @ParameterizedTest
    @MethodSource("species")
    void deadBranchesComeOffInEveryStageAndFromEveryTree(Species species) {
        assertThat(
                        IntStream.range(0, 100)
                                .filter(
                                        stage ->
                                                verdict(
                                                                "dead_branch_removal",
                                                                species,
                                                                ROTTING,
                                                                stage)
                                                        != Verdict.READY))
                .isEmpty();
    }
}
