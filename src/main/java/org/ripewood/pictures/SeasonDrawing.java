package org.ripewood.pictures;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.ripewood.core.season.GrowingSeason;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.core.season.StageClock;

/**
 * A year's warmth and growth stages at a place, to be drawn.
 *
 * @param place what to call tree and place
 * @param firstDay day of the first sum
 * @param sums degree-days (°C·d) gone by at the end of each day, day after day; may be empty
 * @param usual the same in a usual year; empty when there is none to compare with
 * @param spans phases the tree goes through, one after the other
 * @param windows when something can be done
 * @param today the day that is marked
 */
public record SeasonDrawing(
        String place,
        LocalDate firstDay,
        List<Double> sums,
        List<Double> usual,
        List<Span> spans,
        List<Window> windows,
        LocalDate today) {

    private static final int MOST_DAYS = 732;

    /** A phase from its first to its last day. */
    public record Span(Phase phase, LocalDate from, LocalDate to) {
        public Span {
            inOrder(phase.words(), from, to);
        }
    }

    /** Days on which something can be done, first and last. */
    public record Window(String what, LocalDate from, LocalDate to) {
        public Window {
            inOrder(what, from, to);
        }
    }

    public SeasonDrawing {
        sums = sound(sums);
        usual = sound(usual);
        spans = List.copyOf(spans);
        windows = List.copyOf(windows);
    }

    private static void inOrder(String what, LocalDate from, LocalDate to) {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException(
                    "%s ends before it begins: %s to %s".formatted(what, from, to));
        }
    }

    private static List<Double> sound(List<Double> sums) {
        if (sums.size() > MOST_DAYS) {
            throw new IllegalArgumentException(
                    "at most %d days are drawn, found %d".formatted(MOST_DAYS, sums.size()));
        }
        for (double sum : sums) {
            if (!(sum >= 0 && sum < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("degree-days are 0 or more, found " + sum);
            }
        }
        return List.copyOf(sums);
    }

    /** The drawing of one growing season, from what core knows of it. */
    public static SeasonDrawing of(
            String place,
            GrowthDays growth,
            StageClock stages,
            GrowingSeason season,
            List<Window> windows,
            LocalDate today) {
        var first = season.firstDay();
        var last = first.plusYears(1).minusDays(1);
        var sums = new ArrayList<Double>();
        for (var day = first; !day.isAfter(last); day = day.plusDays(1)) {
            sums.add(Math.max(0, growth.between(first, day.plusDays(1))));
        }
        return new SeasonDrawing(
                place, first, sums, List.of(), spans(stages, first, last), windows, today);
    }

    /** The stages of one growing season where nothing is known of its warmth. */
    public static SeasonDrawing withoutWarmth(
            String place, StageClock stages, GrowingSeason season, LocalDate today) {
        var first = season.firstDay();
        var last = first.plusYears(1).minusDays(1);
        return new SeasonDrawing(
                place, first, List.of(), List.of(), spans(stages, first, last), List.of(), today);
    }

    private static List<Span> spans(StageClock stages, LocalDate first, LocalDate last) {
        var spans = new ArrayList<Span>();
        var from = first;
        for (var day = first; !day.isAfter(last); day = day.plusDays(1)) {
            var phase = Phase.of(stages.stageOn(day));
            if (day.equals(last) || Phase.of(stages.stageOn(day.plusDays(1))) != phase) {
                spans.add(new Span(phase, from, day));
                from = day.plusDays(1);
            }
        }
        return spans;
    }

    /** Degree-days gone by today; NaN when today lies outside. */
    double sumToday() {
        long index = today.toEpochDay() - firstDay.toEpochDay();
        return index >= 0 && index < sums.size() ? sums.get((int) index) : Double.NaN;
    }
}
