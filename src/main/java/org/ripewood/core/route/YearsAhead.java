package org.ripewood.core.route;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ripewood.core.progress.Recovery;
import org.ripewood.core.season.GrowingSeason;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.core.season.Outlook;

/**
 * The years ahead as arrays by day, counted from the route's first day: growing season, growth-time
 * and, for each set of open stages, the next open day.
 */
final class YearsAhead {

    /** A day that does not come within reach. */
    static final int NEVER = Integer.MAX_VALUE;

    final LocalDate first;

    /** Number of days within reach. */
    final int days;

    private final int[] seasonOf;
    private final int[] seasonFirst;
    private final double[] growth;
    private final Recovery recovery;
    private final int[] stages;
    private final Map<Set<Integer>, int[]> nextOpen = new HashMap<>();

    YearsAhead(RouteStart start) {
        first = start.on();
        days = (int) ChronoUnit.DAYS.between(first, first.plusYears(Outlook.REACH_YEARS));
        recovery = start.ledger().recovery();
        seasonFirst = seasonFirst(start);
        seasonOf = new int[days];
        growth = new double[days];
        stages = new int[days];
        var day = first;
        int season = 0;
        for (int d = 0; d < days; d++, day = day.plusDays(1)) {
            season += d == seasonFirst[season + 1] ? 1 : 0;
            seasonOf[d] = season;
            growth[d] = plainDays(first, day);
            stages[d] = start.stages().stageOn(day);
        }
    }

    private int[] seasonFirst(RouteStart start) {
        var opening = GrowingSeason.of(first, start.ledger().latitudeDegrees()).firstDay();
        List<Integer> firsts = new ArrayList<>();
        for (int year = 0; firsts.isEmpty() || firsts.get(firsts.size() - 1) < days; year++) {
            firsts.add((int) ChronoUnit.DAYS.between(first, opening.plusYears(year)));
        }
        return firsts.stream().mapToInt(Integer::intValue).toArray();
    }

    /**
     * Growth-time between two days, scaled so that a work's recovery days are over when as many of
     * it have gone by.
     */
    double plainDays(LocalDate from, LocalDate to) {
        double year = recovery.time().meanPerYear();
        return year > 0
                ? recovery.pace()
                        * recovery.time().between(from, to)
                        / year
                        * GrowthDays.PLAIN_DAYS_PER_YEAR
                : 0;
    }

    int seasons() {
        return seasonFirst.length;
    }

    int seasonOf(int day) {
        return seasonOf[day];
    }

    /** First day of a season; the first one began on or before the route. */
    int seasonFirst(int season) {
        return seasonFirst[season];
    }

    /** First day of the season after this one, which may lie beyond reach. */
    int seasonAfter(int season) {
        return seasonFirst[season + 1];
    }

    /** Growth-time from the first day to this one. */
    double growth(int day) {
        return growth[day];
    }

    /** First day by which this much growth-time has gone by since the first day. */
    int dayOfGrowth(double amount) {
        if (!(growth[days - 1] >= amount)) {
            return NEVER;
        }
        int at = Arrays.binarySearch(growth, amount);
        int found = at >= 0 ? at : -at - 1;
        while (found > 0 && growth[found - 1] >= amount) {
            found--;
        }
        return found;
    }

    /** For each day the next one, itself included, in these stages. Shared: not to be changed. */
    int[] nextOpen(Set<Integer> open) {
        return nextOpen.computeIfAbsent(open, this::walkBack);
    }

    private int[] walkBack(Set<Integer> open) {
        var isOpen = new boolean[100];
        open.forEach(stage -> isOpen[stage] = true);
        var next = new int[days];
        int nearest = NEVER;
        for (int d = days - 1; d >= 0; d--) {
            nearest = isOpen[stages[d]] ? d : nearest;
            next[d] = nearest;
        }
        return next;
    }

    LocalDate dateOf(int day) {
        return first.plusDays(day);
    }
}
