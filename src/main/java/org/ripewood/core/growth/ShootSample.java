package org.ripewood.core.growth;

/**
 * Reference shoots of one tree of one growing season.
 *
 * @param tree whose they are
 * @param keeper who keeps the tree
 * @param season the year in which the growing season began
 * @param mm their length, 0 or more
 * @param inGround whether the tree stood in the ground
 */
public record ShootSample(long tree, long keeper, int season, double mm, boolean inGround) {

    public ShootSample {
        if (!(mm >= 0 && Double.isFinite(mm))) {
            throw new IllegalArgumentException("a shoot is 0 mm or longer, found " + mm);
        }
    }
}
