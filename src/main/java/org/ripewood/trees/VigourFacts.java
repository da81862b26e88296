package org.ripewood.trees;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.ripewood.core.growth.VigourIndex;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;

/** Strength, from the four grades when all of them are known. */
final class VigourFacts {

    private VigourFacts() {}

    static List<Evidence> of(Facts seen) {
        var parts =
                Stream.of(
                                Fact.SHOOT_EXTENSION_RATIO,
                                Fact.FOLIAGE_LOSS_PERCENT,
                                Fact.LEAF_COLOUR_GRADE,
                                Fact.DIEBACK_PERCENT)
                        .map(seen::find)
                        .filter(Objects::nonNull)
                        .toList();
        if (parts.size() < 4) {
            return List.of();
        }
        var vigour =
                VigourIndex.graded(
                        seen.number(Fact.SHOOT_EXTENSION_RATIO),
                        seen.number(Fact.FOLIAGE_LOSS_PERCENT),
                        seen.number(Fact.LEAF_COLOUR_GRADE),
                        seen.number(Fact.DIEBACK_PERCENT));
        return List.of(
                Derived.number(
                        Fact.VIGOUR_INDEX,
                        vigour.value(),
                        Derived.oldest(parts.stream().map(Evidence::observedOn)),
                        Derived.sourceOf(parts.stream().map(Evidence::source).toList()),
                        "shoots, foliage, colour and dead twigs"));
    }
}
