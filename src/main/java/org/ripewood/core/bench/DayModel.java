package org.ripewood.core.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What is left of a class day in places and open minutes, counted from the first one that can still
 * be planned.
 *
 * <p>Jobs stand in the order of their names, so that the order of the input means nothing; those
 * that cannot be done at all, or are done already, have no block.
 */
final class DayModel {

    final ClassDay day;
    final History history;
    final OpenTime open;
    final List<Job> jobs;
    final List<String> tools;
    final List<Block> blocks = new ArrayList<>();

    /** By block the places of the instructors who may stand by. */
    private final List<int[]> teachers = new ArrayList<>();

    /** By job the place of its first block, and one more for the end. */
    final int[] firstBlock;

    /** By job the student's place. */
    final int[] student;

    final int students;

    /** By job the first open minute at which it may go on. */
    final int[] ready;

    /** By student the open minute of arrival, from which time in class counts. */
    final int[] arrival;

    /** By student whether there is more than one job to be done. */
    final boolean[] several;

    /** By block whether it needs anything but its own student, so that its turn matters. */
    final boolean[] contended;

    /** By instructor the open minutes in which they may not be asked for. */
    final Minutes[] away;

    /** By its phases the starts at which a block may not begin. */
    private final Map<List<Piece>, Minutes> barred = new HashMap<>();

    /**
     * By block the other blocks of its student, of other jobs, that may come between it and what
     * was done of its own job before; none for the beginning of a job.
     */
    final int[][] rivals;

    /** By block whether its student has begun another tree since theirs. */
    final boolean[] leftBefore;

    /** What all times and lengths are multiples of; starts need be no finer. */
    final int step;

    /** By tool and open minute how many are free. */
    final int[][] free;

    final List<LeftOut> impossible = new ArrayList<>();

    DayModel(ClassDay day, Underway underway) {
        this.day = day;
        this.history = new History(day, underway);
        this.open = new OpenTime(history.now(), day.hours().toMinute(), day.closed());
        this.jobs =
                day.jobs().stream().sorted((one, other) -> one.id().compareTo(other.id())).toList();
        this.tools = List.copyOf(new TreeSet<>(day.tools().keySet()));
        this.free = freeTools();
        this.away = day.instructors().stream().map(this::awayOf).toArray(Minutes[]::new);
        var names = new TreeMap<String, Integer>();
        jobs.forEach(job -> names.putIfAbsent(job.student(), names.size()));
        this.students = names.size();
        this.student = jobs.stream().mapToInt(job -> place(names, job.student())).toArray();
        this.ready = jobs.stream().mapToInt(job -> open.at(history.readyMinute(job))).toArray();
        this.arrival = new int[students];
        jobs.forEach(
                job ->
                        arrival[place(names, job.student())] =
                                open.at(history.arrivalMinute(job.student())));
        this.firstBlock = new int[jobs.size() + 1];
        this.several = new boolean[students];
        layBlocks();
        this.contended = new boolean[blocks.size()];
        for (int b = 0; b < contended.length; b++) {
            var block = blocks.get(b);
            contended[b] =
                    block.taught() || !block.tools().isEmpty() || several[student[block.job()]];
        }
        for (int job : todo()) {
            contended[firstBlock[job]] |= !anyContended(job);
        }
        this.rivals = new int[blocks.size()][];
        Arrays.setAll(rivals, this::rivalsOf);
        this.leftBefore = new boolean[blocks.size()];
        for (int b = 0; b < leftBefore.length; b++) {
            var job = jobs.get(blocks.get(b).job());
            leftBefore[b] =
                    blocks.get(b).firstPhase() > 0
                            && !follows(b)
                            && !job.id().equals(history.lastBegun(job.student()));
        }
        this.step = commonStep();
    }

    private int[] rivalsOf(int b) {
        var block = blocks.get(b);
        return block.firstPhase() == 0
                ? new int[0]
                : IntStream.range(0, blocks.size())
                        .filter(other -> blocks.get(other).job() != block.job())
                        .filter(other -> student[blocks.get(other).job()] == student[block.job()])
                        .toArray();
    }

    /** Whether the block before one is of the same job. */
    boolean follows(int b) {
        return b > firstBlock[blocks.get(b).job()];
    }

    /**
     * Whether a student comes to a block of a tree begun before from another tree.
     *
     * @param start by block its open minute, -1 for none
     */
    boolean comesBack(int b, IntUnaryOperator start) {
        int at = start.applyAsInt(b);
        if (at < 0 || rivals[b].length == 0) {
            return at >= 0 && leftBefore[b];
        }
        int since = follows(b) ? start.applyAsInt(b - 1) : -1;
        for (int other : rivals[b]) {
            int between = start.applyAsInt(other);
            if (between > since && between < at) {
                return true;
            }
        }
        return leftBefore[b];
    }

