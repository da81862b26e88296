package org.ripewood.sites;

import java.time.ZoneId;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Suggestion;

/** Time zones by the names of the IANA database. */
public final class TimeZones {

    /** Java's own SystemV zones were never in that database, and other programs know none. */
    private static final Set<String> KNOWN =
            ZoneId.getAvailableZoneIds().stream()
                    .filter(zone -> !zone.startsWith("SystemV/"))
                    .collect(Collectors.toUnmodifiableSet());

    private TimeZones() {}

    /** What is wrong with a zone's name; null when nothing is. */
    public static @Nullable String faultOf(String zone) {
        return KNOWN.contains(zone)
                ? null
                : "there is no time zone “%s”; expected one such as Europe/Paris.%s"
                        .formatted(zone, Suggestion.maybe(KNOWN, zone));
    }
}
