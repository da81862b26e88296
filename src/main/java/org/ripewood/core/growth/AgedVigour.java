package org.ripewood.core.growth;

import java.time.LocalDate;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.ripewood.core.season.GrowingDays;

/**
 * How strong a tree is today, from grades seen on different days.
 *
 * @param index 0 to 100, as {@link VigourIndex} tells, by what has been graded
 * @param certainty 0 to 1: the share of the index that rests on fresh evidence
 * @param unseen what nobody has graded yet
 */
public record AgedVigour(double index, double certainty, Set<VigourGrade> unseen) {

    /** Fewer than three of the four grades say nothing of the whole tree. */
    private static final int MOST_UNSEEN = 1;

    /** A grade of 0 (poor) to 4 (full) on a day. */
    public record Seen(VigourGrade of, double grade, LocalDate on) {
        public Seen {
            VigourIndex.requireGrade(of.name(), grade);
        }
    }

    public AgedVigour {
        if (!(index >= 0 && index <= 100 && certainty >= 0 && certainty <= 1)) {
            throw new IllegalArgumentException(
                    "index and certainty lie between 0 and 100 and 0 and 1, found %s and %s"
                            .formatted(index, certainty));
        }
        unseen = Set.copyOf(unseen);
    }

    /**
     * Weighs what was seen by its age.
     *
     * <p>Formula: a look counts {@code f = 2^(−growing days / half-life)}; a grade is the mean of
     * its looks weighed by f and counts its share times the f of its latest look; the index is
     * {@link VigourIndex#of} the mean of the grades weighed so and the poorest of them, the
     * certainty the sum of those weights.
     *
     * <p>Edge cases: empty when nothing was seen; looks after {@code today} do not count; what was
     * never graded leaves its weight to the rest and lowers the certainty; seen today, or at rest
     * since it was seen, gives a certainty of 1. Source: common practice, no source.
     */
    public static Optional<AgedVigour> of(
            Collection<Seen> looks, LocalDate today, GrowingDays growing) {
        double sum = 0;
        double weights = 0;
        double poorest = VigourIndex.HIGHEST_GRADE;
        var unseen = EnumSet.noneOf(VigourGrade.class);
        for (var grade : VigourGrade.values()) {
            double graded = 0;
            double fresh = 0;
            double freshest = 0;
            for (var look : looks) {
                if (look.of() == grade && !look.on().isAfter(today)) {
                    double f = grade.freshness(growing.between(look.on(), today));
                    graded += f * look.grade();
                    fresh += f;
                    freshest = Math.max(freshest, f);
                }
            }
            if (fresh > 0) {
                double mean = Math.min(VigourIndex.HIGHEST_GRADE, graded / fresh);
                sum += grade.share() * freshest * mean;
                weights += grade.share() * freshest;
                poorest = Math.min(poorest, mean);
            } else {
                unseen.add(grade);
            }
        }
        if (weights == 0) {
            return Optional.empty();
        }
        double mean = Math.min(VigourIndex.HIGHEST_GRADE, sum / weights);
        return Optional.of(
                new AgedVigour(VigourIndex.of(mean, poorest), Math.min(1, weights), unseen));
    }

    /** Whether a grade is missing, so that the index cannot be taken at its full height. */
    public boolean hasGaps() {
        return !unseen.isEmpty();
    }

    /**
     * The index to go by: with one grade missing at most {@link VigourIndex#MOST_WITH_GAPS}, enough
     * for light and medium work; empty when more are.
     */
    public OptionalDouble told() {
        if (unseen.size() > MOST_UNSEEN) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(hasGaps() ? Math.min(index, VigourIndex.MOST_WITH_GAPS) : index);
    }
}
