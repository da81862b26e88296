package org.ripewood.core.growth;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.growth.TaperProfile.Reading;

/**
 * The rest of a trunk, as seen from one mark on it.
 *
 * @param height how high the tree was measured to be; null when it never was
 * @param others the diameters that count now at the other marks
 * @param before those that counted at the other marks before today's measuring
 */
public record TrunkAround(@Nullable Earlier height, List<Reading> others, List<Reading> before) {

    /** A mark with nothing known around it. */
    public static final TrunkAround NOTHING = new TrunkAround(null, List.of(), List.of());

    public TrunkAround {
        others = List.copyOf(others);
        before = List.copyOf(before);
    }

    /** The two marks nearest to a height, wherever they are; fewer when there are fewer. */
    List<Reading> nearest(double heightMm) {
        return others.stream()
                .sorted(Comparator.comparingDouble(mark -> Math.abs(mark.heightMm() - heightMm)))
                .limit(2)
                .toList();
    }

    static Optional<Reading> below(List<Reading> marks, double heightMm) {
        return marks.stream()
                .filter(mark -> mark.heightMm() < heightMm)
                .max(Comparator.comparingDouble(Reading::heightMm));
    }

    static Optional<Reading> above(List<Reading> marks, double heightMm) {
        return marks.stream()
                .filter(mark -> mark.heightMm() > heightMm)
                .min(Comparator.comparingDouble(Reading::heightMm));
    }
}
