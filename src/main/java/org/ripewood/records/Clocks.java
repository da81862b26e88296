package org.ripewood.records;

import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.core.progress.Fact;

/** Clocks that work starts, and the facts that tell the days since. */
public final class Clocks {

    private static final String PREFIX = "days_since_";

    /** A clock's code, such as {@code root_work}, to its fact; heavy work has a ledger instead. */
    public static final Map<String, Fact> FACTS =
            Arrays.stream(Fact.values())
                    .filter(fact -> fact.code().startsWith(PREFIX))
                    .filter(fact -> fact != Fact.DAYS_SINCE_HEAVY_WORK)
                    .collect(
                            Collectors.toUnmodifiableMap(
                                    fact -> fact.code().substring(PREFIX.length()), fact -> fact));

    public static final Set<String> CODES = FACTS.keySet();

    private Clocks() {}
}
