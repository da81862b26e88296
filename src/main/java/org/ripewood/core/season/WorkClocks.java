package org.ripewood.core.season;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * When in the year a species bears each kind of work.
 *
 * @param open by kind of work; a kind that is not there is never open
 * @param bleeding stages in which cuts bleed; empty when they do not
 * @param flowersFade stages of the leaves at which its flowers fade; empty when nobody has said,
 *     and then flowers may be looked for at any
 * @param shelterBelowCelsius usual nights from which on its roots in a container are sheltered;
 *     null when nobody has said
 */
public record WorkClocks(
        Map<WorkClock, List<Stages>> open,
        List<StageRange> bleeding,
        List<StageRange> flowersFade,
        @Nullable Double shelterBelowCelsius) {

    /** A species of which nothing is said. */
    public static final WorkClocks NONE = new WorkClocks(Map.of(), List.of(), List.of(), null);

    /**
     * Open stages.
     *
     * @param growingDaysLeft days of growth that must be left before frost; 0 for none
     * @param notAboveCelsius usual daily maximum above which it is too hot; infinite for none
     */
    public record Stages(List<StageRange> ranges, int growingDaysLeft, double notAboveCelsius) {
        public Stages {
            ranges = List.copyOf(ranges);
        }

        /** Stages that ask for nothing else. */
        public static Stages of(List<StageRange> ranges) {
            return new Stages(ranges, 0, Double.POSITIVE_INFINITY);
        }
    }

    public WorkClocks {
        open = Map.copyOf(open);
        bleeding = List.copyOf(bleeding);
        flowersFade = List.copyOf(flowersFade);
    }

    /** The open stages of a kind of work; none when it has no season. */
    public List<Stages> of(WorkClock clock) {
        return open.getOrDefault(clock, List.of());
    }
}
