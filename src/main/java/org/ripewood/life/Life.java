package org.ripewood.life;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.routes.RouteView;

/**
 * What a tree went through in some years, and what is ahead of it.
 *
 * @param on the day it is told for
 * @param from the first year told; the one of the first entry, when nothing is on record before
 * @param until the last year told
 * @param earlierUntil {@code until} of the years before; null when nothing is on record there
 * @param laterUntil {@code until} of the years after; null when these are the latest
 * @param entries of these years, the latest first
 * @param left how many entries of the earliest year are left out, when it alone has too many
 * @param before what was so when these years began: the stage, the container, and each opening
 * @param ahead what the route says is still to come, the first first; none of a tree that left
 * @param goal the stage the route leads to, and when; null for a tree that left
 * @param gains what the tree gained in the year of {@code on}
 */
public record Life(
        long treeId,
        LocalDate on,
        int from,
        int until,
        @Nullable Integer earlierUntil,
        @Nullable Integer laterUntil,
        List<LifeEntry> entries,
        int left,
        List<LifeEntry> before,
        List<Ahead> ahead,
        @Nullable Ahead goal,
        Gains gains) {

    public Life {
        entries = List.copyOf(entries);
        before = List.copyOf(before);
        ahead = List.copyOf(ahead);
    }

    /**
     * Something still to come.
     *
     * @param technique code; null for the goal
     */
    public record Ahead(@Nullable String technique, String title, RouteView.When when) {}

    /**
     * What the record shows of a calendar year up to the day it is told for.
     *
     * @param measuredTwice whether anything was measured on two days of the year; without that
     *     growth cannot be told
     * @param sentences each with its days; none when nothing is on record
     */
    public record Gains(int year, boolean measuredTwice, List<String> sentences) {

        public Gains {
            sentences = List.copyOf(sentences);
        }
    }

    /** The entries by year, the latest year first. */
    public List<Year> years() {
        return entries.stream()
                .map(entry -> entry.on().getYear())
                .distinct()
                .map(this::year)
                .toList();
    }

    private Year year(int number) {
        return new Year(
                number, entries.stream().filter(entry -> entry.on().getYear() == number).toList());
    }

    /** A calendar year and what happened in it, the latest first. */
    public record Year(int number, List<LifeEntry> entries) {}
}
