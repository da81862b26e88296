package org.ripewood.web.stock;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.web.kit.Typed;

/**
 * All that the page of the calculators shows.
 *
 * @param mixes names of mixes and substrates in stock, which a volume can be filled with
 * @param result null until something was asked that can be answered
 */
record ReckonSheet(
        Reckoning what,
        List<Reckoning> all,
        List<String> mixes,
        Typed typed,
        @Nullable ReckonResult result) {}
