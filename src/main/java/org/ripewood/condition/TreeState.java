package org.ripewood.condition;

import java.time.LocalDate;
import java.util.List;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.Forecasts;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.core.season.StageClock;
import org.ripewood.records.WorkDone;
import org.ripewood.sites.Site;
import org.ripewood.trees.Tree;

/**
 * A tree on a day, derived from its record as it stood in force.
 *
 * @param works done on it up to the day, oldest first
 */
public record TreeState(
        Tree tree,
        Site site,
        LocalDate on,
        Facts facts,
        WorkLedger ledger,
        StageClock stages,
        Forecasts forecasts,
        List<WorkDone> works) {

    public TreeState {
        works = List.copyOf(works);
    }
}
