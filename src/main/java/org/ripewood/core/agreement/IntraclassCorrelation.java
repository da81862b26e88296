package org.ripewood.core.agreement;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which share of the differences between scores is due to what was judged, not to who judged.
 *
 * @param value at most 1; negative when scores of one thing differ more than those of different
 *     ones
 * @param interval F-based
 * @param squares what it was computed from
 */
public record IntraclassCorrelation(
        IccForm form, double value, Interval interval, MeanSquares squares) {

    /**
     * Squares of larger scores, or of ones all smaller than its inverse, leave a double's range.
     */
    private static final double LARGEST_SCORE = 1e50;

    /**
     * @throws IllegalArgumentException when the value is above 1 or outside its interval
     */
    public IntraclassCorrelation {
        if (!(value <= 1 && interval.contains(value))) {
            throw new IllegalArgumentException(
                    "no correlation: %s in %s".formatted(value, interval));
        }
    }

    /**
     * The intraclass correlation of a table of scores.
     *
     * <p>Formula, with the mean squares B between targets, W within, J between judges, E error, of
     * n targets and k judges: (1,1) {@code (B-W)/(B+(k-1)W)}; (2,1) {@code
     * (B-E)/(B+(k-1)E+k(J-E)/n)}; (3,1) {@code (B-E)/(B+(k-1)E)}; (1,k) {@code (B-W)/B}; (2,k)
     * {@code (B-E)/(B+(J-E)/n)}; (3,k) {@code (B-E)/B}. Intervals: from F for forms 1 and 3; for 2
     * with Satterthwaite's degrees of freedom, which are never taken below 1.
     *
     * <p>Shapes and units: a row a target, in it a score a judge, in any one unit, up to 1e50; the
     * value has none.
     *
     * <p>Edge cases: fewer than two targets or judges, a missing score, or scores that do not vary:
     * not available, with the reason; so is a form for the mean of all judges when the targets
     * differ too little for it to be bounded. Judges who never differ (for form 3: but by a fixed
     * amount): 1, in an interval of no width, with a remark. Fewer than 10 targets: a remark.
     *
     * <p>Limits: scores that are about normal; no missing ones; forms 2 and 3 take it that each
     * column is one judge throughout; the interval of form 2 is approximate: asked for 95 %, it
     * held 92 to 93 % in drawn tables of 20 targets and 5 judges.
     *
     * <p>Source: Shrout and Fleiss 1979, Psychol. Bull. 86:420-428; McGraw and Wong 1996, Psychol.
     * Methods 1:30-46 (interval of (2,k)).
     *
     * @param scores rows of one length; null where a judge gave none
     * @param confidence of the interval, 0.5 to below 1
     * @throws IllegalArgumentException for another confidence, rows of different lengths, or a
     *     score that is not finite or beyond 1e50
     */
    public static Answer<IntraclassCorrelation> of(
            List<? extends List<? extends @Nullable Double>> scores,
            IccForm form,
            double confidence) {
        Interval.requireConfidence(confidence);
        int judges = scores.isEmpty() ? 0 : scores.get(0).size();
        var table = new double[scores.size()][judges];
        int missing = fill(table, scores);
        if (table.length < 2 || judges < 2) {
            return new Answer.NotAvailable<>(
                    "it takes two judges and two things judged, found %d and %d."
                            .formatted(judges, table.length));
        }
        if (missing > 0) {
            return new Answer.NotAvailable<>(
                    "every judge must have scored everything: %d of %d scores are missing. Maybe leave out what not all scored."
                            .formatted(missing, table.length * judges));
        }
        var squares = MeanSquares.of(table);
        if (squares.betweenTargets() == 0 && squares.withinTargets() == 0) {
            return new Answer.NotAvailable<>(
                    "all scores are the same; agreement cannot be told from habit. Maybe judge more varied trees.");
        }
        return IccBounds.of(squares, form, confidence)
                .map(bounds -> told(bounds, form, confidence, squares))
                .<Answer<IntraclassCorrelation>>map(
                        icc ->
                                new Answer.Available<>(
                                        icc, Remarks.on(table.length, icc.interval().width())))
                .orElseGet(
                        () ->
                                new Answer.NotAvailable<>(
                                        "what was judged differs too little, beside how judges differ, for form %s. Maybe judge more varied trees."
                                                .formatted(form.notation())));
    }

    private static IntraclassCorrelation told(
            IccBounds bounds, IccForm form, double confidence, MeanSquares squares) {
        double value = Math.min(1, bounds.value());
        // Rounding may put a bound that equals the value a hair on its wrong side.
        double lower = Math.min(bounds.lower(), value);
        double upper = Math.min(1, Math.max(bounds.upper(), value));
        return new IntraclassCorrelation(
                form, value, new Interval(lower, upper, confidence), squares);
    }

    /** Copies what is there and counts what is not. */
    private static int fill(
            double[][] table, List<? extends List<? extends @Nullable Double>> scores) {
        int missing = 0;
        for (int i = 0; i < table.length; i++) {
            var row = scores.get(i);
            if (row.size() != table[i].length) {
                throw new IllegalArgumentException(
                        "expected %d scores in row %d, found %d"
                                .formatted(table[i].length, i, row.size()));
            }
            for (int j = 0; j < row.size(); j++) {
                Double score = row.get(j);
                if (score == null) {
                    missing++;
                } else if (!(Math.abs(score) <= LARGEST_SCORE)) {
                    throw new IllegalArgumentException(
                            "a score lies between -1e50 and 1e50, found " + score);
                } else {
                    table[i][j] = score;
                }
            }
        }
        return missing;
    }
}
