package org.ripewood.core.bench;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import com.google.ortools.util.Domain;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * The same question put to OR-Tools CP-SAT 9.15, stated without the timetable's own code.
 *
 * <p>One worker and a limit in the solver's deterministic time, so that the same day gets the same
 * answer on any machine.
 */
final class CpSat {

    /**
     * What it found.
     *
     * @param bound what no plan betters
     */
    record Answer(boolean feasible, boolean proved, long value, long bound) {}

    private final ClassDay day;
    private final int[] open;
    private final CpModel model = new CpModel();
    private final Map<String, BoolVar> done = new TreeMap<>();
    private final Map<String, IntVar> ends = new TreeMap<>();
    private final Map<String, List<IntervalVar>> taught = new TreeMap<>();
    private final Map<String, List<IntervalVar>> held = new TreeMap<>();
    private final Map<String, List<IntervalVar>> worked = new TreeMap<>();
    private final Map<String, IntVar> starts = new TreeMap<>();
    private final Map<String, Map<String, BoolVar>> standsBy = new TreeMap<>();
    private final Map<String, Integer> arrivals = new HashMap<>();
    private final Map<String, Integer> hinted = new HashMap<>();
    private final IntVar finish;

    CpSat(ClassDay day) {
        Loader.loadNativeLibraries();
        this.day = day;
        this.open =
                IntStream.range(day.hours().fromMinute(), day.hours().toMinute())
                        .filter(minute -> day.breaks().stream().noneMatch(b -> b.holds(minute)))
                        .filter(minute -> day.lesson().stream().noneMatch(b -> b.holds(minute)))
                        .toArray();
        this.finish = model.newIntVar(0, open.length, "finish");
        day.jobs().forEach(this::add);
        day.instructors().forEach(this::teachesOneTree);
        worked.values().forEach(model::addNoOverlap);
        held.forEach(this::isShared);
    }

    private void teachesOneTree(Instructor teacher) {
        var busy = taught.computeIfAbsent(teacher.id(), unseen -> new ArrayList<>());
        for (int at = 0; at < open.length; at++) {
            if (!teacher.teachesAt(open[at])) {
                busy.add(model.newFixedInterval(at, 1, "away"));
            }
        }
        model.addNoOverlap(busy);
    }

    private void isShared(String tool, List<IntervalVar> uses) {
        var cumulative = model.addCumulative(day.tools().getOrDefault(tool, 0));
        uses.forEach(use -> cumulative.addDemand(use, 1));
    }

    private int before(int minute) {
        return (int) IntStream.of(open).filter(other -> other < minute).count();
    }

    private boolean pauseBefore(int at) {
        return at > 0 && at < open.length && open[at] != open[at - 1] + 1;
    }

    private static String name(String job, int phase) {
        return job + "#" + phase;
    }

    private void add(Job job) {
        var present = model.newBoolVar(job.id());
        done.put(job.id(), present);
        int ready = before(job.earliestMinute());
        arrivals.merge(job.student(), ready, Math::min);
        for (int i = 0; i < job.phases().size(); i++) {
            add(job, i, ready, present);
        }
        int last = job.phases().size() - 1;
        var over =
                LinearExpr.affine(
                        starts.get(name(job.id(), last)), 1, job.phases().get(last).minutes());
        var end = ends.computeIfAbsent(job.student(), s -> model.newIntVar(0, open.length, s));
        model.addGreaterOrEqual(end, over).onlyEnforceIf(present);
        model.addGreaterOrEqual(finish, over).onlyEnforceIf(present);
    }

    private void add(Job job, int i, int ready, Literal present) {
        var phase = job.phases().get(i);
        var name = name(job.id(), i);
        var possible = startsOf(phase, ready);
        if (possible.isEmpty()) {
            model.addEquality(present, 0);
            possible = new Domain(0);
        }
        var start = model.newIntVarFromDomain(possible, name);
        starts.put(name, start);
        if (i > 0) {
            var before = starts.get(name(job.id(), i - 1));
            var over = LinearExpr.affine(before, 1, job.phases().get(i - 1).minutes());
            if (phase.cuts() || phase.kind() == WorkPhase.Kind.ALONE) {
                model.addEquality(start, over).onlyEnforceIf(present);
            } else {
                model.addGreaterOrEqual(start, over).onlyEnforceIf(present);
            }
        }
        var at = model.newOptionalFixedSizeIntervalVar(start, phase.minutes(), present, name);
        worked.computeIfAbsent(job.student(), unseen -> new ArrayList<>()).add(at);
        for (var tool : phase.tools()) {
            held.computeIfAbsent(tool, unseen -> new ArrayList<>()).add(at);
        }
        if (!phase.kind().needsInstructor()) {
            return;
        }
        var by = teachers(phase, start, present);
        standsBy.put(name, by);
        if (phase.cuts()) {
            var inspecting = standsBy.get(name(job.id(), i - 1));
            for (var teacher : day.instructors()) {
                model.addEquality(
                        orNobody(inspecting.get(teacher.id())), orNobody(by.get(teacher.id())));
            }
        }
    }

    private static LinearArgument orNobody(BoolVar teaches) {
        return teaches == null ? LinearExpr.constant(0) : teaches;
    }

