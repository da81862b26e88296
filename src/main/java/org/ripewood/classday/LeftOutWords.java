package org.ripewood.classday;

import java.util.Map;
import java.util.stream.Collectors;
import org.ripewood.core.bench.LeftOut;

/** Says why a piece of work has no place in the day. */
final class LeftOutWords {

    private final Map<Long, String> names;

    LeftOutWords(Map<Long, String> names) {
        this.names = names;
    }

    String of(LeftOut.Reason reason) {
        if (reason instanceof LeftOut.Absent) {
            return "The student is not there.";
        }
        if (reason instanceof LeftOut.NoTool tool) {
            return "The school has no %s.".formatted(tool.tool());
        }
        if (reason instanceof LeftOut.NoInstructor nobody) {
            return nobody.wanted().isEmpty()
                    ? "No instructor is there for what is left of the day."
                    : "None of these is there: %s."
                            .formatted(
                                    nobody.wanted().stream()
                                            .map(this::name)
                                            .sorted()
                                            .collect(Collectors.joining(", ")));
        }
        if (reason instanceof LeftOut.DayTooShort day) {
            return "It takes %d minutes, and from %s to %s there are not so many."
                    .formatted(
                            day.minutes(),
                            Minutes.time(day.fromMinute()),
                            Minutes.time(day.toMinute()));
        }
        if (reason instanceof LeftOut.NoRoom room) {
            return "There is no room for it beside the rest: it asks for %d minutes of an instructor, %d are left%s."
                    .formatted(
                            room.instructorMinutes(),
                            room.instructorMinutesLeft(),
                            room.proved() ? "" : ", and no better order was found");
        }
        throw new IllegalStateException("no words for " + reason);
    }

    private String name(String id) {
        return names.getOrDefault(Long.valueOf(id), "Person " + id);
    }
}
