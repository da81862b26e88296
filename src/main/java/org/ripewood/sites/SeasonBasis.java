package org.ripewood.sites;

/** What the season of a site is worked out from. */
public enum SeasonBasis {
    /** Nothing of its temperatures is known: months typical of its latitude. */
    TYPICAL_YEAR("the typical year of its latitude, since its temperatures are not known"),
    MONTHLY_MEANS("its monthly means"),
    READINGS_AND_MEANS("its daily readings, and its monthly means for days that were not read"),
    READINGS("its daily readings, and their own means for days that were not read");

    private final String words;

    SeasonBasis(String words) {
        this.words = words;
    }

    /** As it is said after "worked out from". */
    public String words() {
        return words;
    }
}
