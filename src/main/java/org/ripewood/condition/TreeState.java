package org.ripewood.condition;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.growth.ClosingBelief;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.Forecasts;
import org.ripewood.core.progress.Recovery;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.core.season.GrowingDays;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.PlaceYear;
import org.ripewood.core.season.StageClock;
import org.ripewood.course.Content;
import org.ripewood.course.Species;
import org.ripewood.records.TreeRecord;
import org.ripewood.records.WorkDone;
import org.ripewood.records.Wound;
import org.ripewood.sites.Site;
import org.ripewood.sites.TreeSeason;
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
    private final Habit habit;

    TreeState(
            TreeRecord record,
            Facts facts,
            WorkLedger ledger,
            StageClock stages,
            PlaceYear place,
            TreeForecasts forecasts,
            GrowingDays growing,
            Habit habit) {
        this.habit = habit;
        this.record = record;
        this.facts = facts;
        this.ledger = ledger;
        this.stages = stages;
        this.place = place;
        this.forecasts = forecasts;
        this.growing = growing;
    }

    /**
     * Derives a tree on the day of its record, its shoots held against the content's lengths alone.
     *
     * @param season the year of its species at its site
     * @param closing what is believed of how its species closes wounds
     */
    public static TreeState of(
            TreeRecord record,
            Content content,
            Species species,
            TreeSeason season,
            ClosingBelief closing) {
        return of(record, content, TreeKind.of(content, species, season), species, season, closing);
    }

    /** The same, its shoots held against what its kind says. */
    static TreeState of(
            TreeRecord record,
            Content content,
            TreeKind kind,
            Species species,
            TreeSeason season,
            ClosingBelief closing) {
        var onDay = new FactsOnDay(record, kind);
        var growth = season.growth();
        var recovery = Recovery.of(growth, onDay.vigour(), species.traits());
        var ledger = record.ledger(recovery, content.renewing());
        var facts = onDay.all(ledger, growth, closing);
        var forecasts =
                new TreeForecasts(
                        record,
                        fact -> content.text(fact).title(),
                        closing,
                        facts,
                        growth,
                        kind.leastWoundMm());
        return new TreeState(
                record,
                facts,
                ledger,
                stages(season, facts),
                season.place(),
                forecasts,
                season.growing(),
                species.traits().habit());
    }

    /** The year of the species at the site, put right by what somebody saw last. */
    private static StageClock stages(TreeSeason season, Facts facts) {
        var seen = facts.find(Fact.GROWTH_STAGE);
        return seen == null
                ? season.usual()
                : season.from((int) facts.number(Fact.GROWTH_STAGE), seen.observedOn());
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

    /** Whether its leaves are down in their season on a day. */
    public boolean bareOn(LocalDate day) {
        return habit.bareAt(stages.stageOn(day));
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
