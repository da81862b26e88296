package org.ripewood.classday;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.bench.Span;
import org.ripewood.platform.problems.Fault;
import org.ripewood.sessions.Session;

/** What annotations cannot check of a timetable asked for; all faults at once. */
final class NewTimetableCheck {

    private final Session session;
    private final NewTimetable asked;
    private final @Nullable DayTimetable before;
    private final Set<Long> students;

    NewTimetableCheck(Session session, NewTimetable asked, @Nullable DayTimetable before) {
        this.session = session;
        this.asked = asked;
        this.before = before;
        this.students =
                session.enrolments().stream()
                        .map(Session.Enrolment::personId)
                        .collect(Collectors.toSet());
    }

    void into(Collection<Fault> faults) {
        checkNow(faults);
        checkStudents(faults);
        checkOverruns(faults);
        checkBreaks(faults);
        checkLesson(faults);
    }

    private void checkLesson(Collection<Fault> faults) {
        var lesson = asked.lesson();
        if (lesson == null) {
            return;
        }
        if (session.lesson() == null) {
            faults.add(new Fault("lesson", "This session has no lesson."));
        }
        var at = lesson.at();
        if (at != null && (at.isBefore(session.startsAt()) || !at.isBefore(session.endsAt()))) {
            faults.add(
                    new Fault(
                            "lesson.at",
                            "Expected a time from %s to before %s, when the class is over; found %s."
                                    .formatted(session.startsAt(), session.endsAt(), at)));
        }
    }

    /** The breaks asked for, in the order of the day; null for those there are. */
    @Nullable List<Span> breaks() {
        var breaks = asked.breaks();
        return breaks == null
                ? null
                : breaks.stream()
                        .map(one -> new Span(Minutes.of(one.from()), Minutes.of(one.until())))
                        .sorted(Comparator.comparingInt(Span::fromMinute))
                        .toList();
    }

    /** The last phase of a tree that has begun by a minute. */
    static Optional<DayTimetable.Slot> lastBegun(DayTimetable plan, long treeId, int minute) {
        return plan.slots().stream()
                .filter(slot -> slot.treeId() == treeId && slot.fromMinute() < minute)
                .max(Comparator.comparingInt(DayTimetable.Slot::fromMinute));
    }

    private void checkNow(Collection<Fault> faults) {
        var now = asked.now();
        if (now == null) {
            return;
        }
        if (before == null) {
            faults.add(
                    new Fault(
                            "now", "The day has not been laid out yet. Maybe leave the time out."));
        } else if (now.isBefore(session.startsAt()) || !now.isBefore(session.endsAt())) {
            faults.add(
                    new Fault(
                            "now",
                            "Expected a time from %s to before %s, when the class is over; found %s."
                                    .formatted(session.startsAt(), session.endsAt(), now)));
        }
    }

    private void checkStudents(Collection<Fault> faults) {
        var named = new ArrayList<Long>();
        var absent = asked.absent();
        if (absent != null) {
            for (int i = 0; i < absent.size(); i++) {
                checkStudent("absent[%d]".formatted(i), absent.get(i), named, faults);
            }
        }
        var late = asked.late();
        if (late == null) {
            return;
        }
        for (int i = 0; i < late.size(); i++) {
            checkStudent("late[%d].personId".formatted(i), late.get(i).personId(), named, faults);
            var at = late.get(i).at();
            if (!at.isBefore(session.endsAt())) {
                faults.add(
                        new Fault(
                                "late[%d].at".formatted(i),
                                "Expected a time before %s; found %s. Maybe the student is absent."
                                        .formatted(session.endsAt(), at)));
            }
        }
    }

    private void checkStudent(String field, long id, List<Long> named, Collection<Fault> faults) {
        if (!students.contains(id)) {
            faults.add(new Fault(field, "Person %d does not come to this session.".formatted(id)));
        } else if (named.contains(id)) {
            faults.add(new Fault(field, "Person %d is named twice.".formatted(id)));
        }
        named.add(id);
    }

    private void checkOverruns(Collection<Fault> faults) {
        var overruns = asked.overruns();
        var now = asked.now();
        if (overruns == null || overruns.isEmpty()) {
            return;
        }
        if (now == null || before == null) {
            faults.add(
                    new Fault(
                            "overruns",
                            "Work can only run on while the day goes on: say what time it is."));
            return;
        }
        for (int i = 0; i < overruns.size(); i++) {
            checkOverrun(i, overruns.get(i), before, now, faults);
        }
    }

    private void checkOverrun(
            int index,
            NewTimetable.Overrun overrun,
            DayTimetable plan,
            LocalTime now,
            Collection<Fault> faults) {
        boolean comes =
                session.enrolments().stream().anyMatch(one -> one.treeId() == overrun.treeId());
        if (!comes || lastBegun(plan, overrun.treeId(), Minutes.of(now)).isEmpty()) {
            faults.add(
                    new Fault(
                            "overruns[%d].treeId".formatted(index),
                            "Nothing has begun on tree %d by %s."
                                    .formatted(overrun.treeId(), now)));
        }
        if (overrun.until().isBefore(now) || overrun.until().isAfter(session.endsAt())) {
            faults.add(
                    new Fault(
                            "overruns[%d].until".formatted(index),
                            "Expected a time from %s to %s; found %s."
                                    .formatted(now, session.endsAt(), overrun.until())));
        }
    }

    private void checkBreaks(Collection<Fault> faults) {
        var breaks = asked.breaks();
        if (breaks == null) {
            return;
        }
        for (int i = 0; i < breaks.size(); i++) {
            var one = breaks.get(i);
            if (!one.from().isBefore(one.until()) || outside(one.from()) || outside(one.until())) {
                faults.add(
                        new Fault(
                                "breaks[%d]".formatted(i),
                                "Expected a break that begins before it ends, between %s and %s; found %s to %s."
                                        .formatted(
                                                session.startsAt(),
                                                session.endsAt(),
                                                one.from(),
                                                one.until())));
            }
        }
    }

    private boolean outside(LocalTime time) {
        return time.isBefore(session.startsAt()) || time.isAfter(session.endsAt());
    }
}
