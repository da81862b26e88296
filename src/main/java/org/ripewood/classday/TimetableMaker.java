package org.ripewood.classday;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import org.hibernate.exception.ConstraintViolationException;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.bench.ChocoTimetabler;
import org.ripewood.core.bench.ClassDay;
import org.ripewood.core.bench.Instructor;
import org.ripewood.core.bench.Span;
import org.ripewood.core.bench.Timetable;
import org.ripewood.core.bench.Underway;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;
import org.ripewood.sessions.Session;

/**
 * Lays out the timetable of a class day, before it begins and while it goes on.
 *
 * <p>What is needed is read in one transaction and the answer kept in another: none is held while
 * the plan is looked for.
 */
@ApplicationScoped
class TimetableMaker {

    /** Any number does; the same one gives the same plan for the same day. */
    private static final long SEED = 20_261_125;

    /** The search ends by itself in about two seconds; this is for a machine under load. */
    private static final Duration MOST_TIME = Duration.ofSeconds(6);

    private final DayReader reader;
    private final TimetableBook timetables;
    private final BreakBook breaks;
    private final LessonBook lessons;
    private final Today today;

    TimetableMaker(
            DayReader reader,
            TimetableBook timetables,
            BreakBook breaks,
            LessonBook lessons,
            Today today) {
        this.reader = reader;
        this.timetables = timetables;
        this.breaks = breaks;
        this.lessons = lessons;
        this.today = today;
    }

    /** All that a plan is made of. */
    private record Task(
            DayRead read,
            ClassDay day,
            Underway underway,
            DayJobs jobs,
            Map<Long, @Nullable Integer> arrivals,
            @Nullable List<Span> newBreaks,
            NewTimetable.@Nullable Lesson newLesson,
            int revision) {}

    DayTimetable layOut(Actor actor, long sessionId, NewTimetable asked) {
        var task = QuarkusTransaction.requiringNew().call(() -> read(actor, sessionId, asked));
        var found = new ChocoTimetabler(SEED).plan(task.day(), task.underway(), guard());
        try {
            return QuarkusTransaction.requiringNew().call(() -> keep(actor, task, found));
        } catch (ConstraintViolationException quicker) {
            throw Refused.conflict(
                    "Somebody else laid this day out at the same moment.",
                    "Maybe look at that plan first.");
        }
    }

    private static BooleanSupplier guard() {
        long end = System.nanoTime() + MOST_TIME.toNanos();
        return () -> System.nanoTime() > end;
    }

    Optional<DayTimetable> inForce(long sessionId) {
        return timetables.inForce(sessionId).map(TimetableEntity::told);
    }

