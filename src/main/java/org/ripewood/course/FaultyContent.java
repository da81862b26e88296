package org.ripewood.course;

import java.util.List;
import java.util.stream.Collectors;

/** Ends the start of the service: there is no content that could be put in force. */
final class FaultyContent extends IllegalStateException {

    FaultyContent(List<ContentFault> faults) {
        super(
                faults.stream()
                        .map(FaultyContent::line)
                        .collect(
                                Collectors.joining(
                                        "\n  ",
                                        "The course content has %d fault(s):\n  "
                                                .formatted(faults.size()),
                                        "")));
    }

    private static String line(ContentFault fault) {
        return "%s:%d: found %s; expected %s"
                .formatted(fault.file(), fault.line(), fault.found(), fault.expected());
    }
}
