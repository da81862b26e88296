package org.ripewood.print;

import java.net.URI;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.classday.SessionPlan;
import org.ripewood.classday.TimetableShown;
import org.ripewood.core.bench.Span;
import org.ripewood.course.Technique;
import org.ripewood.pictures.Picture;
import org.ripewood.pictures.QrCode;
import org.ripewood.pictures.Sheet;
import org.ripewood.pictures.TimetablePicture;
import org.ripewood.pictures.Units;
import org.ripewood.steps.Wording;

/**
 * The papers of a class day: the day as a picture, what the instructor needs beside it, a slip for
 * each student, a card for each bench.
 *
 * @param days the timetable, one picture a sheet; none before it is laid out
 * @param dangers the gravest, in one line; empty when there are none
 * @param otherCautions how many more cautions stand on the cards
 */
record PlanSheets(
        SessionPlan plan,
        List<Picture> days,
        String dangers,
        int otherCautions,
        List<Slip> slips,
        List<Card> cards) {

    /** A sheet on its side is drawn so wide; letters on it are read at arm's length. */
    private static final Sheet ON_ITS_SIDE = new Sheet(980, true, Units.METRIC);

    /**
     * Rows of benches and instructors that an A4 sheet on its side has room for beside its head.
     */
    private static final int MOST_ROWS = 12;

    private static final int HOUR = 60;

    /**
     * A student's day.
     *
     * @param lines by time, the lesson and breaks among them
     */
    record Slip(String student, List<SlipLine> lines, List<SessionPlan.InBetween> inBetween) {}

    /**
     * A line of a slip: work on one tree without a gap, or what is for all.
     *
     * @param where bench and tree; empty for what is for all
     * @param visits when an instructor comes, and what for
     */
    record SlipLine(
            LocalTime from, LocalTime until, String where, String what, List<String> visits) {

        private boolean goesOn(SlipLine next) {
            return until.equals(next.from) && where.equals(next.where) && what.equals(next.what);
        }

        private SlipLine with(SlipLine next) {
            var all = new ArrayList<>(visits);
            all.addAll(next.visits);
            return new SlipLine(from, next.until, where, what, all);
        }
    }

    /**
     * A tree's card at its bench.
     *
     * @param cautions of its work and species
     */
    record Card(
            SessionPlan.BenchDay bench,
            QrCode code,
            String address,
            List<SessionPlan.Caution> cautions,
            List<String> aftercare) {

        /** Whether something is cut that does not grow back. */
        public boolean inspected() {
            return bench.rows().stream()
                    .map(SessionPlan.Row::technique)
                    .anyMatch(technique -> technique != null && technique.irreversible());
        }
    }

    /**
     * The papers of a plan.
     *
     * @param base of all addresses, ending in a slash
     */
    static PlanSheets of(SessionPlan plan, URI base) {
        var drawing = PlanDrawing.of(plan);
        int benches = Math.max(3, MOST_ROWS - plan.instructors().size());
        var dangers = dangers(plan);
        return new PlanSheets(
                plan,
                plan.timetable() == null || drawing.benches().isEmpty()
                        ? List.of()
                        : TimetablePicture.sheets(drawing, ON_ITS_SIDE, benches),
                String.join(" ", dangers),
                plan.cautions().size() - dangers.size(),
                plan.students().stream().map(student -> slip(plan, student)).toList(),
                plan.benches().stream().map(bench -> card(plan, bench, base)).toList());
    }

    private static List<String> dangers(SessionPlan plan) {
        return plan.cautions().stream()
                .filter(caution -> caution.signal().equals("DANGER"))
                .map(caution -> "%s (bench %s)".formatted(caution.hazard(), benches(plan, caution)))
                .toList();
    }

    private static String benches(SessionPlan plan, SessionPlan.Caution caution) {
        return plan.rows().stream()
                .filter(row -> caution.trees().contains(row.tree()))
                .map(SessionPlan.Row::bench)
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private static Slip slip(SessionPlan plan, String student) {
        var lines = new ArrayList<SlipLine>();
        var lesson = plan.lesson();
        if (lesson != null) {
            plan.lessonAt().forEach(at -> lines.add(forAll(at, "Lesson: " + lesson.title())));
        }
        plan.breaks().forEach(at -> lines.add(forAll(at, "Break")));
        var table = plan.timetable();
        if (table != null) {
            table.lines().stream()
                    .filter(line -> line.student().equals(student))
                    .forEach(line -> lines.add(line(line)));
            table.waits().stream()
                    .filter(wait -> wait.student().equals(student))
                    .forEach(
                            wait ->
                                    lines.add(
                                            new SlipLine(
                                                    wait.from(),
                                                    wait.until(),
                                                    "",
                                                    "Wait",
                                                    List.of())));
        }
        lines.sort(Comparator.comparing(SlipLine::from).thenComparing(SlipLine::until));
        return new Slip(
                student,
                joined(lines),
                plan.inBetween().stream().filter(one -> one.student().equals(student)).toList());
    }

    private static List<SlipLine> joined(List<SlipLine> lines) {
        var joined = new ArrayList<SlipLine>();
        for (var line : lines) {
            int last = joined.size() - 1;
            if (last >= 0 && joined.get(last).goesOn(line)) {
                joined.set(last, joined.get(last).with(line));
            } else {
                joined.add(line);
            }
        }
        return joined;
    }

    private static SlipLine forAll(Span at, String what) {
        return new SlipLine(clock(at.fromMinute()), clock(at.toMinute()), "", what, List.of());
    }

    private static SlipLine line(TimetableShown.Line line) {
        return new SlipLine(
                line.from(),
                line.until(),
                "%s, %s".formatted(line.bench(), line.tree()),
                line.technique(),
                line.instructor() == null
                        ? List.of()
                        : List.of(
                                "%s to %s with %s%s"
                                        .formatted(
                                                line.from(),
                                                line.until(),
                                                line.instructor(),
                                                line.inspects() ? ": " + line.what() : "")));
    }

    private static LocalTime clock(int minute) {
        return LocalTime.of(minute / HOUR % 24, minute % HOUR);
    }

    private static Card card(SessionPlan plan, SessionPlan.BenchDay bench, URI base) {
        var first = bench.first();
        var address = base.resolve("trees/" + first.treeId()).toString();
        Set<String> care = new LinkedHashSet<>();
        for (var row : bench.rows()) {
            var technique = row.technique();
            if (technique != null) {
                technique.aftercare().forEach(one -> care.add(told(one, plan.session().heldOn())));
            }
        }
        return new Card(
                bench,
                QrCode.of(address),
                address,
                plan.cautions().stream()
                        .filter(caution -> caution.trees().contains(first.tree()))
                        .toList(),
                List.copyOf(care));
    }

    /** Care after the work with its days, if the work is done on the day of the class. */
    static String told(Technique.Aftercare care, LocalDate day) {
        var from = day.plusDays(care.fromDay());
        var until = from.plusDays(care.days());
        if (care.days() == 0) {
            return "%s: %s".formatted(Wording.day(from), care.task());
        }
        return care.fromDay() == 0
                ? "Until %s: %s".formatted(Wording.day(until), care.task())
                : "%s to %s: %s".formatted(Wording.day(from), Wording.day(until), care.task());
    }

    /** What has to be bought. */
    public List<SessionPlan.Want> toBuy() {
        return plan.wants().stream().filter(want -> want.missing().signum() > 0).toList();
    }

    /** Trees without work that day, and why. */
    public List<SessionPlan.Row> idle() {
        return plan.rows().stream().filter(row -> row.technique() == null).toList();
    }

    /** Breaks in words. */
    public List<String> breaks() {
        return plan.breaks().stream().map(PlanSheets::told).toList();
    }

    /** When the lesson is held, in words. */
    public List<String> lessonAt() {
        return plan.lessonAt().stream().map(PlanSheets::told).toList();
    }

    private static String told(Span at) {
        return "%s to %s".formatted(clock(at.fromMinute()), clock(at.toMinute()));
    }
}
