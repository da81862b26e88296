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

    /** By unbroken minutes the starts after which a break for all comes too soon. */
    private final Map<Integer, Minutes> interrupted = new HashMap<>();

    /** By tool and open minute how many are free. */
    final int[][] free;

    final List<LeftOut> impossible = new ArrayList<>();

    DayModel(ClassDay day, Underway underway) {
        this.day = day;
        this.history = new History(day, underway);
        this.open = new OpenTime(history.now(), day.hours().toMinute(), day.breaks());
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
        for (int i = first; i < phases.size(); i++) {
            boolean pair = i + 1 < phases.size() && phases.get(i + 1).cuts();
            blocks.add(block(j, i, pair ? phases.subList(i, i + 2) : phases.subList(i, i + 1)));
            i += pair ? 1 : 0;
        }
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
        // A cut by the student alone begins in the minute its inspection ends, before any break.
        int unbroken = phases.size() == 2 && taught < minutes ? taught + 1 : taught;
        teachers.add(taught == 0 ? new int[0] : placesOf(ids));
        return new Block(
                j,
                firstPhase,
                List.copyOf(phases),
                minutes,
                taught,
                interrupted.computeIfAbsent(unbroken, this::interrupted),
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

    private Minutes interrupted(int unbroken) {
        var starts = new Minutes(open.length());
        for (int seam = 0; seam < open.length(); seam++) {
            if (open.seam(seam)) {
                starts.add(Math.max(0, seam - unbroken + 1), seam);
            }
        }
        return starts;
    }
}
