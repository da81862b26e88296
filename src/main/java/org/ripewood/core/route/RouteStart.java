package org.ripewood.core.route;

import java.time.LocalDate;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.core.season.StageClock;

/**
 * Where a route begins: the tree's past work and its place.
 *
 * @param on the first day anything can be done
 * @param ledger works up to that day count; its latitude decides where growing seasons begin, its
 *     recovery how fast loads fall
 * @param loadBudget the load the tree may carry at once; a step that asks for more by itself is let
 *     through alone, since the tree's strength has to rise for it first
 * @param stages the tree's growth stage by day
 * @param spread how much years, recovery and people differ from what is usual
 */
public record RouteStart(
        LocalDate on, WorkLedger ledger, double loadBudget, StageClock stages, Spread spread) {

    public RouteStart {
        if (!(loadBudget > 0 && Double.isFinite(loadBudget))) {
            throw new IllegalArgumentException(
                    "the load budget must be above 0, found " + loadBudget);
        }
    }

    /** A route on which all years are alike and everything is done on its first day. */
    public RouteStart(LocalDate on, WorkLedger ledger, double loadBudget, StageClock stages) {
        this(on, ledger, loadBudget, stages, Spread.NONE);
    }
}
