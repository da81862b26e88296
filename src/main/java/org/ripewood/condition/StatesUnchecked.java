package org.ripewood.condition;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.Recovery;
import org.ripewood.core.season.StageClock;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.records.RecordsUnchecked;
import org.ripewood.records.TreeRecord;
import org.ripewood.records.Wound;
import org.ripewood.sites.Seasons;
import org.ripewood.sites.TreeSeason;
import org.ripewood.trees.Days;

/**
 * Trees on a day, derived from their records. For rooms that have checked whose trees they are;
 * doors ask {@link TreeStates}.
 */
@ApplicationScoped
@Transactional
public class StatesUnchecked {

    private final RecordsUnchecked records;
    private final CourseContent content;
    private final Seasons seasons;
    private final ClosedWounds closedWounds;
    private final Days days;

    StatesUnchecked(
            RecordsUnchecked records,
            CourseContent content,
            Seasons seasons,
            ClosedWounds closedWounds,
            Days days) {
        this.closedWounds = closedWounds;
        this.seasons = seasons;
        this.records = records;
        this.content = content;
        this.days = days;
    }

    /** Many trees on a day, in a number of queries that does not depend on how many. */
    public Map<Long, TreeState> on(Collection<Long> treeIds, LocalDate on) {
        var states = new HashMap<Long, TreeState>();
        for (var judged : judge(treeIds, on)) {
            states.put(judged.record().tree().id(), judged.state());
        }
        return states;
    }

    /** What growing will bring about on a tree, from its record up to the day. */
    Growth growth(long treeId, LocalDate on) {
        var judged = judge(List.of(treeId), on).get(0);
        var record = judged.record();
        var forecasts = judged.forecasts();
        var facts = judged.state().facts();
        var closings =
                record.wounds().stream()
                        .sorted(Wound.WIDEST_FIRST)
                        .map(wound -> new Closing(wound, on, forecasts.closing(wound)))
                        .toList();
        var trunk =
                new Trunk(
                        on,
                        TrunkFacts.profile(record, facts),
                        known(facts.number(Fact.HEIGHT_MM)),
                        known(facts.number(Fact.TRUNK_TARGET_MM)),
                        forecasts.trunk());
        return new Growth(closings, trunk);
    }

    private static @Nullable Double known(double number) {
        return Double.isNaN(number) ? null : number;
    }

    private record Judged(TreeRecord record, TreeState state, TreeForecasts forecasts) {}

    private List<Judged> judge(Collection<Long> treeIds, LocalDate on) {
        days.requireAskable("on", on);
        var inForce = content.inForce();
        return records.on(Set.copyOf(treeIds), on).stream()
                .map(record -> judge(record, inForce))
                .toList();
    }

    private Judged judge(TreeRecord record, Content content) {
        var species = content.species(record.tree().species());
        var season = seasons.of(record.site(), species);
        var onDay = new FactsOnDay(record);
        var growth = season.growth();
        var ledger = record.ledger(Recovery.of(growth, onDay.vigour(), species.traits()));
        var facts = onDay.all(ledger, growth);
        var forecasts =
                new TreeForecasts(
                        record,
                        fact -> content.text(fact).title(),
                        closedWounds.of(species),
                        facts,
                        growth);
        var state =
                new TreeState(
                        record.tree(),
                        record.site(),
                        record.on(),
                        facts,
                        ledger,
                        stages(season, facts),
                        forecasts,
                        record.works());
        return new Judged(record, state, forecasts);
    }

    /** The year of the species at the site, put right by what somebody saw last. */
    private static StageClock stages(TreeSeason season, Facts facts) {
        var seen = facts.find(Fact.GROWTH_STAGE);
        return seen == null
                ? season.usual()
                : season.from((int) facts.number(Fact.GROWTH_STAGE), seen.observedOn());
    }
}
