package org.ripewood.core.growth;

import java.util.Collection;

/**
 * What a tree's shoots are held against: the content's lengths for its kind, sharpened by what the
 * school's own trees of that kind have grown.
 *
 * @param content what the content says
 * @param inPot how the school's trees in pots differ from it
 * @param inGround likewise of those in the ground
 */
public record ReferenceShoots(ShootLengths content, SchoolLevel inPot, SchoolLevel inGround) {

    /**
     * The school moves a length by less than half the way to the content's next one, so that none
     * of them ever changes place with another, neither in a pot nor between pot and ground.
     */
    private static final double MOST_OF_A_STEP = 0.45;

    /** Nor by more than about half as much again. */
    private static final double MOST = 2 * SchoolLevel.CONTENT_SD;

    /** The content's lengths alone, where nothing was measured or it does not count. */
    public static ReferenceShoots of(ShootLengths content) {
        return new ReferenceShoots(content, SchoolLevel.NONE, SchoolLevel.NONE);
    }

    /**
     * The content's lengths and the school's shoots together, {@link SchoolLevel#of}.
     *
     * @param measured shoots of healthy trees of the kind; those in pots and those in the ground
     *     are told apart
     */
    public static ReferenceShoots of(ShootLengths content, Collection<ShootSample> measured) {
        return new ReferenceShoots(
                content, level(content, measured, false), level(content, measured, true));
    }

    private static SchoolLevel level(
            ShootLengths content, Collection<ShootSample> measured, boolean inGround) {
        var there = measured.stream().filter(one -> one.inGround() == inGround).toList();
        return SchoolLevel.of(
                there,
                content.healthy(inGround),
                Math.min(MOST, MOST_OF_A_STEP * content.leastStep()));
    }

    /** How the school's trees differ from the content where a tree stands. */
    public SchoolLevel level(boolean ground) {
        return ground ? inGround : inPot;
    }

    /** What a shoot is held against where the tree stands. */
    public ShootLengths lengths(boolean ground) {
        var level = level(ground);
        return level.isEnough() ? content.times(level.factor()) : content;
    }
}
