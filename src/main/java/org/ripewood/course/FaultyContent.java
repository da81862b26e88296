package org.ripewood.course;

import io.quarkus.runtime.PreventFurtherStepsException;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Ends the start of the service: there is no content that could be put in force. Its cause is what
 * the framework prints without a stack trace, since nothing is wrong with the program.
 */
final class FaultyContent extends IllegalStateException {

    FaultyContent(List<ContentFault> faults) {
        this(told("The course content has %d fault(s)".formatted(faults.size()), faults));
    }

    private FaultyContent(String message) {
        super(message, new PreventFurtherStepsException(message, 1));
    }

    /** All faults, each on a line of its own. */
    static String told(String heading, List<ContentFault> faults) {
        return faults.stream()
                .map(ContentFault::told)
                .collect(Collectors.joining("\n  ", heading + ":\n  ", ""));
    }
}