    private Task read(Actor actor, long sessionId, NewTimetable asked) {
        var read = reader.read(actor, sessionId);
        var session = read.session();
        if (!session.held()) {
            throw Refused.conflict("This session is cancelled.", null);
        }
        var before = inForce(sessionId);
        var faults = new ArrayList<Fault>();
        var check = new NewTimetableCheck(session, asked, before.orElse(null));
        check.into(faults);
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults);
        }
        var now = asked.now();
        var newBreaks = check.breaks();
        if (newBreaks != null || asked.lesson() != null) {
            read = reader.read(actor, sessionId, newBreaks, asked.lesson());
        }
        var jobs =
                new DayJobs(
                        now == null ? read.chosen() : read.chosenIn(before.orElseThrow()),
                        read.toolCounts().keySet());
        if (jobs.jobs().isEmpty()) {
            throw Refused.conflict(
                    session.enrolments().isEmpty()
                            ? "Nobody is enrolled, so there is nothing to lay out."
                            : "None of the trees has work for this day.",
                    read.lessonAt().isEmpty()
                            ? "Maybe add trees to the session, or choose some work."
                            : "Maybe add trees to the session, choose some work, or leave more time beside the lesson.");
        }
        if (jobs.jobs().size() > ClassDay.MOST_JOBS) {
            throw Refused.conflict(
                    "A day has room for %d pieces of work, this one has %d."
                            .formatted(ClassDay.MOST_JOBS, jobs.jobs().size()),
                    "Maybe hold two sessions.");
        }
        var pauses = Minutes.around(newBreaks == null ? read.breaks() : newBreaks);
        var newLesson = asked.lesson();
        var lesson = lessonAt(read, pauses, newBreaks != null, newLesson);
        var day =
                new ClassDay(
                        Minutes.steps(Minutes.hours(session)),
                        pauses,
                        lesson,
                        instructors(session),
                        read.toolCounts(),
                        jobs.jobs());
        var arrivals = arrivals(now == null ? null : before.orElseThrow(), asked);
        return new Task(
                read,
                day,
                underway(now, before.orElse(null), asked, arrivals, jobs),
                jobs,
                arrivals,
                newBreaks,
                newLesson,
                before.map(DayTimetable::revision).orElse(0) + 1);
    }

    private List<Span> lessonAt(
            DayRead read,
            List<Span> pauses,
            boolean otherBreaks,
            NewTimetable.@Nullable Lesson asked) {
        if (asked != null) {
            return LessonBook.asked(read.session(), read.lesson(), asked, pauses);
        }
        return otherBreaks ? lessons.of(read.session(), read.lesson(), pauses) : read.lessonAt();
    }

    private static List<Instructor> instructors(Session session) {
        return session.instructorIds().stream()
                .map(
                        id ->
                                new Instructor(
                                        id.toString(), List.of(Minutes.hours(session)), List.of()))
                .toList();
    }

    /** Who is late or absent by now: what was said before and is not said anew still holds. */
    private static Map<Long, @Nullable Integer> arrivals(
            @Nullable DayTimetable before, NewTimetable asked) {
        var arrivals = new HashMap<Long, @Nullable Integer>();
        if (before != null) {
            before.arrivals().forEach(row -> arrivals.put(row.personId(), row.atMinute()));
        }
        var absent = asked.absent();
        if (absent != null) {
            absent.forEach(id -> arrivals.put(id, null));
        }
        var late = asked.late();
        if (late != null) {
            late.forEach(one -> arrivals.put(one.personId(), Minutes.of(one.at())));
        }
        return arrivals;
    }

    private static Underway underway(
            @Nullable LocalTime now,
            @Nullable DayTimetable before,
            NewTimetable asked,
            Map<Long, @Nullable Integer> arrivals,
            DayJobs jobs) {
        var absent = new ArrayList<String>();
        var late = new HashMap<String, Integer>();
        arrivals.forEach(
                (id, minute) -> {
                    if (minute == null) {
                        absent.add(id.toString());
                    } else {
                        late.put(id.toString(), Minutes.up(minute));
                    }
                });
        if (now == null || before == null) {
            return new Underway(0, List.of(), Set.copyOf(absent), late, List.of());
        }
        int minute = Minutes.up(Minutes.of(now));
        // A tree taken off the session since, or work that runs otherwise in the content in force,
        // is no hindrance.
        var changed =
                before.slots().stream()
                        .filter(slot -> !jobs.knows(slot))
                        .map(slot -> DayJobs.id(slot.treeId(), slot.technique()))
                        .collect(Collectors.toSet());
        var slots =
                before.slots().stream()
                        .map(TimetableMaker::slot)
                        .filter(slot -> !changed.contains(slot.job()))
                        .toList();
        var begun = slots.stream().filter(slot -> slot.span().fromMinute() < minute).toList();
        var underway = new Underway(minute, begun, Set.copyOf(absent), late, slots);
        var overruns = asked.overruns();
        if (overruns == null) {
            return underway;
        }
        for (var overrun : overruns) {
            var last = NewTimetableCheck.lastBegun(before, overrun.treeId(), minute).orElseThrow();
            if (changed.contains(DayJobs.id(last.treeId(), last.technique()))) {
                continue;
            }
            underway =
                    underway.ending(
                            DayJobs.id(last.treeId(), last.technique()),
                            Minutes.up(Minutes.of(overrun.until())));
        }
        return underway;
    }

    private static Timetable.Slot slot(DayTimetable.Slot slot) {
        var instructor = slot.instructorId();
        return new Timetable.Slot(
                DayJobs.id(slot.treeId(), slot.technique()),
                slot.phase(),
                instructor == null ? null : instructor.toString(),
                new Span(slot.fromMinute(), slot.toMinute()));
    }

    private DayTimetable keep(Actor actor, Task task, Timetable found) {
        var entity = new TimetableEntity();
        entity.sessionId = task.read().session().id();
        entity.revision = task.revision();
        entity.fromMinute = task.underway().nowMinute();
        entity.found = found.worth().found();
        entity.finishMinute = found.finishMinute();
        entity.waitingMinutes = found.totalWaitingMinutes();
        entity.cost = found.worth().cost();
        entity.leastCost = found.worth().leastCost();
        entity.jobs = found.worth().jobs();
        entity.mostJobs = found.worth().mostJobs();
        entity.madeBy = actor.personId();
        entity.madeAt = today.now();
        found.slots().forEach(slot -> entity.slots.add(row(task.jobs(), slot)));
        var words = new LeftOutWords(task.read().names());
        for (var left : found.leftOut()) {
            var row = new TimetableEntity.LeftOutRow();
            var chosen = task.jobs().chosen(left.job());
            row.treeId = chosen.treeId();
            row.technique = chosen.technique().code();
            row.because = words.of(left.reason());
            entity.leftOut.add(row);
        }
        task.arrivals()
                .forEach(
                        (id, minute) -> {
                            var row = new TimetableEntity.ArrivalRow();
                            row.personId = id;
                            row.atMinute = minute;
                            entity.arrivals.add(row);
                        });
        var newBreaks = task.newBreaks();
        if (newBreaks != null) {
            breaks.keep(entity.sessionId, newBreaks);
        }
        var newLesson = task.newLesson();
        if (newLesson != null) {
            lessons.keep(entity.sessionId, newLesson);
        }
        timetables.persistAndFlush(entity);
        return entity.told();
    }

    private static TimetableEntity.SlotRow row(DayJobs jobs, Timetable.Slot slot) {
        var chosen = jobs.chosen(slot.job());
        var phase = jobs.phase(slot.job(), slot.phase());
        var row = new TimetableEntity.SlotRow();
        row.treeId = chosen.treeId();
        row.technique = chosen.technique().code();
        row.phase = slot.phase();
        row.kind = phase.kind();
        row.cuts = phase.cuts();
        var instructor = slot.instructor();
        row.instructorId = instructor == null ? null : Long.valueOf(instructor);
        row.fromMinute = slot.span().fromMinute();
        row.toMinute = slot.span().toMinute();
        return row;
    }
}