    private Domain startsOf(WorkPhase phase, int ready) {
        return Domain.fromValues(
                IntStream.rangeClosed(ready, open.length - phase.minutes())
                        .filter(at -> mayStart(phase, at))
                        .mapToLong(at -> at)
                        .toArray());
    }

    private boolean mayStart(WorkPhase phase, int at) {
        boolean alone = phase.kind() == WorkPhase.Kind.ALONE;
        int end = at + phase.minutes();
        return IntStream.range(at + 1, end)
                        .filter(this::pauseBefore)
                        .allMatch(seam -> alone && seam - at >= 10 && end - seam >= 10)
                && !(phase.cuts() && pauseBefore(at));
    }

    private Map<String, BoolVar> teachers(WorkPhase phase, IntVar start, Literal present) {
        var by = new TreeMap<String, BoolVar>();
        for (var teacher : day.instructors()) {
            if (phase.instructors().isEmpty() || phase.instructors().contains(teacher.id())) {
                var here = model.newBoolVar(teacher.id());
                by.put(teacher.id(), here);
                taught.computeIfAbsent(teacher.id(), unseen -> new ArrayList<>())
                        .add(
                                model.newOptionalFixedSizeIntervalVar(
                                        start, phase.minutes(), here, "taught"));
            }
        }
        model.addEquality(
                LinearExpr.sum(by.values().toArray(new BoolVar[0])), LinearExpr.term(present, 1));
        return by;
    }

    /** Begins the search at a plan. */
    CpSat startingAt(Timetable plan) {
        var doing = Checker.done(day, plan);
        done.forEach((id, present) -> model.addHint(present, doing.contains(id)));
        for (var slot : plan.slots()) {
            var name = name(slot.job(), slot.phase());
            model.addHint(starts.get(name), before(slot.span().fromMinute()));
            hinted.put(name, before(slot.span().fromMinute()));
            standsBy.getOrDefault(name, Map.of())
                    .forEach((id, here) -> model.addHint(here, id.equals(slot.instructor())));
        }
        return this;
    }

    /** The most jobs a plan can do; the value is how many are left out. */
    Answer fewestLeftOut(double deterministicSeconds) {
        var out = LinearExpr.newBuilder().add(done.size());
        done.values().forEach(present -> out.addTerm(present, -1));
        model.minimize(out);
        return solve(deterministicSeconds);
    }

    /** The least cost of a plan that does just these jobs. */
    Answer leastCost(Collection<String> jobs, double deterministicSeconds) {
        done.forEach((id, present) -> model.addEquality(present, jobs.contains(id) ? 1 : 0));
        var cost = LinearExpr.newBuilder();
        for (var student : ends.entrySet()) {
            boolean comes =
                    day.jobs().stream()
                            .anyMatch(
                                    job ->
                                            job.student().equals(student.getKey())
                                                    && jobs.contains(job.id()));
            if (comes) {
                cost.addTerm(student.getValue(), 10);
                cost.add(-10L * arrivals.get(student.getKey()));
            }
        }
        for (var job : day.jobs()) {
            for (int i = 1; i < job.phases().size() && jobs.contains(job.id()); i++) {
                if (job.phases().get(i).kind().needsInstructor() && !job.phases().get(i).cuts()) {
                    cost.addTerm(comesBack(job, i, jobs), 100);
                }
            }
        }
        model.minimize(cost.addTerm(finish, 1));
        return solve(deterministicSeconds);
    }

    /** Whether anything of another tree of the student lies between a phase and the one before. */
    private BoolVar comesBack(Job job, int i, Collection<String> jobs) {
        var back = model.newBoolVar("back to " + name(job.id(), i));
        var since = starts.get(name(job.id(), i - 1));
        var at = starts.get(name(job.id(), i));
        boolean comes = false;
        for (var other : day.jobs()) {
            boolean rival = other.student().equals(job.student()) && jobs.contains(other.id());
            if (!rival || other.id().equals(job.id())) {
                continue;
            }
            for (int k = 0; k < other.phases().size(); k++) {
                var between = starts.get(name(other.id(), k));
                var before = model.newBoolVar("before");
                model.addLessThan(between, since).onlyEnforceIf(new Literal[] {before, back.not()});
                int then = hinted.getOrDefault(name(other.id(), k), 0);
                boolean early = then < hinted.getOrDefault(name(job.id(), i - 1), 0);
                comes |= !early && then < hinted.getOrDefault(name(job.id(), i), 0);
                model.addHint(before, early);
                model.addGreaterThan(between, at)
                        .onlyEnforceIf(new Literal[] {before.not(), back.not()});
            }
        }
        model.addHint(back, comes);
        return back;
    }

    private Answer solve(double deterministicSeconds) {
        var solver = new CpSolver();
        solver.getParameters()
                .setNumWorkers(1)
                .setRandomSeed(1)
                .setMaxDeterministicTime(deterministicSeconds);
        var status = solver.solve(model);
        boolean feasible = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        return new Answer(
                feasible,
                status == CpSolverStatus.OPTIMAL,
                feasible ? Math.round(solver.objectiveValue()) : -1,
                (long) Math.ceil(solver.bestObjectiveBound() - 1e-6));
    }
}
