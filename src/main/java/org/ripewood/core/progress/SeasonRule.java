package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.PlaceYear;
import org.ripewood.core.season.Span;
import org.ripewood.core.season.StageClock;
import org.ripewood.core.season.StageRange;
import org.ripewood.core.season.WeatherRule;
import org.ripewood.core.season.WorkClock;
import org.ripewood.core.season.WorkClocks;

/**
 * When in the year a technique may be done, in growth stages and by the usual weather of the place.
 *
 * @param windows the first whose species or groups hold the species counts
 * @param avoid stages in which it must not be done all the same
 * @param clock the kind of work it is, whose season stands with the species; it counts where no
 *     window speaks of the species. With neither windows nor clock any time is right
 */
public record SeasonRule(
        List<Window> windows,
        List<Avoid> avoid,
        @Nullable WorkClock clock,
        WeatherRule weather,
        String why) {

    /** Open stages; no groups and no species means everybody else. */
    public record Window(Set<String> species, Set<String> groups, List<StageRange> stages) {
        public Window {
            species = Set.copyOf(species);
            groups = Set.copyOf(groups);
            stages = List.copyOf(stages);
        }

        boolean speaksOf(Traits traits) {
            return (species.isEmpty() && groups.isEmpty()) || traits.isAnyOf(species, groups);
        }
    }

    /** Closed stages; no groups and no species means every species. */
    public record Avoid(
            Set<String> species, Set<String> groups, List<StageRange> stages, String why) {
        public Avoid {
            species = Set.copyOf(species);
            groups = Set.copyOf(groups);
            stages = List.copyOf(stages);
        }

        boolean speaksOf(Traits traits) {
            return (species.isEmpty() && groups.isEmpty()) || traits.isAnyOf(species, groups);
        }
    }

    public SeasonRule {
        windows = List.copyOf(windows);
        avoid = List.copyOf(avoid);
    }

    /** A season by stages alone; no windows means any time. */
    public SeasonRule(List<Window> windows, List<Avoid> avoid, String why) {
        this(windows, avoid, null, WeatherRule.ANY, why);
    }

    /** Whether no stage is better than another, but for those to be avoided. */
    public boolean anyStage() {
        return windows.isEmpty() && clock == null;
    }

    /** The open stages of a species: its window's, or its clock's; empty when any stage will do. */
    public List<WorkClocks.Stages> stagesOf(Traits traits) {
        return windowOf(traits)
                .map(window -> List.of(WorkClocks.Stages.of(window.stages())))
                .orElseGet(() -> clock == null ? List.of() : traits.clocks().of(clock));
    }

    private Optional<Window> windowOf(Traits traits) {
        return windows.stream().filter(window -> window.speaksOf(traits)).findFirst();
    }

    /**
     * The growth stages, 0 to 99, in which it may be done on a species at some place, the weather
     * left out of account; those at which its flowers fade stand for stages of the flowers. None
     * when only flowers open it, and nobody has said when they fade.
     */
    public Set<Integer> openStages(Traits traits) {
        return CompiledSeason.compile(this, traits).freeStages();
    }

    /**
     * The same at a place: where no winter comes and its season falls in the coolest weeks, the
     * stage in which trees stand all the year is open too.
     */
    public Set<Integer> openStages(Traits traits, PlaceYear place) {
        return CompiledSeason.compile(this, traits).freeStages(place);
    }

    /** Whether flowers alone open it for a species, and nobody has said when: then one looks. */
    public boolean goesByFlowersAlone(Traits traits) {
        return CompiledSeason.compile(this, traits).opensByFlowersAlone();
    }

    /**
     * The days on which it may be done on a species at a place, one after the other; flowers are
     * taken to fade when they usually do.
     *
     * @param stages of the species there
     * @param within the days looked at
     */
    public List<Span> open(Traits traits, StageClock stages, PlaceYear place, Span within) {
        var season = CompiledSeason.compile(this, traits);
        var open = new ArrayList<Span>();
        LocalDate from = null;
        for (var day = within.from(); !day.isAfter(within.to()); day = day.plusDays(1)) {
            if (season.isOpen(stages.stageOn(day), day, place)) {
                from = from == null ? day : from;
            } else if (from != null) {
                open.add(new Span(from, day.minusDays(1)));
                from = null;
            }
        }
        if (from != null) {
            open.add(new Span(from, within.to()));
        }
        return List.copyOf(open);
    }
}
