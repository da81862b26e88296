package org.ripewood.core.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/** Class days as a school might have them, from a seed. */
final class RandomDays {

    private static final Span HOURS = new Span(9 * 60, 17 * 60);

    /** Minutes of the student and of the instructor, as the course's techniques have them. */
    private static final int[][] WORKS = {
        {15, 3}, {20, 5}, {20, 8}, {30, 5}, {30, 10}, {30, 15}, {40, 15}, {45, 5}, {45, 15},
        {60, 5}, {60, 10}, {60, 15}, {60, 20}, {60, 40}, {75, 20}, {75, 30}, {90, 10}, {90, 20},
        {90, 30}, {120, 15}, {120, 30}, {150, 10}, {150, 45}, {180, 30}
    };

    private static final String[] TOOLS = {"bending jack", "root saw", "turntable"};

    private final SplittableRandom dice;

    RandomDays(long seed) {
        dice = new SplittableRandom(seed);
    }

    /**
     * A day.
     *
     * @param load what is asked of the instructors, as a share of the time they have
     */
    ClassDay day(int trees, int instructors, double load) {
        var breaks = new ArrayList<Span>();
        int noon = 12 * 60 + 15 * dice.nextInt(5);
        breaks.add(new Span(noon, noon + 30 + 15 * dice.nextInt(3)));
        if (dice.nextInt(3) == 0) {
            breaks.add(new Span(15 * 60, 15 * 60 + 15));
        }
        var teachers = new ArrayList<Instructor>();
        for (int k = 0; k < instructors; k++) {
            teachers.add(instructor(k, instructors));
        }
        var tools = new HashMap<String, Integer>();
        for (var tool : TOOLS) {
            tools.put(tool, 1 + dice.nextInt(2));
        }
        return new ClassDay(
                HOURS, breaks, lesson(), teachers, tools, jobs(trees, teachers, breaks, load));
    }

    /** On every other day, first or late in the morning; the breaks are in the afternoon. */
    private List<Span> lesson() {
        if (dice.nextBoolean()) {
            return List.of();
        }
        int from = HOURS.fromMinute() + 15 * dice.nextInt(5);
        return List.of(new Span(from, from + 30 + 15 * dice.nextInt(5)));
    }

    private Instructor instructor(int k, int instructors) {
        int from = HOURS.fromMinute();
        int to = HOURS.toMinute();
        var own = List.<Span>of();
        if (instructors > 1 && k > 0 && dice.nextInt(3) == 0) {
            from += 30 * dice.nextInt(4);
            to -= 30 * dice.nextInt(4);
        }
        if (dice.nextInt(4) == 0) {
            int at = 10 * 60 + 15 * dice.nextInt(20);
            own = List.of(new Span(at, at + 15));
        }
        return new Instructor("teacher " + (char) ('A' + k), List.of(new Span(from, to)), own);
    }

    private List<Job> jobs(int trees, List<Instructor> teachers, List<Span> breaks, double load) {
        var works = new int[trees][];
        long asked = 0;
        for (int i = 0; i < trees; i++) {
            works[i] = WORKS[dice.nextInt(WORKS.length)].clone();
            asked += works[i][1];
        }
        long there = 0;
        for (var teacher : teachers) {
            for (int minute = HOURS.fromMinute(); minute < HOURS.toMinute(); minute++) {
                int at = minute;
                boolean pause = breaks.stream().anyMatch(span -> span.holds(at));
                there += teacher.teachesAt(minute) && !pause ? 1 : 0;
            }
        }
        double scale = Math.min(load * there / asked, load > 1 ? 8 : 2);
        var jobs = new ArrayList<Job>();
        for (int i = 0; i < trees; i++) {
            int taught = Math.max(1, (int) (works[i][1] * scale));
            int student = Math.max(works[i][0], taught);
            jobs.add(job(i, student, taught, teachers, jobs));
        }
        return jobs;
    }

    private Job job(int i, int student, int taught, List<Instructor> teachers, List<Job> before) {
        boolean second = i > 0 && dice.nextInt(6) == 0;
        var who = second ? before.get(dice.nextInt(i)).student() : "student %02d".formatted(i);
        int earliest = HOURS.fromMinute() + (dice.nextInt(8) == 0 ? 15 * dice.nextInt(9) : 0);
        var phases = new ArrayList<WorkPhase>();
        for (var phase : Job.usualPhases(student, taught, dice.nextInt(3) == 0)) {
            phases.addAll(split(phase));
        }
        phases.replaceAll(phase -> dressed(phase, teachers));
        return new Job("tree %02d".formatted(i), who, dice.nextInt(101), earliest, phases);
    }

    /** The instructor comes twice to some trees. */
    private List<WorkPhase> split(WorkPhase phase) {
        if (phase.kind() != WorkPhase.Kind.HANDS_ON || phase.cuts() || phase.minutes() < 20) {
            return List.of(phase);
        }
        if (dice.nextInt(2) == 0) {
            return List.of(phase);
        }
        int first = phase.minutes() / 10 * 5;
        return List.of(
                WorkPhase.handsOn(first),
                WorkPhase.alone(10 + 5 * dice.nextInt(3)),
                WorkPhase.handsOn(phase.minutes() - first));
    }

    private WorkPhase dressed(WorkPhase phase, List<Instructor> teachers) {
        var dressed = phase;
        if (dice.nextInt(8) == 0) {
            dressed = dressed.with(TOOLS[dice.nextInt(TOOLS.length)]);
        }
        if (phase.kind() == WorkPhase.Kind.HANDS_ON && !phase.cuts() && dice.nextInt(10) == 0) {
            dressed = dressed.by(teachers.get(dice.nextInt(teachers.size())).id());
        }
        return dressed;
    }

    static Map<String, Job> byId(ClassDay day) {
        var jobs = new HashMap<String, Job>();
        day.jobs().forEach(job -> jobs.put(job.id(), job));
        return jobs;
    }
}
