package org.ripewood.core.agreement;

import java.util.List;

/**
 * How far many judges agree beyond chance on grades without an order.
 *
 * @param value 1 for full agreement, 0 for what chance would give
 * @param observedAgreement share of pairs of judges that agree, 0 to 1, mean over what was judged
 * @param expectedAgreement the same by chance, 0 to below 1
 * @param judged how many things were judged
 * @param judges how many judged each of them; not necessarily the same persons
 */
public record FleissKappa(
        double value, double observedAgreement, double expectedAgreement, int judged, int judges) {

    /**
     * @throws IllegalArgumentException when a number is out of its range
     */
    public FleissKappa {
        if (!(value >= -1
                && value <= 1
                && observedAgreement >= 0
                && observedAgreement <= 1
                && expectedAgreement >= 0
                && expectedAgreement < 1
                && judged > 0
                && judges > 1)) {
            throw new IllegalArgumentException(
                    "no kappa: %s, agreement %s against %s, %d judged by %d"
                            .formatted(
                                    value, observedAgreement, expectedAgreement, judged, judges));
        }
    }

    /** The usual word for the value. */
    public AgreementBand band() {
        return AgreementBand.of(value);
    }

    /**
     * The kappa of many judges.
     *
     * <p>Formula: {@code κ = (P - Pe)/(1 - Pe)}, {@code P = mean of Σ_j n_ij (n_ij - 1) / (m (m -
     * 1))}, {@code Pe = Σ_j q_j²} with the counts n, m judges and the share q of each grade.
     *
     * <p>Shapes: a row for each thing judged, in it how many judges gave each grade.
     *
     * <p>Edge cases: nothing judged, fewer than two judges, rows judged by different numbers of
     * judges, or one grade only: not available, with the reason. Fewer than 10 rows: a remark.
     *
     * <p>Limits: no order of the grades and no persons: for those see {@link MeanKappa}. No
     * standard error: the one published in 1971 was withdrawn by its author in 1979, and its
     * successor is for judges who agree by chance only (from memory).
     *
     * <p>Source: Fleiss 1971, Psychol. Bull. 76:378-382.
     *
     * @throws IllegalArgumentException when rows differ in length or a count is negative
     */
    public static Answer<FleissKappa> of(List<List<Integer>> counts) {
        if (counts.isEmpty()) {
            return new Answer.NotAvailable<>("nothing was judged.");
        }
        int grades = counts.get(0).size();
        counts.forEach(row -> requireRow(row, grades));
        int judges = judgesOf(counts.get(0));
        if (judges < 2) {
            return new Answer.NotAvailable<>("it takes two judges, found " + judges + ".");
        }
        for (int i = 0; i < counts.size(); i++) {
            if (judgesOf(counts.get(i)) != judges) {
                return new Answer.NotAvailable<>(
                        "all must be judged by as many: expected %d judges, found %d in row %d. Maybe leave out what not all judged."
                                .formatted(judges, judgesOf(counts.get(i)), i + 1));
            }
        }
        return of(counts, grades, judges);
    }

    private static Answer<FleissKappa> of(List<List<Integer>> counts, int grades, int judges) {
        double ratings = (double) counts.size() * judges;
        double observed = 0;
        var totals = new double[grades];
        for (var row : counts) {
            for (int grade = 0; grade < grades; grade++) {
                double count = row.get(grade);
                totals[grade] += count;
                observed += count * (count - 1);
            }
        }
        observed /= ratings * (judges - 1);
        double expected = 0;
        for (double total : totals) {
            if (total == ratings) {
                return new Answer.NotAvailable<>(
                        "all judges used one grade only; agreement cannot be told from habit. Maybe judge more varied trees.");
            }
            expected += total / ratings * (total / ratings);
        }
        double value = Math.max(-1, (observed - expected) / (1 - expected));
        return new Answer.Available<>(
                new FleissKappa(value, observed, expected, counts.size(), judges),
                Remarks.onFew(counts.size()));
    }

    private static void requireRow(List<Integer> row, int grades) {
        if (row.size() != grades || row.stream().anyMatch(count -> count < 0)) {
            throw new IllegalArgumentException(
                    "expected %d counts, none negative, found %s".formatted(grades, row));
        }
    }

    private static int judgesOf(List<Integer> row) {
        return row.stream().reduce(0, Math::addExact);
    }
}
