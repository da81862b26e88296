package org.ripewood.core.growth;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * How strong a tree is today, from grades seen on different days.
 *
 * @param index 0 to 100, as {@link VigourIndex#value}
 * @param certainty 0 to 1: the share of the index that rests on fresh evidence
 * @param unseen what nobody has graded yet
 */
public record AgedVigour(double index, double certainty, Set<VigourGrade> unseen) {

    private static final double HIGHEST_GRADE = 4;

    /** A grade of 0 (poor) to 4 (full) on a day. */
    public record Seen(VigourGrade of, double grade, LocalDate on) {
        public Seen {
            if (!(grade >= 0 && grade <= HIGHEST_GRADE)) {
                throw new IllegalArgumentException(
                        "the grade of %s lies between 0 and 4, found %s".formatted(of, grade));
            }
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
     * <p>Formula: a look counts {@code f = 2^(−days / half-life)}; a grade is the mean of its looks
     * weighed by f and counts its share times the f of its latest look; the index is 25 times the
     * mean of the grades weighed so, the certainty the sum of those weights.
     *
     * <p>Edge cases: empty when nothing was seen; looks after {@code today} do not count; what was
     * never graded leaves its weight to the rest and lowers the certainty; all seen today gives
     * {@link VigourIndex#value} with certainty 1. Limits: half-lives are plain days and not
     * growth-time, as foliage falls ill in winter too. Source: common practice, no source.
     */
    public static Optional<AgedVigour> of(Collection<Seen> looks, LocalDate today) {
        double sum = 0;
        double weights = 0;
        var unseen = EnumSet.noneOf(VigourGrade.class);
        for (var grade : VigourGrade.values()) {
            double graded = 0;
            double fresh = 0;
            double freshest = 0;
            for (var look : looks) {
                if (look.of() == grade && !look.on().isAfter(today)) {
                    double f = grade.freshness(ChronoUnit.DAYS.between(look.on(), today));
                    graded += f * look.grade();
                    fresh += f;
                    freshest = Math.max(freshest, f);
                }
            }
            if (fresh > 0) {
                sum += grade.share() * freshest * graded / fresh;
                weights += grade.share() * freshest;
            } else {
                unseen.add(grade);
            }
        }
        return weights > 0
                ? Optional.of(
                        new AgedVigour(
                                Math.min(100, 100 / HIGHEST_GRADE * sum / weights),
                                Math.min(1, weights),
                                unseen))
                : Optional.empty();
    }
}
