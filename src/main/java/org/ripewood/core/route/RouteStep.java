package org.ripewood.core.route;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.DoseRule;
import org.ripewood.core.progress.TechniqueRule;

/**
 * One technique on the way, as it stands for one tree on the route's first day.
 *
 * @param code names it; unique on a route
 * @param stageOrder the stage it belongs to, 1 for the first
 * @param after codes of steps that come first; codes that are not on the route count as done
 * @param openStages growth stages, 0 to 99, in which it may be done
 * @param stress the load it puts on the tree, 0 to 10; from 6 it is heavy
 * @param recoveryDays days of growth-time over which that load falls to nothing
 * @param quietDaysBefore days without heavy work it asks for beforehand
 * @param dose what it takes of foliage or roots; null for nothing
 * @param waits what else it waits for the first time
 * @param lags what it waits for the first time after other steps
 * @param doneOn the day it was last signed off; null when it never was
 * @param turns how often it has yet to be done; 0 when it is done or not needed
 * @param repeatAfterDays days between its turns
 * @param turn how it stands in the order of the stages
 */
public record RouteStep(
        String code,
        int stageOrder,
        List<String> after,
        Set<Integer> openStages,
        double stress,
        int recoveryDays,
        int quietDaysBefore,
        @Nullable DoseRule dose,
        List<Wait> waits,
        List<Lag> lags,
        @Nullable LocalDate doneOn,
        int turns,
        int repeatAfterDays,
        Turn turn) {

    /** How a step stands in the order of the stages. */
    public enum Turn {
        /** Outside of it. */
        NONE,
        /** Those of later stages wait for it; itself it waits for none, since it may begin now. */
        LEADS,
        /** It waits for those of earlier stages, and those of later stages wait for it. */
        WAITS
    }

    /** All growth stages: no season is better than another. */
    public static final Set<Integer> ANY_TIME =
            IntStream.rangeClosed(0, 99).boxed().collect(Collectors.toUnmodifiableSet());

    /** More turns than this of one technique are a mistake. */
    public static final int MOST_TURNS = 60;

    public RouteStep {
        requireName("code", code);
        after = List.copyOf(after);
        openStages = Set.copyOf(openStages);
        waits = List.copyOf(waits);
        lags = List.copyOf(lags);
        if (!(stress >= 0 && stress <= 10)) {
            throw new IllegalArgumentException(
                    "stress runs from 0 to 10, found %s in %s".formatted(stress, code));
        }
        requireDays("recoveryDays", recoveryDays, code);
        requireDays("quietDaysBefore", quietDaysBefore, code);
        requireDays("repeatAfterDays", repeatAfterDays, code);
        if (!(turns >= 0 && turns <= MOST_TURNS)) {
            throw new IllegalArgumentException(
                    "turns run from 0 to %d, found %d in %s".formatted(MOST_TURNS, turns, code));
        }
        for (int stage : openStages) {
            if (stage < 0 || stage > 99) {
                throw new IllegalArgumentException(
                        "stages run from 0 to 99, found %d in %s".formatted(stage, code));
            }
        }
    }

    /** A light step at any time of the year, to be done once, that waits for nothing. */
    public static RouteStep plain(String code, int stageOrder) {
        return new RouteStep(
                code,
                stageOrder,
                List.of(),
                ANY_TIME,
                0,
                0,
                0,
                null,
                List.of(),
                List.of(),
                null,
                1,
                0,
                Turn.NONE);
    }

    boolean heavy() {
        return stress >= TechniqueRule.HEAVY_STRESS;
    }

    /** Whether steps after it need not wait for it. */
    boolean behind() {
        return doneOn != null || turns == 0;
    }

    static void requireName(String what, String name) {
        if (name.isBlank()) {
            throw new IllegalArgumentException(what + " must not be blank");
        }
    }

    private static void requireDays(String what, int days, String code) {
        if (!(days >= 0 && days <= Lag.LONGEST_DAYS)) {
            throw new IllegalArgumentException(
                    "%s runs from 0 to %d, found %d in %s"
                            .formatted(what, Lag.LONGEST_DAYS, days, code));
        }
    }
}
