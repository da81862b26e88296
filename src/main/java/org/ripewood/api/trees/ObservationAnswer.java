package org.ripewood.api.trees;

import java.time.Instant;
import java.time.LocalDate;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.PlainValue;
import org.ripewood.core.progress.Source;
import org.ripewood.platform.Paged;
import org.ripewood.records.Observation;

/** An observation with its fact by code and its value as plain JSON. */
record ObservationAnswer(
        long id,
        long treeId,
        String fact,
        @Schema(
                        description =
                                "a number in the fact's unit, true or false, or one of the fact's"
                                        + " words",
                        oneOf = {Double.class, Boolean.class, String.class})
                Object value,
        String unit,
        LocalDate observedOn,
        Source source,
        long byId,
        Instant recordedAt,
        @Nullable String note,
        @Nullable Long woundId,
        @Nullable Long branchId,
        @Nullable Double heightMm,
        @Nullable Long supersededBy) {

    static ObservationAnswer of(Observation seen) {
        return new ObservationAnswer(
                seen.id(),
                seen.treeId(),
                seen.fact().code(),
                PlainValue.of(seen.value()),
                seen.fact().unit(),
                seen.observedOn(),
                seen.source(),
                seen.byId(),
                seen.recordedAt(),
                seen.note(),
                seen.woundId(),
                seen.branchId(),
                seen.heightMm(),
                seen.supersededBy());
    }

    static Paged<ObservationAnswer> of(Paged<Observation> page) {
        var items = page.items().stream().map(ObservationAnswer::of).toList();
        return new Paged<>(items, page.page(), page.size(), page.total());
    }
}
