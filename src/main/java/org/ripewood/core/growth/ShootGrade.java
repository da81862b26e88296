package org.ripewood.core.growth;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What a tree's reference shoots of one season say of its strength.
 *
 * @param mm their length; null when only the ratio is known
 * @param ratio their length over the mean of earlier seasons; null when there is none
 * @param inGround whether the tree stood in the ground
 * @param kind what the kind makes; null when nobody has said
 */
public record ShootGrade(
        @Nullable Double mm,
        @Nullable Double ratio,
        boolean inGround,
        @Nullable ShootLengths kind) {

    private static final double[] RATIOS = {0, 0.4, 0.7, 0.9, 1.2};
    private static final double[] RATIO_GRADES = {0, 1, 2, 3, 4};

    public ShootGrade {
        requireAmount("a shoot", mm);
        requireAmount("a ratio", ratio);
    }

    /**
     * The grade, 0 to 4.
     *
     * <p>Formula: the lower of the grade by length ({@link ShootLengths}) and the grade by ratio:
     * straight lines between nothing 0, 0.4 1, 0.7 2, 0.9 3 and 1.2 4. So a tree that has always
     * been weak is weak, and so is one that has fallen off. But a shoot as long as a strong tree
     * makes where it stands is strong, however much longer it was before. Common practice, no
     * source.
     *
     * @return empty when neither is known
     */
    public OptionalDouble value() {
        if (mm == null || kind == null) {
            return ratio == null ? OptionalDouble.empty() : OptionalDouble.of(byRatio(ratio));
        }
        double byLength = kind.grade(mm, inGround);
        boolean strong = mm >= kind.strong(inGround);
        return OptionalDouble.of(
                ratio == null || strong ? byLength : Math.min(byLength, byRatio(ratio)));
    }

    private static double byRatio(double ratio) {
        return Polyline.along(ratio, RATIOS, RATIO_GRADES);
    }

    private static void requireAmount(String name, @Nullable Double amount) {
        if (amount != null && !(amount >= 0)) {
            throw new IllegalArgumentException(name + " is not negative, found " + amount);
        }
    }
}
