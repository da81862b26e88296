package org.ripewood.web.courses;

import io.quarkus.qute.TemplateExtension;
import java.util.EnumMap;
import org.ripewood.sessions.Presence;
import org.ripewood.sessions.Roll;

/** Whether somebody came, in words. */
@TemplateExtension
final class RollFormat {

    private RollFormat() {}

    static String came(Presence presence) {
        return switch (presence) {
            case CAME -> "Came";
            case LATE -> "Came late";
            case AWAY -> "Did not come";
        };
    }

    /** The same in one word, for a tick. */
    static String shortly(Presence presence) {
        return switch (presence) {
            case CAME -> "Here";
            case LATE -> "Late";
            case AWAY -> "Away";
        };
    }

    /** How many came, came late and did not. */
    static String counted(Roll roll) {
        var counts = new EnumMap<Presence, Integer>(Presence.class);
        for (var line : roll.lines()) {
            var mark = line.mark();
            if (mark != null) {
                counts.merge(mark.presence(), 1, Integer::sum);
            }
        }
        return "Attendance is saved: %d here, %d late, %d away."
                .formatted(
                        counts.getOrDefault(Presence.CAME, 0),
                        counts.getOrDefault(Presence.LATE, 0),
                        counts.getOrDefault(Presence.AWAY, 0));
    }
}
