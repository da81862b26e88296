package org.ripewood.core.agreement;

/** The usual words for a kappa, worst first. */
public enum AgreementBand {
    POOR("poor"),
    SLIGHT("slight"),
    FAIR("fair"),
    MODERATE("moderate"),
    SUBSTANTIAL("substantial"),
    ALMOST_PERFECT("almost perfect");

    private final String words;

    AgreementBand(String words) {
        this.words = words;
    }

    /** The band as it is said. */
    public String words() {
        return words;
    }

    /**
     * The band of a kappa.
     *
     * <p>Formula: below 0 poor, up to 0.20 slight, 0.40 fair, 0.60 moderate, 0.80 substantial, 1
     * almost perfect; a bound belongs to the lower band, and what lies in the published table's
     * gaps (0.205) to the upper.
     *
     * <p>Edge cases: exactly 0 is slight; sources differ on it.
     *
     * <p>Limits: made for unweighted kappas; one and the same pair of judges gets other bands with
     * other weights (Warrens 2013), so the weighting is told beside the word.
     *
     * <p>Source: Landis and Koch 1977, Biometrics 33:159-174.
     *
     * @throws IllegalArgumentException above 1, or NaN
     */
    public static AgreementBand of(double kappa) {
        if (!(kappa <= 1)) {
            throw new IllegalArgumentException("a kappa is at most 1, found " + kappa);
        }
        if (kappa < 0) {
            return POOR;
        }
        if (kappa <= 0.20) {
            return SLIGHT;
        }
        if (kappa <= 0.40) {
            return FAIR;
        }
        if (kappa <= 0.60) {
            return MODERATE;
        }
        return kappa <= 0.80 ? SUBSTANTIAL : ALMOST_PERFECT;
    }
}
