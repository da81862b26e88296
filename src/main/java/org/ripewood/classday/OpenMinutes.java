package org.ripewood.classday;

import java.util.List;
import org.ripewood.core.bench.Span;

/** How many minutes of a day are left beside its breaks. */
final class OpenMinutes {

    private OpenMinutes() {}

    /** Breaks that overlap count once. */
    static int of(Span hours, List<Span> breaks) {
        int open = 0;
        for (int minute = hours.fromMinute(); minute < hours.toMinute(); minute++) {
            int asked = minute;
            if (breaks.stream()
                    .noneMatch(pause -> pause.fromMinute() <= asked && asked < pause.toMinute())) {
                open++;
            }
        }
        return open;
    }
}
