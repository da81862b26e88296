package org.ripewood.core.agreement;

/**
 * How far two judges agree beyond chance, with near misses counted less than far ones.
 *
 * @param value 1 for full agreement, 0 for what chance would give, negative for less than that
 * @param standardError of the value, from many pairs
 * @param observedDisagreement mean disagreement a pair, in the unit of the weights
 * @param expectedDisagreement the same, had each judge graded at random in the judge's own habit
 * @param pairs how many things both judged
 */
public record WeightedKappa(
        double value,
        double standardError,
        Interval interval,
        double observedDisagreement,
        double expectedDisagreement,
        long pairs,
        Weighting weighting) {

    /**
     * @throws IllegalArgumentException when a number is out of its range
     */
    public WeightedKappa {
        if (!(interval.contains(value)
                && value <= 1
                && standardError >= 0
                && observedDisagreement >= 0
                && expectedDisagreement > 0
                && pairs > 0)) {
            throw new IllegalArgumentException(
                    "no kappa: %s ± %s in %s, disagreement %s against %s, %d pairs"
                            .formatted(
                                    value,
                                    standardError,
                                    interval,
                                    observedDisagreement,
                                    expectedDisagreement,
                                    pairs));
        }
    }

    /** The usual word for the value. */
    public AgreementBand band() {
        return AgreementBand.of(value);
    }

    /**
     * The weighted kappa of two judges.
     *
     * <p>Formula: {@code κ = 1 - D/E}, {@code D = Σ v_ij p_ij}, {@code E = Σ v_ij r_i c_j} with the
     * disagreement weights v, the shares p of pairs and the shares r and c of the judges' grades.
     * Standard error: the root of {@code Σ p_ij (g_ij - D/E)² / N} with {@code g_ij = -v_ij/E +
     * D/E² (Σ_m v_im c_m + Σ_m v_mj r_m)}, which is the formula of Fleiss, Cohen and Everitt told
     * in disagreements. Interval: value ± z · standard error, cut off at 1.
     *
     * <p>Shapes and units: the table has a row and a column a grade; the value does not depend on
     * the unit of the weights, the two disagreements do.
     *
     * <p>Edge cases: nothing judged by both, both judges with one and the same grade only, or
     * grades whose weights are all 0: not available, with the reason. Fewer than 10 pairs, or an
     * interval of no width: a remark.
     *
     * <p>Limits: the standard error is one of large samples; own weights can bring the value below
     * -1; a kappa is low when nearly everything has one grade, however well judges agree.
     *
     * <p>Source: Cohen 1968, Psychol. Bull. 70:213-220; Fleiss, Cohen and Everitt 1969, Psychol.
     * Bull. 72:323-327.
     *
     * @param confidence of the interval, 0.5 to below 1
     * @throws IllegalArgumentException for another confidence, or when given weights are for
     *     another number of grades
     */
    public static Answer<WeightedKappa> of(
            GradeTable table, Weighting weighting, double confidence) {
        Interval.requireConfidence(confidence);
        double[][] weights = weights(table.grades(), weighting);
        if (table.pairs() == 0) {
            return new Answer.NotAvailable<>("nothing was judged by both.");
        }
        var chance = Chance.of(table.shares(), weights);
        if (!(chance.expected() > 0)) {
            return new Answer.NotAvailable<>(whyNoChance(table, chance));
        }
        double value = 1 - chance.observed() / chance.expected();
        double standardError = Math.sqrt(chance.variance() / table.pairs());
        return new Answer.Available<>(
                new WeightedKappa(
                        value,
                        standardError,
                        Interval.around(value, standardError, confidence),
                        chance.observed(),
                        chance.expected(),
                        table.pairs(),
                        weighting),
                Remarks.on(table.pairs(), standardError));
    }

    private static double[][] weights(int grades, Weighting weighting) {
        if (weighting instanceof Weighting.Given given && given.disagreements().size() != grades) {
            throw new IllegalArgumentException(
                    "expected weights for %d grades, found %d"
                            .formatted(grades, given.disagreements().size()));
        }
        var weights = new double[grades][grades];
        for (int one = 0; one < grades; one++) {
            for (int other = 0; other < grades; other++) {
                weights[one][other] = weighting.disagreement(one, other);
            }
        }
        return weights;
    }

    private static String whyNoChance(GradeTable table, Chance chance) {
        for (int grade = 0; grade < table.grades(); grade++) {
            if (chance.rows()[grade] > 0 && table.counts().get(grade).get(grade) == table.pairs()) {
                return "both judges used grade %d only, for all %d judged; agreement cannot be told from habit. Maybe judge more varied trees."
                        .formatted(grade, table.pairs());
            }
        }
        return "no two of the grades that were given disagree by the weights. Maybe the weights are too lenient.";
    }
}
