package org.ripewood.core.growth;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/**
 * The most a person may judge a tree's strength to be, by what was seen of it: no more than the
 * poorest grade allows. A tree with dead twigs all over is not strong because somebody says so.
 *
 * <p>Shoots count one grade better here than in the index: which five were measured, and what the
 * seasons before were like, is itself a matter of judgement, while dead twigs, missing foliage and
 * yellow leaves are not. Common practice, no source.
 *
 * @param by what was the poorest
 * @param on the day it was seen
 * @param most 10 to 100
 */
public record VigourCap(VigourGrade by, LocalDate on, double most) {

    private static final double LEEWAY_OF_SHOOTS = 1;

    /**
     * The cap of some looks, {@link VigourIndex#allowedBy} of the poorest; of two alike the latest
     * is told.
     *
     * @return empty when nothing was seen
     */
    public static Optional<VigourCap> of(Collection<AgedVigour.Seen> looks) {
        return looks.stream()
                .min(
                        Comparator.comparingDouble(VigourCap::counted)
                                .thenComparing(AgedVigour.Seen::on, Comparator.reverseOrder()))
                .map(
                        poorest ->
                                new VigourCap(
                                        poorest.of(),
                                        poorest.on(),
                                        VigourIndex.allowedBy(counted(poorest))));
    }

    private static double counted(AgedVigour.Seen look) {
        double leeway = look.of() == VigourGrade.SHOOT ? LEEWAY_OF_SHOOTS : 0;
        return Math.min(VigourIndex.HIGHEST_GRADE, look.grade() + leeway);
    }
}
