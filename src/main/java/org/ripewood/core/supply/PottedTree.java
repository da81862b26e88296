package org.ripewood.core.supply;

import java.util.ArrayList;
import org.jspecify.annotations.Nullable;

/**
 * A tree in its container, just watered.
 *
 * @param substrateKg drained mass of the substrate, see {@link Batch#drainedKg}
 * @param containerKg null when nobody weighed it
 * @param treeKg tree and root ball; null when nobody weighed it
 */
public record PottedTree(
        Estimate substrateKg, @Nullable Double containerKg, @Nullable Double treeKg) {

    public PottedTree {
        requireMass("container", containerKg);
        requireMass("tree", treeKg);
    }

    /**
     * What it weighs, kg.
     *
     * <p>Formula: the sum. Edge cases: unknown as soon as one of the three is, with all that is
     * missing. Limits: just after watering it weighs more than drained, for a few minutes.
     */
    public Estimate wetKg() {
        return Mix.plus(
                Mix.plus(substrateKg, own("the container", containerKg)), own("the tree", treeKg));
    }

    private static Estimate own(String what, @Nullable Double kg) {
        if (kg != null) {
            return new Estimate.Known(Span.exactly(kg));
        }
        var missing = new ArrayList<String>();
        missing.add("the weight of " + what);
        return new Estimate.Unknown(missing);
    }

    private static void requireMass(String what, @Nullable Double kg) {
        if (kg != null && !(kg >= 0 && kg < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "the %s weighs at least 0 kg, found %s".formatted(what, kg));
        }
    }
}
