package org.ripewood.core.supply;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Substrates mixed by volume.
 *
 * @param parts at least one; each substrate once
 */
public record Mix(List<Part> parts) {

    /** Said wherever {@link #airShare} or {@link #capacityShare} is shown. */
    public static final String ESTIMATE =
            "An estimate by parts: fine grains fill the gaps between coarse ones, so the mix holds"
                    + " less air than this.";

    /**
     * How much a loose mix sinks when it is worked in and watered; 5 to 10 % (common practice, no
     * source).
     */
    public static final double USUAL_SETTLING = 0.1;

    /** What is ordered for each litre to fill (common practice, no source). */
    public static final double ORDER_FACTOR = 1.15;

    private static final double MOST_SETTLING = 0.5;

    /** So many parts by volume of a substrate. */
    public record Part(Substrate substrate, double parts) {
        public Part {
            if (!(parts > 0 && parts < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(
                        "parts of %s are above 0, found %s".formatted(substrate.name(), parts));
            }
        }
    }

    /**
     * @throws IllegalArgumentException without a part, or when a substrate comes twice
     */
    public Mix {
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("a mix has at least one part");
        }
        var names = new HashSet<String>();
        for (var part : parts) {
            if (!names.add(part.substrate().name())) {
                throw new IllegalArgumentException(
                        part.substrate().name() + " comes twice in a mix");
            }
        }
    }

    /** A substrate used by itself. */
    public static Mix of(Substrate substrate) {
        return new Mix(List.of(new Part(substrate, 1)));
    }

    /** Share of a part in the whole, 0 to 1. */
    double share(Part part) {
        return part.parts() / parts.stream().mapToDouble(Part::parts).sum();
    }

    /**
     * Oven-dry mass of a litre of the loose mix, kg.
     *
     * <p>Formula: mean of the components' bulk densities, weighted by parts. Edge cases: unknown as
     * soon as one is, with the names of those that are. Limits: grains of unlike size pack closer
     * than this says.
     */
    public Estimate dryKgPerLitre() {
        return weighted(Substrate::dryKgPerLitre, "the dry weight of a litre of ");
    }

    /**
     * Share of the volume that is water after it drained, 0 to 1; see {@link #ESTIMATE}.
     *
     * <p>Formula and edge cases: as {@link #dryKgPerLitre}. Limits: a taller container holds less
     * water in each litre (Owen and Altland 2008, HortScience 43(2):505), which is not looked at.
     */
    public Estimate capacityShare() {
        return weighted(Substrate::capacityShare, "the container capacity of ");
    }

    /** Share of the volume that is air after it drained, 0 to 1; as {@link #capacityShare}. */
    public Estimate airShare() {
        return weighted(Substrate::airShare, "the air space of ");
    }

    /**
     * What it takes to fill a volume.
     *
     * <p>Formula: the loose volume is {@code fill / (1 − settling)}; to be ordered is {@code fill
     * ·} {@link #ORDER_FACTOR} or the loose volume, whichever is more; each component has its share
     * of both, and bags are rounded up. Dry mass is that of the loose volume. The drained mass adds
     * the water that the filled volume holds, {@code fill · container capacity}, at 1 kg a litre:
     * with no settling bulk density plus container capacity (definitions of the porometer method,
     * North Carolina State University).
     *
     * @param fillLitres to be filled, at least 0; take off the root ball first
     * @param settling share of the loose volume that it sinks by, 0 to 0.5
     * @throws IllegalArgumentException outside these
     */
    public Batch fill(double fillLitres, double settling) {
        if (!(fillLitres >= 0 && fillLitres < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a volume is not negative, found " + fillLitres);
        }
        if (!(settling >= 0 && settling <= MOST_SETTLING)) {
            throw new IllegalArgumentException("settling is 0 to 0.5, found " + settling);
        }
        double loose = fillLitres / (1 - settling);
        double order = Math.max(loose, fillLitres * ORDER_FACTOR);
        var lines = parts.stream().map(part -> line(part, loose, order)).toList();
        var dry = times(dryKgPerLitre(), loose);
        return new Batch(
                fillLitres,
                loose,
                order,
                lines,
                dry,
                plus(dry, times(capacityShare(), fillLitres)));
    }

    private Batch.Line line(Part part, double loose, double order) {
        return Batch.Line.of(part.substrate(), loose * share(part), order * share(part));
    }

    private Estimate weighted(Function<Substrate, @Nullable Span> property, String what) {
        var missing = new ArrayList<String>();
        var sum = Span.exactly(0);
        for (var part : parts) {
            var span = property.apply(part.substrate());
            if (span == null) {
                missing.add(what + part.substrate().name());
            } else {
                sum = sum.plus(span.times(share(part)));
            }
        }
        return missing.isEmpty() ? new Estimate.Known(sum) : new Estimate.Unknown(missing);
    }

    private static Estimate times(Estimate estimate, double factor) {
        return estimate instanceof Estimate.Known known
                ? new Estimate.Known(known.span().times(factor))
                : estimate;
    }

    /** The sum; unknown when either is, missing what both miss. */
    static Estimate plus(Estimate one, Estimate other) {
        if (one instanceof Estimate.Known left && other instanceof Estimate.Known right) {
            return new Estimate.Known(left.span().plus(right.span()));
        }
        var missing = new ArrayList<String>();
        for (var estimate : List.of(one, other)) {
            if (estimate instanceof Estimate.Unknown unknown) {
                missing.addAll(unknown.missing());
            }
        }
        return new Estimate.Unknown(missing);
    }
}
