package org.ripewood.pictures;

/** The vegetative growth stages (BBCH) in the few phases a picture can tell apart. */
public enum Phase {
    REST("rest", Hatch.DOTTED),
    SWELLING("buds swell", Hatch.RISING),
    LEAVES("leaves unfold", Hatch.FALLING),
    SHOOTS("shoots grow", Hatch.CROSSED),
    HARDENED("hardened off", Hatch.UPRIGHT),
    FALL("leaves fall", Hatch.LEVEL);

    private final String words;
    private final Hatch hatch;

    Phase(String words, Hatch hatch) {
        this.words = words;
        this.hatch = hatch;
    }

    /** As it is said in pictures. */
    public String words() {
        return words;
    }

    Hatch hatch() {
        return hatch;
    }

    /**
     * The phase a stage belongs to.
     *
     * <p>Source of the codes: Meier 2001, BBCH Monograph, 2nd edition: 0 sprouting, 1 leaf
     * development, 3 shoot development, 91 shoot development completed, 92 to 96 leaves turn and
     * fall, 97 and on dormancy.
     *
     * @param stage 0 to 99
     */
    public static Phase of(int stage) {
        if (stage < 0 || stage > 99) {
            throw new IllegalArgumentException("BBCH stages run from 00 to 99, found " + stage);
        }
        if (stage == 0 || stage >= 97) {
            return REST;
        }
        if (stage < 10) {
            return SWELLING;
        }
        if (stage < 20) {
            return LEAVES;
        }
        if (stage < 90) {
            return SHOOTS;
        }
        return stage < 92 ? HARDENED : FALL;
    }
}
