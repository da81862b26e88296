package org.ripewood.core.progress;

import java.time.LocalDate;
import org.ripewood.core.season.Outlook;

/**
 * Tells when a fact of one tree will meet what is asked of it, if nothing is done meanwhile.
 *
 * <p>Asked only for what is known and not met. Clocks and ledgers of work are not asked for: they
 * run by themselves. An answer may not depend on when or how often it was asked.
 */
@FunctionalInterface
public interface Forecasts {

    /** Nothing is forecast. */
    Forecasts NONE =
            (fact, requirement, from) ->
                    new Outlook.Unsaid(
                            "There is no forecast for "
                                    + fact.spoken()
                                    + "; it has to be looked at again.");

    /**
     * When the fact will meet the requirement.
     *
     * @param from the day it is asked; no earlier day counts
     */
    Outlook whenMet(Fact fact, Requirement requirement, LocalDate from);
}
