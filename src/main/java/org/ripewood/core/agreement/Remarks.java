package org.ripewood.core.agreement;

import java.util.ArrayList;
import java.util.List;

/** What is said beside a number that should not be trusted too far. */
final class Remarks {

    /** Fewer things judged than this say little (common practice, no source). */
    static final int FEW = 10;

    static final String NO_WIDTH =
            "The interval has no width, because what was judged shows no doubt of its own; more of"
                    + " it may.";

    private Remarks() {}

    static List<String> on(long judged, double standardError) {
        var remarks = new ArrayList<String>(onFew(judged));
        if (standardError == 0) {
            remarks.add(NO_WIDTH);
        }
        return remarks;
    }

    static List<String> onFew(long judged) {
        return judged < FEW
                ? List.of(
                        "Judged together: %d, fewer than %d. The number may change much with the next few."
                                .formatted(judged, FEW))
                : List.of();
    }
}
