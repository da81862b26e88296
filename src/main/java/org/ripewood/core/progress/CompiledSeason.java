package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.StageRange;

/** A season rule for one species, as maps from stage to open. */
final class CompiledSeason {

    /** Days a look at the flowers stays good (common practice, no source). */
    private static final int FLOWERS_FRESH_DAYS = 21;

    /** In days to come: not within reach. */
    static final int NEVER = -1;

    private record Closed(BitSet stages, String why, boolean ofFlowers) {}

    private final SeasonRule rule;
    private final BitSet open;
    private final BitSet openFlowers;
    private final List<Closed> closed;
    private final BitSet free;
    private final boolean anyTime;
    private final boolean opensByFlowers;
    private final boolean closesByFlowers;

    private CompiledSeason(
            SeasonRule rule,
            BitSet open,
            BitSet openFlowers,
            List<Closed> closed,
            boolean anyTime,
            boolean opensByFlowers) {
        this.rule = rule;
        this.open = open;
        this.openFlowers = openFlowers;
        this.closed = closed;
        this.anyTime = anyTime;
        this.opensByFlowers = opensByFlowers;
        this.closesByFlowers = closed.stream().anyMatch(Closed::ofFlowers);
        this.free = free();
    }

    /** The stages in which it is open, flowers left out of account. */
    private BitSet free() {
        var free = new BitSet(100);
        for (int stage = 0; stage < 100; stage++) {
            free.set(stage, (anyTime || open.get(stage)) && closedBecause(stage, -1) == null);
        }
        return free;
    }

    static CompiledSeason compile(SeasonRule rule, Traits traits) {
        var window =
                rule.windows().stream().filter(candidate -> candidate.speaksOf(traits)).findFirst();
        var stages = window.map(SeasonRule.Window::stages).orElse(List.of());
        var leaves = stages.stream().filter(range -> !range.onFlowerTrack()).toList();
        var flowers = stages.stream().filter(StageRange::onFlowerTrack).toList();
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
                Rulebook.stagesOf(leaves),
                Rulebook.stagesOf(flowers),
                List.copyOf(closed),
                rule.windows().isEmpty(),
                !flowers.isEmpty());
    }

    /**
     * Whether the season is open.
     *
     * @param tellWhen whether to look for the day it opens, which takes a walk through the year
     */
    Reason.OfSeason judge(EvaluationContext moment, boolean tellWhen) {
        var flowerStage = opensByFlowers || closesByFlowers ? flowerStage(moment) : 0;
        var because = closedBecause(moment.stage, flowerStage);
        var truth = truth(moment.stage, flowerStage, because);
        LocalDate opensOn = null;
        if (truth == Truth.NO && tellWhen) {
            opensOn = opensOn(moment);
        }
        return new Reason.OfSeason(moment.stage, rule, because, opensOn, truth);
    }

    private Truth truth(int stage, int flowerStage, @Nullable String because) {
        if (because != null) {
            return Truth.NO;
        }
        var inWindow = anyTime || open.get(stage);
        if (flowerStage >= 0) {
            return Truth.of(inWindow || openFlowers.get(flowerStage));
        }
        // Nobody has looked at the flowers: they could open the window or close it.
        if (!inWindow && !opensByFlowers) {
            return Truth.NO;
        }
        return inWindow && !closesByFlowers ? Truth.YES : Truth.UNKNOWN;
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
            return -1;
        }
        var age = moment.ageDays(seen);
        return age >= 0 && age <= FLOWERS_FRESH_DAYS ? (int) number.amount() : -1;
    }

    private @Nullable LocalDate opensOn(EvaluationContext moment) {
        int days = daysToOpen(moment.stagesAhead, 1);
        return days == NEVER ? null : moment.on.plusDays(days);
    }

    /**
     * Days until the season is open by the leaves, flowers left out of account; {@link #NEVER} when
     * it does not open within thirteen months of {@code from}.
     *
     * @param from first day that counts, in days to come
     */
    int daysToOpen(StagesAhead stages, int from) {
        int last = Math.min(from + StagesAhead.LOOK_AHEAD_DAYS - 1, StagesAhead.REACH_DAYS);
        for (int days = from; days <= last; days++) {
            if (free.get(stages.in(days))) {
                return days;
            }
        }
        return NEVER;
    }

    /** The days from one on, counted from it, on which the leaves have the season open. */
    BitSet openDays(StagesAhead stages, int from, int days) {
        var openDays = new BitSet(days);
        for (int day = 0; day < days; day++) {
            openDays.set(day, free.get(stages.in(from + day)));
        }
        return openDays;
    }

    /** Whether the leaves alone would have it open in a stage. */
    boolean freeByLeaves(int stage) {
        return free.get(stage);
    }

    /** Whether it opens by the flowers alone, which nobody can tell beforehand. */
    boolean opensByFlowersAlone() {
        return opensByFlowers && free.isEmpty();
    }

    Set<Integer> freeStages() {
        return free.stream().boxed().collect(Collectors.toUnmodifiableSet());
    }
}
