package org.ripewood.condition;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;
import org.ripewood.records.Observation;
import org.ripewood.records.Readings;
import org.ripewood.records.TreeRecord;

/** How long the oldest wire has been on; nothing while nobody has said whether there is any. */
final class WireFacts {

    private WireFacts() {}

    static List<Evidence> of(TreeRecord record) {
        var said = Readings.oldestFirst(record.seen(Fact.WIRE_ON));
        if (said.isEmpty()) {
            return List.of();
        }
        var since = onSince(said);
        return List.of(
                Derived.number(
                        Fact.WIRE_DAYS,
                        since == null ? 0 : (double) ChronoUnit.DAYS.between(since, record.on()),
                        record.on(),
                        Source.DERIVED,
                        since == null ? "no wire on" : "wire on since " + since));
    }

    /** The first yes after the last no: wire put on later does not make the first any younger. */
    private static @Nullable LocalDate onSince(List<Observation> oldestFirst) {
        LocalDate since = null;
        for (var seen : oldestFirst) {
            if (!seen.value().equals(Value.of(true))) {
                since = null;
            } else if (since == null) {
                since = seen.observedOn();
            }
        }
        return since;
    }
}
