package org.ripewood.web.stock;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.web.kit.FormState;

/**
 * All that the page of the calculators shows.
 *
 * @param mixes names of mixes and substrates in stock, which a volume can be filled with
 * @param result null until something was asked that can be answered
 */
record CalculatorPageModel(
        Calculation what,
        List<Calculation> all,
        List<String> mixes,
        FormState typed,
        @Nullable CalculatorResult result) {}
