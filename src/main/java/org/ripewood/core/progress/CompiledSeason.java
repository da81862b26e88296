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

    /** Flowers fading (BBCH 67) to all petals fallen (69), Meier 2001, BBCH Monograph. */
    private static final int FADING = 67;

    private static final int FADED = 69;

    /** Stages of shoots in growth: what trees that never rest are in, all the year. */
    private static final int[] IN_GROWTH = {31, 32, 33, 34, 35};

    private record Avoided(BitSet stages, String why, boolean ofFlowers) {}

    /** Stages of the leaves and of the flowers that open it, while so many days are left. */
    private record Part(BitSet leaves, BitSet flowers, WorkClocks.Stages asked) {
        static Part of(WorkClocks.Stages stages) {
            var ranges = stages.ranges();
            var leaves = ranges.stream().filter(range -> !range.onFlowerTrack()).toList();
            var flowers = ranges.stream().filter(StageRange::onFlowerTrack).toList();
            return new Part(Rulebook.stagesOf(leaves), Rulebook.stagesOf(flowers), stages);
        }

        boolean allows(LocalDate day, PlaceYear place) {
            return place.growingDaysLeft(day) >= asked.growingDaysLeft()
                    && !(place.maxCelsius(day) > asked.notAboveCelsius());
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
    private final List<Avoided> closed;
    private final BitSet fade;
    private final @Nullable Double shelter;
    private final boolean opensByFlowers;
    private final boolean closesByFlowers;

    /** Whether fading flowers open it; buds and fruit are thinned at other times than that. */
    private final boolean opensAtFade;

    /** Stages of the leaves in which it is open, with all days of the year left. */
    private final BitSet free;

    /** Stages of the leaves in which it must not be done. */
    private final BitSet avoided;

    /** Stages at which its flowers usually fade and open it. */
    private final BitSet faded;

    private CompiledSeason(
            SeasonRule rule,
            List<Part> parts,
            List<Avoided> closed,
            BitSet fade,
            @Nullable Double shelter) {
        this.rule = rule;
        this.parts = parts;
        this.closed = closed;
        this.fade = fade;
        this.shelter = shelter;
        this.opensByFlowers = parts.stream().anyMatch(part -> !part.flowers().isEmpty());
        this.closesByFlowers = closed.stream().anyMatch(Avoided::ofFlowers);
        this.opensAtFade = parts.stream().anyMatch(CompiledSeason::holdsFade);
        this.avoided = new BitSet(100);
        this.free = new BitSet(100);
        this.faded = new BitSet(100);
        for (int stage = 0; stage < 100; stage++) {
            var unclosed = closedBecause(stage, NOBODY_LOOKED) == null;
            avoided.set(stage, !unclosed);
            free.set(stage, unclosed && inLeaves(stage, LocalDate.MIN, PlaceYear.ANY));
            faded.set(stage, unclosed && opensAtFade && fade.get(stage));
        }
    }

    private static boolean holdsFade(Part part) {
        int first = part.flowers().nextSetBit(FADING);
        return first >= 0 && first <= FADED;
    }

    static CompiledSeason compile(SeasonRule rule, Traits traits) {
        var closed = new ArrayList<Avoided>();
        for (var avoid : rule.avoid()) {
            if (avoid.speaksOf(traits)) {
                for (var range : avoid.stages()) {
                    closed.add(
                            new Avoided(
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

    /** Whether the season is open. */
    Truth truth(EvaluationContext moment) {
        var place = moment.subject.place();
        var flowers = flowers(moment);
        var byStage = isClosed(moment.stage, flowers) ? Truth.NO : byStage(moment, flowers, place);
        return byStage != Truth.NO && rule.weather().closes(moment.on, place, shelter)
                ? Truth.NO
                : byStage;
    }

    private int flowers(EvaluationContext moment) {
        return opensByFlowers || closesByFlowers ? flowerStage(moment) : NOBODY_LOOKED;
    }

    /**
     * The same as a reason.
     *
     * @param tellWhen whether to tell the day it opens, which takes a walk through the year
     */
    Reason.OfSeason reason(EvaluationContext moment, boolean tellWhen) {
        return new Reason.OfSeason(
                moment.stage, rule, truth(moment), new Closed(this, moment, tellWhen));
    }

    private record Closed(CompiledSeason season, EvaluationContext moment, boolean tellWhen)
            implements Reason.OfSeason.Closed {
        @Override
        public @Nullable String because() {
            return season.closedBecause(moment);
        }

        @Override
        public @Nullable LocalDate opensOn() {
            return tellWhen ? season.opensOn(moment) : null;
        }
    }

    private @Nullable String closedBecause(EvaluationContext moment) {
        var place = moment.subject.place();
        var flowers = flowers(moment);
        var because = closedBecause(moment.stage, flowers);
        if (because != null) {
            return because;
        }
        return byStage(moment, flowers, place) == Truth.NO
                ? weatherOfStage(moment, place)
                : weather(moment.on, place);
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

    /**
     * Flowers may fade at any stage of the leaves when nobody has said at which they do. What is
     * done to buds or fruit goes by the leaves where stages of them are given, and by a look else.
     */
    private boolean mayFade(int stage) {
        return opensAtFade ? fade.isEmpty() || fade.get(stage) : free.isEmpty();
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
        for (var part : parts) {
            if (part.leaves().get(stage) && part.allows(day, place)) {
                return true;
            }
        }
        return rule.anyStage();
    }

    private boolean inFlowers(int flowers, LocalDate day, PlaceYear place) {
        return parts.stream()
                .anyMatch(part -> part.flowers().get(flowers) && part.allows(day, place));
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
        for (int stage : IN_GROWTH) {
            if (free.get(stage) && inLeaves(stage, day, place)) {
                return true;
            }
        }
        return false;
    }

    private boolean isClosed(int stage, int flowerStage) {
        return closesByFlowers ? closedBecause(stage, flowerStage) != null : avoided.get(stage);
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
        synchronized (moment) { // which keeps the stages of the days ahead
            int days = daysToOpen(moment.stagesAhead, 1);
            return days == NEVER ? null : moment.on.plusDays(days);
        }
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
            int stage = ahead.in(days);
            if (mayOpen(stage, ahead.place()) && isOpen(stage, ahead.day(days), ahead.place())) {
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
        return mayOpen(stage, place)
                && opens(stage, day, place)
                && !rule.weather().closes(day, place, shelter);
    }

    /** Whether there may be days in that stage on which it is open. */
    private boolean mayOpen(int stage, PlaceYear place) {
        return free.get(stage) || faded.get(stage) || neverRests(stage, place);
    }

    private boolean opens(int stage, LocalDate day, PlaceYear place) {
        return faded.get(stage)
                || (!isClosed(stage, NOBODY_LOOKED) && openByLeaves(stage, day, place));
    }

    /** Whether the leaves and the weather alone would have it open on the day asked for. */
    boolean freeByLeaves(EvaluationContext moment) {
        var place = moment.subject.place();
        return !isClosed(moment.stage, NOBODY_LOOKED)
                && openByLeaves(moment.stage, moment.on, place)
                && !rule.weather().closes(moment.on, place, shelter);
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
