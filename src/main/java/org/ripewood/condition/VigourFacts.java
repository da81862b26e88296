package org.ripewood.condition;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.ripewood.core.growth.AgedVigour;
import org.ripewood.core.growth.VigourGrade;
import org.ripewood.core.growth.VigourIndex;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;

/**
 * Strength, from the four grades when all of them are known; what was seen longer ago counts less.
 */
final class VigourFacts {

    private static final Map<Fact, VigourGrade> GRADES =
            Map.of(
                    Fact.SHOOT_EXTENSION_RATIO, VigourGrade.SHOOT,
                    Fact.FOLIAGE_LOSS_PERCENT, VigourGrade.FOLIAGE,
                    Fact.LEAF_COLOUR_GRADE, VigourGrade.COLOUR,
                    Fact.DIEBACK_PERCENT, VigourGrade.DIEBACK);

    private VigourFacts() {}

    static List<Evidence> of(Facts seen, LocalDate on) {
        var parts = GRADES.keySet().stream().map(seen::find).filter(Objects::nonNull).toList();
        if (parts.size() < GRADES.size()) {
            return List.of();
        }
        var graded =
                VigourIndex.graded(
                        seen.number(Fact.SHOOT_EXTENSION_RATIO),
                        seen.number(Fact.FOLIAGE_LOSS_PERCENT),
                        seen.number(Fact.LEAF_COLOUR_GRADE),
                        seen.number(Fact.DIEBACK_PERCENT));
        var looks =
                parts.stream()
                        .map(
                                part ->
                                        new AgedVigour.Seen(
                                                grade(part.fact()),
                                                graded.of(grade(part.fact())),
                                                part.observedOn()))
                        .toList();
        return AgedVigour.of(looks, on)
                .map(
                        vigour ->
                                Derived.number(
                                        Fact.VIGOUR_INDEX,
                                        vigour.index(),
                                        Derived.oldest(parts.stream().map(Evidence::observedOn)),
                                        Derived.sourceOf(
                                                parts.stream().map(Evidence::source).toList()),
                                        "shoots, foliage, colour and dead twigs"))
                .map(List::of)
                .orElse(List.of());
    }

    private static VigourGrade grade(Fact fact) {
        return Objects.requireNonNull(GRADES.get(fact));
    }
}
