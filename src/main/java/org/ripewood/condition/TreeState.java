package org.ripewood.condition;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.Forecasts;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.core.season.GrowingDays;
import org.ripewood.core.season.PlaceYear;
import org.ripewood.core.season.StageClock;
import org.ripewood.records.TreeRecord;
import org.ripewood.records.WorkDone;
import org.ripewood.records.Wound;
import org.ripewood.sites.Site;
import org.ripewood.trees.Tree;

/** A tree on a day, derived from its record as it stood in force. */
public final class TreeState {

    private final TreeRecord record;
    private final Facts facts;
    private final WorkLedger ledger;
    private final StageClock stages;
    private final PlaceYear place;
    private final TreeForecasts forecasts;
    private final GrowingDays growing;

    TreeState(
            TreeRecord record,
            Facts facts,
            WorkLedger ledger,
            StageClock stages,
            PlaceYear place,
            TreeForecasts forecasts,
            GrowingDays growing) {
        this.record = record;
        this.facts = facts;
        this.ledger = ledger;
        this.stages = stages;
        this.place = place;
        this.forecasts = forecasts;
        this.growing = growing;
    }

    /** What it follows from. */
    public TreeRecord record() {
        return record;
    }

    public Tree tree() {
        return record.tree();
    }

    public Site site() {
        return record.site();
    }

    public LocalDate on() {
        return record.on();
    }

    public Facts facts() {
        return facts;
    }

    public WorkLedger ledger() {
        return ledger;
    }

    public StageClock stages() {
        return stages;
    }

    /** The usual weather of where it stands. */
    public PlaceYear place() {
        return place;
    }

    public Forecasts forecasts() {
        return forecasts;
    }

    /** Days on which its kind grows at its site, by which evidence grows old. */
    public GrowingDays growing() {
        return growing;
    }

    /** Work done on it up to the day, oldest first. */
    public List<WorkDone> works() {
        return record.works();
    }

    /** How its wounds are going to close, and how its trunk thickens. */
    public Growth growth() {
        var closings =
                record.wounds().stream()
                        .sorted(Wound.WIDEST_FIRST)
                        .map(wound -> new Closing(wound, on(), forecasts.closing(wound)))
                        .toList();
        var trunk =
                new Trunk(
                        on(),
                        TrunkFacts.profile(record, facts),
                        known(facts.number(Fact.HEIGHT_MM)),
                        known(facts.number(Fact.TRUNK_TARGET_MM)),
                        forecasts.trunk());
        return new Growth(closings, trunk);
    }

    private static @Nullable Double known(double number) {
        return Double.isNaN(number) ? null : number;
    }
}
