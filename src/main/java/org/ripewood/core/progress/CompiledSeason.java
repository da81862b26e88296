package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.PlaceYear;
import org.ripewood.core.season.StageRange;
import org.ripewood.core.season.TypicalYear;
import org.ripewood.core.season.WeatherRule;
import org.ripewood.core.season.WorkClocks;

/** A season rule for one species, as maps from stage to open. */
final class CompiledSeason {

    /** Days a look at the flowers stays good (common practice, no source). */
    private static final int FLOWERS_FRESH_DAYS = 21;

    /** In days to come: not within reach. */
    static final int NEVER = -1;

    private static final int NOBODY_LOOKED = -1;

    /** Stages of shoots in growth: what trees that never rest are in, all the year. */
    private static final List<Integer> IN_GROWTH = List.of(31, 32, 33, 34, 35);

    private record Closed(BitSet stages, String why, boolean ofFlowers) {}

    /** Stages of the leaves and of the flowers that open it, while so many days are left. */
    private record Part(BitSet leaves, BitSet flowers, WorkClocks.Stages asked) {
        static Part of(WorkClocks.Stages stages) {
            var ranges = stages.ranges();
            var leaves = ranges.stream().filter(range -> !range.onFlowerTrack()).toList();
            var flowers = ranges.stream().filter(StageRange::onFlowerTrack).toList();
            return new Part(Rulebook.stagesOf(leaves), Rulebook.stagesOf(flowers), stages);
        }

        /** Why the weather of a day has it closed; null when it does not. */
        @Nullable String closedBecause(LocalDate day, PlaceYear place) {
            int left = place.growingDaysLeft(day);
            if (left < asked.growingDaysLeft()) {
                return WeatherRule.tooLate(left, asked.growingDaysLeft());
            }
            return place.maxCelsius(day) > asked.notAboveCelsius()
                    ? WeatherRule.tooHot(asked.notAboveCelsius())
                    : null;
        }
    }

    private final SeasonRule rule;
    private final List<Part> parts;
    private final List<Closed> closed;
    private final BitSet fade;
    private final @Nullable Double shelter;
    private final boolean opensByFlowers;
    private final boolean closesByFlowers;

    /** Stages of the leaves in which it is open, with all days of the year left. */
    private final BitSet free;

    /** Stages at which its flowers usually fade and open it. */
    private final BitSet faded;

    private CompiledSeason(
            SeasonRule rule,
            List<Part> parts,
            List<Closed> closed,
            BitSet fade,
            @Nullable Double shelter) {
        this.rule = rule;
        this.parts = parts;
        this.closed = closed;
        this.fade = fade;
        this.shelter = shelter;
        this.opensByFlowers = parts.stream().anyMatch(part -> !part.flowers().isEmpty());
        this.closesByFlowers = closed.stream().anyMatch(Closed::ofFlowers);
        this.free = new BitSet(100);
        this.faded = new BitSet(100);
        for (int stage = 0; stage < 100; stage++) {
            var unclosed = closedBecause(stage, NOBODY_LOOKED) == null;
            free.set(stage, unclosed && inLeaves(stage, LocalDate.MIN, PlaceYear.ANY));
            faded.set(stage, unclosed && opensByFlowers && fade.get(stage));
        }
    }

    static CompiledSeason compile(SeasonRule rule, Traits traits) {
        var closed = new ArrayList<Closed>();
        for (var avoid : rule.avoid()) {
            if (avoid.speaksOf(traits)) {
                for (var range : avoid.stages()) {
                    closed.add(
                            new Closed(
                                    Rulebook.stagesOf(List.of(range)),
                                    avoid.why(),
                                    range.onFlowerTrack()));
                }
            }
        }
        return new CompiledSeason(
                rule,
                rule.stagesOf(traits).stream().map(Part::of).toList(),
                List.copyOf(closed),
                Rulebook.stagesOf(traits.clocks().flowersFade()),
                traits.clocks().shelterBelowCelsius());
    }

    /**
     * Whether the season is open.
     *
     * @param tellWhen whether to look for the day it opens, which takes a walk through the year
     */
    Reason.OfSeason judge(EvaluationContext moment, boolean tellWhen) {
        var place = moment.subject.place();
        var flowers = opensByFlowers || closesByFlowers ? flowerStage(moment) : NOBODY_LOOKED;
        var because = closedBecause(moment.stage, flowers);
        var byStage = because == null ? byStage(moment, flowers, place) : Truth.NO;
        if (byStage != Truth.NO) {
            because = weather(moment.on, place);
        } else if (because == null) {
            because = weatherOfStage(moment, place);
        }
        var truth = because == null ? byStage : Truth.NO;
        var opensOn = truth == Truth.NO && tellWhen ? opensOn(moment) : null;
        return new Reason.OfSeason(moment.stage, rule, because, opensOn, truth);
    }

    private @Nullable String weather(LocalDate day, PlaceYear place) {
        return rule.weather().closedBecause(day, place, shelter);
    }

    private Truth byStage(EvaluationContext moment, int flowers, PlaceYear place) {
        var inLeaves = openByLeaves(moment.stage, moment.on, place);
        if (flowers >= 0) {
            return Truth.of(inLeaves || inFlowers(flowers, moment.on, place));
        }
        // Nobody has looked at the flowers: they could open the window or close it.
        if (!inLeaves) {
            return opensByFlowers && mayFade(moment.stage) ? Truth.UNKNOWN : Truth.NO;
        }
        return closesByFlowers ? Truth.UNKNOWN : Truth.YES;
    }

