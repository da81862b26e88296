package org.ripewood.classday;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.boards.DayWork;
import org.ripewood.boards.WorkFinder;
import org.ripewood.core.bench.DayChoice;
import org.ripewood.core.bench.DayLimits;
import org.ripewood.core.bench.Span;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Lesson;
import org.ripewood.materials.Materials;
import org.ripewood.materials.StockSnapshot;
import org.ripewood.people.Courses;
import org.ripewood.people.People;
import org.ripewood.people.Roster;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.RecordsUnchecked;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.Sessions;

/** Reads a class day together; for those who run its course. */
@ApplicationScoped
class DayReader {

    private final Sessions sessions;
    private final People people;
    private final Courses courses;
    private final CourseContent content;
    private final WorkFinder workFinder;
    private final Materials materials;
    private final RecordsUnchecked recordsUnchecked;
    private final WishBook wishes;
    private final BreakBook breaks;
    private final LessonBook lessons;
    private final Today today;

    DayReader(
            Sessions sessions,
            People people,
            Courses courses,
            CourseContent content,
            WorkFinder workFinder,
            Materials materials,
            RecordsUnchecked recordsUnchecked,
            WishBook wishes,
            BreakBook breaks,
            LessonBook lessons,
            Today today) {
        this.sessions = sessions;
        this.people = people;
        this.courses = courses;
        this.content = content;
        this.workFinder = workFinder;
        this.materials = materials;
        this.recordsUnchecked = recordsUnchecked;
        this.wishes = wishes;
        this.breaks = breaks;
        this.lessons = lessons;
        this.today = today;
    }

    DayRead read(Actor actor, long sessionId) {
        return read(actor, sessionId, null, null);
    }

    /**
     * The day as it would be with other breaks, or with its lesson at another time or of another
     * length: that changes what work has room.
     *
     * @param newBreaks null for those that are kept
     * @param newLesson null for what is kept
     */
    DayRead read(
            Actor actor,
            long sessionId,
            @Nullable List<Span> newBreaks,
            NewTimetable.@Nullable Lesson newLesson) {
        var session = sessions.get(actor, sessionId);
        var roster = courses.roster(actor, session.courseId());
        roster.requireRuns("the plan of its sessions");
        var inForce = content.inForce();
        var lesson = lessonOf(inForce, session.lesson());
        var coming = coming(session, workOf(roster, session));
        if (coming.size() > DayChoice.MOST_TREES) {
            throw Refused.conflict(
                    "A day has room for %d trees, %d are enrolled."
                            .formatted(DayChoice.MOST_TREES, coming.size()),
                    "Maybe hold two sessions.");
        }
        var stock = materials.stockOn(actor, session.heldOn());
        var takes = takes(session, stock);
        var pauses = newBreaks == null ? breaks.of(session) : newBreaks;
        var around = Minutes.around(pauses);
        var read =
                new DayRead(
                        session,
                        roster.course().name(),
                        inForce,
                        lesson,
                        List.of(),
                        namesOf(roster, session),
                        pauses,
                        newLesson == null
                                ? lessons.of(session, lesson, around)
                                : LessonBook.asked(session, lesson, newLesson, around),
                        stock,
                        takes);
        var chooser = new DayChooser(inForce, lesson, read.toolCounts().keySet(), takes);
        return read.with(chooser.choose(coming, limits(read)));
    }

    /** What can still be bought keeps no tree from its work. */
    private DayTakes takes(Session session, StockSnapshot stock) {
        var ids = session.enrolments().stream().map(Session.Enrolment::treeId).toList();
        return new DayTakes(
                stock,
                recordsUnchecked.containersOn(ids, session.heldOn()),
                session.heldOn().isAfter(today.date()));
    }

    private static DayLimits limits(DayRead read) {
        var tools = new HashMap<>(read.toolCounts());
        tools.replaceAll((name, count) -> Math.min(count, DayLimits.MOST_OF_A_TOOL));
        var closed = new ArrayList<>(Minutes.around(read.breaks()));
        closed.addAll(read.lessonAt());
        int minutes = OpenMinutes.of(Minutes.steps(Minutes.hours(read.session())), closed);
        return new DayLimits(
                Math.max(1, minutes),
                Map.of(),
                minutes * read.session().instructorIds().size(),
                tools,
                read.takes().amounts(),
                1);
    }

    private List<DayChooser.Coming> coming(Session session, Map<Long, DayWork> work) {
        var wished = wishes.of(session.id());
        var coming = new ArrayList<DayChooser.Coming>();
        for (var enrolment : session.enrolments()) {
            var tree = work.get(enrolment.treeId());
            if (tree != null) {
                coming.add(
                        new DayChooser.Coming(
                                enrolment,
                                tree,
                                wished.getOrDefault(enrolment.treeId(), Map.of())));
            }
        }
        return coming;
    }

    private Map<Long, DayWork> workOf(Roster roster, Session session) {
        var ids = session.enrolments().stream().map(Session.Enrolment::treeId).toList();
        return workFinder.on(roster, ids, session.heldOn()).stream()
                .collect(Collectors.toMap(work -> work.tree().id(), work -> work));
    }

    /** Names of those who never belonged to the course are asked for; the others are known. */
    private Map<Long, String> namesOf(Roster roster, Session session) {
        var names = new HashMap<Long, String>();
        roster.memberships().forEach(member -> names.put(member.personId(), member.name()));
        var ids = new HashSet<>(session.instructorIds());
        session.enrolments().forEach(enrolment -> ids.add(enrolment.personId()));
        ids.removeAll(names.keySet());
        names.putAll(people.names(ids));
        return names;
    }

    /** A lesson content has lost since must not keep the class from its plan. */
    private static @Nullable Lesson lessonOf(Content content, @Nullable String code) {
        return code == null ? null : content.lessons().get(code);
    }
}