    private int commonStep() {
        int common = open.length();
        for (int at = 1; at < open.length(); at++) {
            common = changesAt(at) ? gcd(common, at) : common;
        }
        for (int minute : ready) {
            common = gcd(common, Math.min(minute, open.length()));
        }
        for (var block : blocks) {
            for (var phase : block.phases()) {
                common = gcd(common, phase.minutes());
            }
        }
        return Math.max(1, common);
    }

    /** Whether a break was cut out, or an instructor or a tool comes or goes. */
    private boolean changesAt(int at) {
        return open.seam(at)
                || Arrays.stream(away).anyMatch(one -> one.holds(at) != one.holds(at - 1))
                || Arrays.stream(free).anyMatch(tool -> tool[at] != tool[at - 1]);
    }

    private static int gcd(int one, int other) {
        return other == 0 ? one : gcd(other, one % other);
    }

    private void layBlocks() {
        var todo = new int[students];
        for (int j = 0; j < jobs.size(); j++) {
            firstBlock[j] = blocks.size();
            var job = jobs.get(j);
            int first = history.firstOpenPhase(job);
            if (first == job.phases().size()) {
                continue;
            }
            var reason = impossible(job, first);
            if (reason == null) {
                blocksOf(j, first);
                reason = SerialScheduler.alone(this, j) ? null : dayTooShort(j, first);
            }
            if (reason != null) {
                impossible.add(new LeftOut(job.id(), reason));
                blocks.subList(firstBlock[j], blocks.size()).clear();
                teachers.subList(firstBlock[j], teachers.size()).clear();
            } else if (++todo[student[j]] > 1) {
                several[student[j]] = true;
            }
        }
        firstBlock[jobs.size()] = blocks.size();
    }

    private boolean anyContended(int job) {
        return IntStream.range(firstBlock[job], firstBlock[job + 1]).anyMatch(b -> contended[b]);
    }

    private static int place(Map<String, Integer> places, String name) {
        var place = places.get(name);
        if (place == null) {
            throw new IllegalArgumentException(name + " is not on the day");
        }
        return place;
    }

    /** The places of the instructors who may stand by a block; nobody for work alone. */
    int[] teachers(int b) {
        return teachers.get(b);
    }

    int length() {
        return open.length();
    }

    /** Minutes of work a job has left. */
    int minutes(int job) {
        int minutes = 0;
        for (int b = firstBlock[job]; b < firstBlock[job + 1]; b++) {
            minutes += blocks.get(b).minutes();
        }
        return minutes;
    }

    /** Jobs that have something left to be done and could be, were they the only ones. */
    int[] todo() {
        var todo = new int[jobs.size()];
        int count = 0;
        for (int j = 0; j < jobs.size(); j++) {
            if (firstBlock[j] < firstBlock[j + 1]) {
                todo[count++] = j;
            }
        }
        return Arrays.copyOf(todo, count);
    }

    private int[][] freeTools() {
        var counts = new int[tools.size()][open.length()];
        for (int i = 0; i < counts.length; i++) {
            var tool = tools.get(i);
            int there = day.tools().getOrDefault(tool, 0);
            for (int at = 0; at < open.length(); at++) {
                int minute = open.startMinute(at);
                counts[i][at] = Math.max(0, there - history.toolsHeld(tool, minute));
            }
        }
        return counts;
    }

    private Minutes awayOf(Instructor instructor) {
        var minutes = new Minutes(open.length());
        for (int at = 0; at < open.length(); at++) {
            int minute = open.startMinute(at);
            if (!instructor.teachesAt(minute) || history.teaches(instructor.id(), minute)) {
                minutes.add(at);
            }
        }
        return minutes;
    }

    private LeftOut.@Nullable Reason impossible(Job job, int first) {
        if (history.absent(job.student())) {
            return new LeftOut.Absent(job.student());
        }
        for (var phase : job.phases().subList(first, job.phases().size())) {
            for (var tool : new TreeSet<>(phase.tools())) {
                if (day.tools().getOrDefault(tool, 0) == 0) {
                    return new LeftOut.NoTool(tool);
                }
            }
            if (phase.kind().needsInstructor() && placesOf(phase.instructors()).length == 0) {
                return new LeftOut.NoInstructor(phase.instructors());
            }
        }
        return null;
    }

    private LeftOut.Reason dayTooShort(int j, int first) {
        var job = jobs.get(j);
        int minutes = job.phases().stream().skip(first).mapToInt(WorkPhase::minutes).sum();
        return new LeftOut.DayTooShort(minutes, history.readyMinute(job), day.hours().toMinute());
    }

