package org.ripewood.materials;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.supply.Span;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;

/** A substrate's properties as they are typed: one value, a range, or nothing. */
final class SubstrateTyped {

    private static final double WHOLE_PERCENT = 100;

    private SubstrateTyped() {}

    static void describe(StockItemEntity row, NewStockSubstrate substrate) {
        var faults = new ArrayList<Fault>();
        var dry =
                span(
                        "dryKgPerLitre",
                        substrate.dryKgPerLitre(),
                        substrate.dryKgPerLitreTo(),
                        faults);
        var capacity =
                span(
                        "capacityPercent",
                        substrate.capacityPercent(),
                        substrate.capacityPercentTo(),
                        faults);
        var air = span("airPercent", substrate.airPercent(), substrate.airPercentTo(), faults);
        if (capacity != null && air != null && capacity.low() + air.low() > WHOLE_PERCENT) {
            faults.add(
                    new Fault(
                            "airPercent",
                            "expected water and air to be 100 %% together at most, found %s and %s"
                                    .formatted(capacity.low(), air.low())));
        }
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults);
        }
        row.dryLow = dry == null ? null : dry.low();
        row.dryHigh = dry == null ? null : dry.high();
        row.capacityLow = capacity == null ? null : capacity.low() / WHOLE_PERCENT;
        row.capacityHigh = capacity == null ? null : capacity.high() / WHOLE_PERCENT;
        row.airLow = air == null ? null : air.low() / WHOLE_PERCENT;
        row.airHigh = air == null ? null : air.high() / WHOLE_PERCENT;
        row.bagLitres = substrate.bagLitres();
    }

    private static @Nullable Span span(
            String field, @Nullable Double from, @Nullable Double to, List<Fault> faults) {
        if (from == null) {
            if (to != null) {
                faults.add(new Fault(field, "expected the lower end as well, found nothing"));
            }
            return null;
        }
        if (to != null && to < from) {
            faults.add(
                    new Fault(
                            field + "To",
                            "expected at least %s, found %s. Maybe swap them."
                                    .formatted(from, to)));
            return null;
        }
        return new Span(from, to == null ? from : to);
    }
}
