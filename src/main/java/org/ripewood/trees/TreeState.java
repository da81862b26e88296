package org.ripewood.trees;

import java.time.LocalDate;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.Forecasts;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.core.season.StageClock;

/** A tree on a day, derived from its record as it stood in force. */
public record TreeState(
        Tree tree,
        Site site,
        LocalDate on,
        Facts facts,
        WorkLedger ledger,
        StageClock stages,
        Forecasts forecasts) {}
