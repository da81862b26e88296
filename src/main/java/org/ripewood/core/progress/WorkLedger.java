package org.ripewood.core.progress;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ripewood.core.season.GrowingSeason;
import org.ripewood.core.season.GrowthDays;

/**
 * What a tree has gone through: the load still to be recovered from and the doses of the season.
 *
 * <p>Each work's load falls in a straight line of growth-time from its stress to nothing, as {@link
 * Recovery} tells; what is left adds up. Works after the day asked for are not counted. Common
 * practice, no source.
 *
 * @param works in any order
 * @param latitudeDegrees decides where the growing season begins
 * @param recovery how fast the tree recovers
 * @param renewing techniques after which all foliage is new growth
 */
public record WorkLedger(
        List<Work> works, double latitudeDegrees, Recovery recovery, Set<String> renewing) {

    /** Stands for "never": longer than any record. */
    public static final int NEVER_DAYS = 36_600;

    /** Quiet for so many days or more stands for a growing season (common practice, no source). */
    public static final int SEASON_QUIET_DAYS = 300;

    /**
     * The share of the growth of the days asked for after which a quiet season is over: that a year
     * lacks a fortnight of early spring means nothing (common practice, no source).
     */
    public static final double SEASON_SHARE = 0.95;

    /** Days of growth, as for recovery, after which a tree is in new leaf (common practice). */
    private static final int IN_NEW_LEAF_DAYS = 42;

    public WorkLedger {
        works = List.copyOf(works);
        renewing = Set.copyOf(renewing);
    }

    /** A ledger of works after none of which foliage is all new. */
    public WorkLedger(List<Work> works, double latitudeDegrees, Recovery recovery) {
        this(works, latitudeDegrees, recovery, Set.of());
    }

    /** A ledger that counts recovery in days of the calendar. */
    public WorkLedger(List<Work> works, double latitudeDegrees) {
        this(works, latitudeDegrees, Recovery.PLAIN);
    }

    /** The load left on a day; 0 for a tree at rest. Unit: stress, 0 to 10 for one work. */
    public double loadLeft(LocalDate on) {
        double left = 0;
        for (var work : works) {
            if (!work.doneOn().isAfter(on)) {
                left += work.stress() * recovery.shareLeft(work, on);
            }
        }
        return left;
    }

    /**
     * The first day, from a day on, on which no more than this load is left if nothing is done
     * meanwhile; works after {@code from} are left out.
     *
     * @param load in stress units
     * @return empty when the tree never recovers that far, or not within reach
     */
    public Optional<LocalDate> dayWithLoadAtMost(double load, LocalDate from) {
        var done = works.stream().filter(work -> !work.doneOn().isAfter(from)).toList();
        return new LoadDecline(new WorkLedger(done, latitudeDegrees, recovery, renewing), from)
                .dayAtMost(load);
    }

    /** Days since the last heavy work, or {@link #NEVER_DAYS}. */
    public int daysSinceHeavy(LocalDate on) {
        long least = NEVER_DAYS;
        for (var work : works) {
            var days = days(work, on);
            if (work.heavy() && days >= 0) {
                least = Math.min(least, days);
            }
        }
        return (int) least;
    }

    /** The day of the last heavy work up to a day. */
    public Optional<LocalDate> lastHeavy(LocalDate on) {
        return works.stream()
                .filter(work -> work.heavy() && !work.doneOn().isAfter(on))
                .map(Work::doneOn)
                .max(Comparator.naturalOrder());
    }

    /**
     * The first day on which the tree has been quiet for so long after the last heavy work up to a
     * day: when so many days of the calendar are over. Where {@link #SEASON_QUIET_DAYS} or more are
     * asked for, a growing season is meant, and it is also over when {@link #SEASON_SHARE} of the
     * growth of so many days of a mean year has gone by.
     *
     * @return {@code on} itself or an earlier day when it has been; {@code on} without heavy work
     */
    public LocalDate quietFrom(int days, LocalDate on) {
        var last = lastHeavy(on).orElse(null);
        if (last == null) {
            return on;
        }
        var byDays = last.plusDays(days);
        if (days < SEASON_QUIET_DAYS || !(recovery.time().meanPerYear() > 0)) {
            return byDays;
        }
        return recovery.time()
                .dayReaching(last, growthOf(SEASON_SHARE * days))
                .filter(day -> day.isBefore(byDays))
                .orElse(byDays);
    }

    private double growthOf(double days) {
        return days / GrowthDays.PLAIN_DAYS_PER_YEAR * recovery.time().meanPerYear();
    }

    /**
     * The day on which the tree comes into new leaf after the last work that renewed its foliage,
     * when that day is not before another; empty otherwise, and where nothing grows.
     */
    public Optional<LocalDate> inNewLeafOn(LocalDate on) {
        return works.stream()
                .filter(work -> renewing.contains(work.technique()))
                .map(Work::doneOn)
                .filter(day -> !day.isAfter(on))
                .max(Comparator.naturalOrder())
                .flatMap(this::inNewLeafAfter)
                .filter(day -> day.isAfter(on));
    }

    private Optional<LocalDate> inNewLeafAfter(LocalDate renewed) {
        return recovery.time().meanPerYear() > 0
                ? recovery.time().dayReaching(renewed, growthOf(IN_NEW_LEAF_DAYS))
                : Optional.empty();
    }

    /** The day of the last work after which the tree has since come into new leaf. */
    private Optional<LocalDate> lastRenewed(LocalDate on) {
        return works.stream()
                .filter(work -> renewing.contains(work.technique()))
                .map(Work::doneOn)
                .filter(day -> !day.isAfter(on))
                .filter(day -> inNewLeafAfter(day).filter(leaf -> !leaf.isAfter(on)).isPresent())
                .max(Comparator.naturalOrder());
    }

    /** Number of heavy works in the growing season that holds the day, up to it. */
    public int heavyThisSeason(LocalDate on) {
        var season = GrowingSeason.of(on, latitudeDegrees);
        int heavy = 0;
        for (var work : works) {
            if (work.heavy() && !work.doneOn().isAfter(on) && season.holds(work.doneOn())) {
                heavy++;
            }
        }
        return heavy;
    }

    /**
     * Share taken of foliage or roots in the growing season that holds the day, up to it. Foliage
     * taken before the tree came into new leaf, after a chop or a full defoliation, is not counted:
     * none of it was of what it bears now.
     */
    public double takenThisSeason(DoseRule.Kind kind, LocalDate on) {
        var season = GrowingSeason.of(on, latitudeDegrees);
        var renewed =
                kind == DoseRule.Kind.FOLIAGE
                        ? lastRenewed(on).orElse(LocalDate.MIN)
                        : LocalDate.MIN;
        double taken = 0;
        for (var work : works) {
            if (!work.doneOn().isAfter(on)
                    && work.doneOn().isAfter(renewed)
                    && season.holds(work.doneOn())) {
                taken +=
                        switch (kind) {
                            case FOLIAGE -> work.foliageShare();
                            case ROOT -> work.rootShare();
                        };
            }
        }
        return taken;
    }

    private static long days(Work work, LocalDate on) {
        return ChronoUnit.DAYS.between(work.doneOn(), on);
    }
}
