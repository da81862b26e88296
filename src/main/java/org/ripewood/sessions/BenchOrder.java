package org.ripewood.sessions;

import java.util.Comparator;
import java.util.regex.Pattern;

/** Benches in the order one walks along them: 2 before 10, and A2 before A10. */
final class BenchOrder {

    private static final Pattern DIGITS = Pattern.compile("\\d+");

    /** Longer than a bench's name can be, so that no number outgrows it. */
    private static final int WIDTH = 24;

    static final Comparator<String> AS_COUNTED =
            Comparator.comparing(BenchOrder::padded).thenComparing(Comparator.naturalOrder());

    private BenchOrder() {}

    private static String padded(String bench) {
        return DIGITS.matcher(bench)
                .replaceAll(number -> "0".repeat(WIDTH - number.group().length()) + number.group());
    }
}
