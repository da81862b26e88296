package org.ripewood.core.supply;

/**
 * Where hands are, with the screening weights for it.
 *
 * <p>Below them a lift now and then needs no closer look; they are no limits. Source: filter
 * figures of the UK Health and Safety Executive, INDG143 and L23 (from memory).
 */
public enum HandHeight {
    ABOVE_SHOULDER(7, 3, 10, 5),
    ELBOW_TO_SHOULDER(13, 7, 20, 10),
    KNUCKLE_TO_ELBOW(16, 10, 25, 15),
    LOWER_LEG_TO_KNUCKLE(13, 7, 20, 10),
    BELOW_LOWER_LEG(7, 3, 10, 5);

    private final int womenCloseKg;
    private final int womenFarKg;
    private final int menCloseKg;
    private final int menFarKg;

    HandHeight(int womenCloseKg, int womenFarKg, int menCloseKg, int menFarKg) {
        this.womenCloseKg = womenCloseKg;
        this.womenFarKg = womenFarKg;
        this.menCloseKg = menCloseKg;
        this.menFarKg = menFarKg;
    }

    /** Two weights, kg: for women and for men. */
    public record Screening(int womenKg, int menKg) {}

    /** With the load close to the body. */
    public Screening close() {
        return new Screening(womenCloseKg, menCloseKg);
    }

    /** With the load at arm's length. */
    public Screening far() {
        return new Screening(womenFarKg, menFarKg);
    }
}
