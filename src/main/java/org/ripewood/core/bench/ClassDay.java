package org.ripewood.core.bench;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A class day to be laid out.
 *
 * @param hours when the day begins and ends
 * @param breaks for all, lunch for one; overlapping ones count once
 * @param lesson when all are taught together: nobody works at a bench, no instructor stands by one;
 *     several spans where a break falls into it, none on a day without
 * @param instructors each named once
 * @param tools how many there are of each; one that is not named is not there
 * @param jobs each named once
 */
public record ClassDay(
        Span hours,
        List<Span> breaks,
        List<Span> lesson,
        List<Instructor> instructors,
        Map<String, Integer> tools,
        List<Job> jobs) {

    /** More than this on one day is a mistake. */
    public static final int MOST_JOBS = 200;

    public static final int MOST_INSTRUCTORS = 20;

    public ClassDay {
        breaks = List.copyOf(breaks);
        lesson = List.copyOf(lesson);
        instructors = List.copyOf(instructors);
        tools = Map.copyOf(tools);
        jobs = List.copyOf(jobs);
        JobIds.requireDifferent("instructors", instructors, Instructor::id);
        JobIds.requireDifferent("jobs", jobs, Job::id);
        requireAtMost("jobs", MOST_JOBS, jobs.size());
        requireAtMost("instructors", MOST_INSTRUCTORS, instructors.size());
        new TreeMap<>(tools).forEach(ClassDay::requireCount);
    }

    /** A day without a lesson for all. */
    public ClassDay(
            Span hours,
            List<Span> breaks,
            List<Instructor> instructors,
            Map<String, Integer> tools,
            List<Job> jobs) {
        this(hours, breaks, List.of(), instructors, tools, jobs);
    }

    /** Breaks and lesson: when nobody works at a bench. */
    List<Span> closed() {
        return Stream.concat(breaks.stream(), lesson.stream()).toList();
    }

    private static void requireAtMost(String what, int most, int found) {
        if (found > most) {
            throw new IllegalArgumentException(
                    "a day has at most %d %s, found %d".formatted(most, what, found));
        }
    }

    private static void requireCount(String tool, int count) {
        if (!(count >= 0)) {
            throw new IllegalArgumentException(
                    "there are 0 or more of a tool, found %d of %s".formatted(count, tool));
        }
    }
}
