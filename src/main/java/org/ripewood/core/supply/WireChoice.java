package org.ripewood.core.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Wire for a branch.
 *
 * @param gaugeMm one of the stocked gauges
 * @param strands 1, or 2 laid side by side
 * @param metres of all strands together, laid at 45°, without the anchor
 * @param grams of that
 */
public record WireChoice(double gaugeMm, int strands, double metres, double grams) {

    /** Thicker wire than this share of the branch breaks it before it bends (common practice). */
    public static final double STIFFEST_SHARE = 0.5;

    /**
     * How much thicker one wire would have to be to hold like two: a round bar yields at {@code σ
     * d³/6}, so two hold like one of {@code ∛2 · d}. Source: strength of materials, plastic bending
     * of a round section (from memory).
     */
    static final double TWO_LIKE_ONE = Math.cbrt(2);

    public WireChoice {
        Gauge.requireMm(gaugeMm);
        if (strands < 1 || strands > 2 || !(metres > 0) || !(grams > 0)) {
            throw new IllegalArgumentException(
                    "expected 1 or 2 strands with a length and a mass, found %d, %s m, %s g"
                            .formatted(strands, metres, grams));
        }
    }

    /**
     * The gauge to take for a branch among those stocked.
     *
     * <p>Formula: aluminium about 1/3 of the branch (0.30 to 0.40), copper 1/4 to 1/3. Of the
     * gauges in that range the one nearest to 1/3, for copper to the middle of its range, and of
     * two as near the thinner; when there is none, the thinnest above the range up to {@link
     * #STIFFEST_SHARE}, with a remark; when all are thinner, two of the thinnest that hold like one
     * of the range. Length: {@link Winding#wireMmAt45Degrees}.
     *
     * <p>Edge cases: nothing stocked, all too thick, or two of the thickest too weak: refused, with
     * what would be needed. Source of the shares: common practice, no source.
     *
     * @param stockedMm gauges in mm, in any order
     * @throws IllegalArgumentException when a length, a thickness or a gauge is not above 0
     */
    public static Reckoned<WireChoice> of(
            double branchMm, double acrossMm, WireMetal metal, List<Double> stockedMm) {
        new Winding(branchMm, acrossMm, acrossMm);
        stockedMm.forEach(Gauge::requireMm);
        var stocked = stockedMm.stream().distinct().sorted().toList();
        var least = metal.leastShare() * acrossMm;
        var most = metal.mostShare() * acrossMm;
        var usual = nearest(stocked, least, most, metal.usualShare() * acrossMm);
        if (usual.isPresent()) {
            return new Reckoned.Found<>(
                    of(branchMm, acrossMm, metal, usual.get(), 1), List.of(ANCHOR));
        }
        var stiff = first(stocked, most, STIFFEST_SHARE * acrossMm);
        if (stiff.isPresent()) {
            return new Reckoned.Found<>(
                    of(branchMm, acrossMm, metal, stiff.get(), 1),
                    List.of(
                            "%s mm is stiffer than this branch needs; lay it on with care."
                                    .formatted(Plain.number(stiff.get())),
                            ANCHOR));
        }
        var two = first(stocked, least / TWO_LIKE_ONE, least);
        if (two.isPresent()) {
            return new Reckoned.Found<>(
                    of(branchMm, acrossMm, metal, two.get(), 2),
                    List.of(
                            "No gauge in stock is thick enough by itself; two of %s mm side by side hold like one of %s mm."
                                    .formatted(
                                            Plain.number(two.get()),
                                            Plain.number(two.get() * TWO_LIKE_ONE)),
                            ANCHOR));
        }
        return new Reckoned.Refused<>(List.of(refusal(least, most, stocked)));
    }

    private static final String ANCHOR = "What the anchor takes comes on top.";

    private static WireChoice of(
            double branchMm, double acrossMm, WireMetal metal, double wireMm, int strands) {
        double metres =
                strands * new Winding(branchMm, acrossMm, wireMm).wireMmAt45Degrees() / 1000;
        return new WireChoice(wireMm, strands, metres, metres * metal.gramsPerMetre(wireMm));
    }

    private static Optional<Double> nearest(
            List<Double> sorted, double least, double most, double wanted) {
        Optional<Double> best = Optional.empty();
        for (double mm : sorted) {
            boolean inRange = mm >= least && mm <= most;
            if (inRange
                    && (best.isEmpty() || Math.abs(mm - wanted) < Math.abs(best.get() - wanted))) {
                best = Optional.of(mm);
            }
        }
        return best;
    }

    private static Optional<Double> first(List<Double> sorted, double least, double most) {
        return sorted.stream().filter(mm -> mm >= least && mm <= most).findFirst();
    }

    private static Refusal refusal(double least, double most, List<Double> sorted) {
        var expected = new ArrayList<String>();
        expected.add(
                "Expected a wire of %s to %s mm"
                        .formatted(Plain.number(least), Plain.number(most)));
        if (sorted.isEmpty()) {
            expected.add("found none in stock.");
        } else if (sorted.get(0) > most) {
            expected.add(
                    "found nothing thinner than %s mm. Maybe tie it down with a guy wire."
                            .formatted(Plain.number(sorted.get(0))));
        } else {
            expected.add(
                    "found nothing that holds like it, even doubled; the thickest is %s mm. Maybe use a guy wire or copper."
                            .formatted(Plain.number(sorted.get(sorted.size() - 1))));
        }
        return new Refusal("acrossMm", String.join(", ", expected));
    }
}
