package org.ripewood.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Verdict;

/** Every technique in the jar can be READY on a tree, and is not when one thing is amiss. */
@Tag("fast")
class EveryTechniqueTest {

    private static final Content CONTENT = Objects.requireNonNull(new Editing().read().content());

    static Stream<String> techniques() {
        return CONTENT.techniques().keySet().stream();
    }

    private static ReadySearch search(String technique, Species species) {
        return new ReadySearch(
                CONTENT.rulebook(), CONTENT.technique(technique).rule(), species.traits());
    }

    /** The species a technique is for: all but those it is not needed on whatever is known. */
    private static Stream<Species> speciesOf(String technique) {
        return CONTENT.species().values().stream()
                .filter(
                        species ->
                                search(technique, species)
                                                .judge(new EnumMap<>(Fact.class), 0)
                                                .verdict()
                                        != Verdict.NOT_NEEDED);
    }

    @ParameterizedTest
    @MethodSource("techniques")
    void canBeReadyOnEverySpeciesItIsFor(String technique) {
        assertThat(speciesOf(technique)).isNotEmpty();
        assertThat(
                        speciesOf(technique)
                                .filter(species -> search(technique, species).find().isEmpty())
                                .map(Species::code))
                .as("species without a tree on which it is READY")
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("techniques")
    void isNotReadyWhenACriterionIsBroken(String technique) {
        var species = speciesOf(technique).findFirst().orElseThrow();
        var search = search(technique, species);
        var found = search.find().orElseThrow();
        assertThat(found.required()).isNotEmpty();
        for (var asked : found.required().entrySet()) {
            var fact = asked.getKey();
            for (var requirement : asked.getValue()) {
                var breaking =
                        ReadySearch.candidates(fact, new LinkedHashSet<>(asked.getValue())).stream()
                                .filter(value -> !requirement.metBy(value))
                                .findFirst();
                assertThat(breaking).as("a value of %s against %s", fact, requirement).isPresent();
                var values = new EnumMap<>(found.values());
                values.put(fact, breaking.orElseThrow());
                var standing = search.judge(values, found.stage());
                assertThat(standing.verdict())
                        .as("%s", values)
                        .isIn(Verdict.HELD, Verdict.NOT_NEEDED);
                if (standing.verdict() == Verdict.HELD) {
                    assertThat(standing.against())
                            .as("reasons name %s", fact)
                            .anyMatch(
                                    reason ->
                                            reason.truth() == Truth.NO
                                                    && reason.key().startsWith(fact.code() + "."));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("techniques")
    void asksToMeasureWhatNobodyHasLookedAt(String technique) {
        var species = speciesOf(technique).findFirst().orElseThrow();
        var search = search(technique, species);
        var found = search.find().orElseThrow();
        for (var fact : found.required().keySet()) {
            var values = new EnumMap<>(found.values());
            values.remove(fact);
            var onTheDay =
                    CONTENT.technique(technique).rule().criteria().stream()
                            .anyMatch(it -> it.fact() == fact && it.onTheDay());
            assertThat(search.judge(values, found.stage()).verdict())
                    .as("without %s", fact)
                    .isEqualTo(onTheDay ? Verdict.READY : Verdict.MEASURE);
        }
    }
}