    /** Flowers may fade at any stage of the leaves when nobody has said at which they do. */
    private boolean mayFade(int stage) {
        return fade.isEmpty() || fade.get(stage);
    }

    /** Why the weather has it closed, though the stage is one that opens it; null otherwise. */
    private @Nullable String weatherOfStage(EvaluationContext moment, PlaceYear place) {
        for (var part : parts) {
            if (part.leaves().get(moment.stage)) {
                return part.closedBecause(moment.on, place);
            }
        }
        return null;
    }

    private boolean openByLeaves(int stage, LocalDate day, PlaceYear place) {
        return neverRests(stage, place)
                ? inGrowth(day, place) || place.coolestWeeks(day)
                : inLeaves(stage, day, place);
    }

    private boolean inLeaves(int stage, LocalDate day, PlaceYear place) {
        return rule.anyStage()
                || parts.stream()
                        .filter(part -> part.leaves().get(stage))
                        .anyMatch(part -> part.closedBecause(day, place) == null);
    }

    private boolean inFlowers(int flowers, LocalDate day, PlaceYear place) {
        return parts.stream()
                .filter(part -> part.flowers().get(flowers))
                .anyMatch(part -> part.closedBecause(day, place) == null);
    }

    /**
     * Where no winter comes trees stand in one stage all the year, unless somebody saw another:
     * work for shoots in growth may be done in any month, work that elsewhere waits for winter or
     * spring in the coolest weeks.
     */
    private static boolean neverRests(int stage, PlaceYear place) {
        return stage == TypicalYear.GROWING && place.withoutWinter();
    }

    private boolean inGrowth(LocalDate day, PlaceYear place) {
        return IN_GROWTH.stream().anyMatch(stage -> free.get(stage) && inLeaves(stage, day, place));
    }

    private @Nullable String closedBecause(int stage, int flowerStage) {
        for (var part : closed) {
            var asked = part.ofFlowers() ? flowerStage : stage;
            if (asked >= 0 && part.stages().get(asked)) {
                return part.why();
            }
        }
        return null;
    }

    /** The flower stage if someone looked lately, or −1. */
    private static int flowerStage(EvaluationContext moment) {
        var seen = moment.facts.seen(Fact.FLOWER_STAGE);
        if (seen == null || !(seen.value() instanceof Value.Number number)) {
            return NOBODY_LOOKED;
        }
        var age = moment.ageDays(seen);
        return age >= 0 && age <= FLOWERS_FRESH_DAYS ? (int) number.amount() : NOBODY_LOOKED;
    }

    private @Nullable LocalDate opensOn(EvaluationContext moment) {
        int days = daysToOpen(moment.stagesAhead, 1);
        return days == NEVER ? null : moment.on.plusDays(days);
    }

    /**
     * Days until the season is open by the leaves and the usual weather, flowers taken to fade when
     * they usually do; {@link #NEVER} when it does not open within thirteen months of {@code from}.
     *
     * @param from first day that counts, in days to come
     */
    int daysToOpen(StagesAhead ahead, int from) {
        int last = Math.min(from + StagesAhead.LOOK_AHEAD_DAYS - 1, StagesAhead.REACH_DAYS);
        for (int days = from; days <= last; days++) {
            if (isOpen(ahead.in(days), ahead.day(days), ahead.place())) {
                return days;
            }
        }
        return NEVER;
    }

    /** The days from one on, counted from it, on which the season is open like that. */
    BitSet openDays(StagesAhead ahead, int from, int days) {
        var openDays = new BitSet(days);
        for (int day = 0; day < days; day++) {
            int on = from + day;
            openDays.set(day, isOpen(ahead.in(on), ahead.day(on), ahead.place()));
        }
        return openDays;
    }

    /** Whether it is open in a stage on a day, flowers taken to fade when they usually do. */
    boolean isOpen(int stage, LocalDate day, PlaceYear place) {
        boolean byStage = neverRests(stage, place) || free.get(stage) || faded.get(stage);
        return byStage && opens(stage, day, place) && weather(day, place) == null;
    }

    private boolean opens(int stage, LocalDate day, PlaceYear place) {
        return faded.get(stage)
                || (closedBecause(stage, NOBODY_LOOKED) == null && openByLeaves(stage, day, place));
    }

    /** Whether the leaves and the weather alone would have it open on the day asked for. */
    boolean freeByLeaves(EvaluationContext moment) {
        var place = moment.subject.place();
        return closedBecause(moment.stage, NOBODY_LOOKED) == null
                && openByLeaves(moment.stage, moment.on, place)
                && weather(moment.on, place) == null;
    }

    /** Whether it opens by the flowers alone, and nobody can tell beforehand when. */
    boolean opensByFlowersAlone() {
        return opensByFlowers && free.isEmpty() && faded.isEmpty();
    }

    Set<Integer> freeStages() {
        var stages = (BitSet) free.clone();
        stages.or(faded);
        return stages.stream().boxed().collect(Collectors.toUnmodifiableSet());
    }

    Set<Integer> freeStages(PlaceYear place) {
        var stages = (BitSet) free.clone();
        stages.or(faded);
        if (place.withoutWinter() && !stages.isEmpty()) {
            stages.set(TypicalYear.GROWING);
        }
        return stages.stream().boxed().collect(Collectors.toUnmodifiableSet());
    }
}
