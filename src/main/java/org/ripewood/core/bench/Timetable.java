package org.ripewood.core.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A class day laid out.
 *
 * @param slots every phase that is done, by start, then job
 * @param leftOut jobs without a place, the least useful first
 * @param waitingMinutes by student: open minutes from arrival to the end of their last work in
 *     which nothing of theirs is done; students without a slot are not in it
 * @param finishMinute when the last phase ends; the day's start without a slot
 * @param worth how good it is and how good it could be
 */
public record Timetable(
        List<Slot> slots,
        List<LeftOut> leftOut,
        Map<String, Integer> waitingMinutes,
        int finishMinute,
        Worth worth) {

    /**
     * A phase in its place.
     *
     * @param phase its place in its job, 0 for the first
     * @param instructor who stands by; null for work alone
     * @param span from its start to its end, a break for all or the lesson in between included
     */
    public record Slot(String job, int phase, @Nullable String instructor, Span span) {}

    /** How a plan was found. */
    public enum Found {
        /** There is no better one. */
        PROVED,
        /** The search came to its limit. */
        SEARCHED,
        /** By rules of priority alone. */
        LISTED
    }

    /**
     * How good a plan is.
     *
     * <p>What counts, in this order: the number of jobs done; their usefulness; the cost, which is
     * {@value #WAITING} for each open minute between a student's arrival and the end of their last
     * work, {@value #FINISH} for each open minute of the day until all is done, {@value #CHANGE}
     * for each phase that has another instructor than in the plan before, and {@value #RETURN} for
     * each time a student comes back to a tree from another. Since work takes as long in every
     * plan, less of the first is less waiting.
     *
     * @param jobs that are done
     * @param mostJobs that any plan could do
     * @param cost of this plan
     * @param leastCost that any plan doing the same jobs has at least
     */
    public record Worth(int jobs, int mostJobs, long cost, long leastCost, Found found) {

        public static final int WAITING = 10;
        public static final int FINISH = 1;
        public static final int CHANGE = 50;
        public static final int RETURN = 100;

        public Worth {
            if (!(jobs >= 0 && jobs <= mostJobs)) {
                throw new IllegalArgumentException(
                        "%d jobs are more than %d".formatted(jobs, mostJobs));
            }
            if (!(leastCost >= 0 && leastCost <= cost)) {
                throw new IllegalArgumentException(
                        "a cost of %d lies below its bound %d".formatted(cost, leastCost));
            }
        }

        /** How far the cost may lie above the least one, as a share of that; 0 when proved. */
        public double gap() {
            return cost == leastCost ? 0 : (double) (cost - leastCost) / leastCost;
        }
    }

    public Timetable {
        slots = List.copyOf(slots);
        leftOut = List.copyOf(leftOut);
        waitingMinutes = Map.copyOf(waitingMinutes);
    }

    /** Where a phase stands; the last time, where an inspection was repeated. */
    public Optional<Slot> find(String job, int phase) {
        return slots.stream()
                .filter(slot -> slot.job().equals(job) && slot.phase() == phase)
                .reduce((first, second) -> second);
    }

    public int totalWaitingMinutes() {
        return waitingMinutes.values().stream().mapToInt(Integer::intValue).sum();
    }
}