    /** Places of those instructors of a set who teach at all in what is left of the day. */
    private int[] placesOf(Set<String> ids) {
        var places = new ArrayList<Integer>();
        for (int k = 0; k < away.length; k++) {
            var instructor = day.instructors().get(k);
            if ((ids.isEmpty() || ids.contains(instructor.id()))
                    && away[k].nextGap(0, 1) < open.length()) {
                places.add(k);
            }
        }
        return places.stream().mapToInt(Integer::intValue).toArray();
    }

    private void blocksOf(int j, int first) {
        var phases = jobs.get(j).phases();
        int from = first;
        while (from < phases.size()) {
            int to = from + 1;
            while (to < phases.size() && goesOn(phases.get(to))) {
                to++;
            }
            blocks.add(block(j, from, phases.subList(from, to)));
            from = to;
        }
    }

    /** Whether a phase is done in one go with the one before: a cut, or work alone. */
    private static boolean goesOn(WorkPhase phase) {
        return phase.cuts() || !phase.kind().needsInstructor();
    }

    private Block block(int j, int firstPhase, List<WorkPhase> phases) {
        int minutes = 0;
        int taught = 0;
        var ids = Set.<String>of();
        var holds = new ArrayList<Block.Hold>();
        for (var phase : phases) {
            for (var tool : new TreeSet<>(phase.tools())) {
                int place = tools.indexOf(tool);
                holds.add(new Block.Hold(place, minutes, minutes + phase.minutes()));
            }
            minutes += phase.minutes();
            if (phase.kind().needsInstructor()) {
                taught = minutes;
                ids = both(ids, phase.instructors());
            }
        }
        teachers.add(taught == 0 ? new int[0] : placesOf(ids));
        return new Block(
                j,
                firstPhase,
                List.copyOf(phases),
                minutes,
                taught,
                barred.computeIfAbsent(Piece.of(phases), this::barred),
                List.copyOf(holds),
                instructorBefore(jobs.get(j), firstPhase),
                startBefore(jobs.get(j), firstPhase));
    }

    private static Set<String> both(Set<String> one, Set<String> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.isEmpty() ? other : one;
        }
        var both = new TreeSet<>(one);
        both.retainAll(other);
        return both;
    }

    private int instructorBefore(Job job, int phase) {
        var slot = history.before(job.id(), phase);
        var id = slot == null ? null : slot.instructor();
        for (int k = 0; k < day.instructors().size(); k++) {
            if (day.instructors().get(k).id().equals(id)) {
                return k;
            }
        }
        return -1;
    }

    private int startBefore(Job job, int phase) {
        var slot = history.before(job.id(), phase);
        if (slot == null || slot.span().fromMinute() < history.now()) {
            return -1;
        }
        int minute = slot.span().fromMinute();
        int at = open.at(minute);
        return at < open.length() && open.startMinute(at) == minute ? at : -1;
    }

    /** Blocks by their start in the plan in force, those that have none after all others. */
    int[] inOrderBefore() {
        return IntStream.range(0, blocks.size())
                .boxed()
                .sorted(
                        Comparator.<Integer>comparingInt(
                                        b ->
                                                blocks.get(b).startBefore() < 0
                                                        ? Integer.MAX_VALUE
                                                        : blocks.get(b).startBefore())
                                .thenComparing(Comparator.naturalOrder()))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** What a break means to a phase. */
    private record Piece(int minutes, boolean taught, boolean cuts) {

        static List<Piece> of(List<WorkPhase> phases) {
            return phases.stream()
                    .map(
                            phase ->
                                    new Piece(
                                            phase.minutes(),
                                            phase.kind().needsInstructor(),
                                            phase.cuts()))
                    .toList();
        }

        /** Whether a break may come so many minutes after the phase begins. */
        boolean pausesAt(int offset) {
            return offset == 0
                    ? !cuts
                    : !taught
                            && offset >= Job.LEAST_MINUTES
                            && minutes - offset >= Job.LEAST_MINUTES;
        }
    }

    private Minutes barred(List<Piece> pieces) {
        var starts = new Minutes(open.length());
        for (int seam = 0; seam < open.length(); seam++) {
            if (open.seam(seam)) {
                bar(starts, pieces, seam);
            }
        }
        return starts;
    }

    private static void bar(Minutes starts, List<Piece> pieces, int seam) {
        int before = 0;
        for (var piece : pieces) {
            for (int offset = before == 0 ? 1 : 0; offset < piece.minutes(); offset++) {
                int start = seam - before - offset;
                if (start >= 0 && !piece.pausesAt(offset)) {
                    starts.add(start);
                }
            }
            before += piece.minutes();
        }
    }
}
