package org.ripewood.api.trees;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.records.Wound;

/** A wound with the opening read last and its readings. */
record WoundAnswer(
        long id,
        long treeId,
        String place,
        LocalDate madeOn,
        double firstWidthMm,
        double firstLengthMm,
        double openMm,
        @Nullable Double heightMm,
        @Nullable Double bearingDegrees,
        boolean deadwoodByDesign,
        long byId,
        List<ObservationAnswer> readings) {

    static WoundAnswer of(Wound wound) {
        return new WoundAnswer(
                wound.id(),
                wound.treeId(),
                wound.place(),
                wound.madeOn(),
                wound.firstWidthMm(),
                wound.firstLengthMm(),
                wound.openMm(),
                wound.heightMm(),
                wound.bearingDegrees(),
                wound.deadwoodByDesign(),
                wound.byId(),
                wound.readings().stream().map(ObservationAnswer::of).toList());
    }
}
