package org.ripewood.condition;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.stream.Stream;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;

/** Evidence the service worked out from a record. */
final class Derived {

    private Derived() {}

    /** A number; one past the end of the fact's range is told as that end. */
    static Evidence number(Fact fact, double amount, LocalDate asOf, Source source, String from) {
        double held = Math.max(fact.least(), Math.min(fact.most(), amount));
        return new Evidence(fact, Value.of(held), asOf, source, from, 0);
    }

    static Evidence flag(Fact fact, boolean set, LocalDate asOf, Source source, String from) {
        return new Evidence(fact, Value.of(set), asOf, source, from, 0);
    }

    /** The day of the oldest part: what is worked out is no fresher than that. */
    static LocalDate oldest(Stream<LocalDate> days) {
        return days.min(Comparator.naturalOrder()).orElseThrow();
    }

    /**
     * What is worked out from a student's reading stays a student's, so that no criterion asking
     * for an instructor's eye is met by way of a sum.
     */
    static Source sourceOf(Collection<Source> parts) {
        return parts.contains(Source.STUDENT) ? Source.STUDENT : Source.DERIVED;
    }
}
