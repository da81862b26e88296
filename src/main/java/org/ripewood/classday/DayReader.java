package org.ripewood.classday;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Lesson;
import org.ripewood.materials.Materials;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.Sessions;
import org.ripewood.standing.DayWork;
import org.ripewood.standing.Standings;

/** Reads a class day together; for those who run its course. */
@ApplicationScoped
class DayReader {

    private final Sessions sessions;
    private final People people;
    private final CourseContent content;
    private final Standings standings;
    private final Materials materials;
    private final WishBook wishes;
    private final BreakBook breaks;

    DayReader(
            Sessions sessions,
            People people,
            CourseContent content,
            Standings standings,
            Materials materials,
            WishBook wishes,
            BreakBook breaks) {
        this.sessions = sessions;
        this.people = people;
        this.content = content;
        this.standings = standings;
        this.materials = materials;
        this.wishes = wishes;
        this.breaks = breaks;
    }

    DayRead read(Actor actor, long sessionId) {
        var session = sessions.get(actor, sessionId);
        people.requireRuns(actor, session.courseId(), "the plan of its sessions");
        var inForce = content.inForce();
        var lesson = lessonOf(inForce, session.lesson());
        var work = workOf(actor, session);
        var wished = wishes.of(sessionId);
        var chooser = new TreeChooser(inForce, lesson);
        var choices = new ArrayList<TreeChoice>();
        for (var enrolment : session.enrolments()) {
            var tree = work.get(enrolment.treeId());
            if (tree != null) {
                choices.add(
                        chooser.choose(
                                enrolment,
                                tree,
                                wished.getOrDefault(enrolment.treeId(), Map.of())));
            }
        }
        return new DayRead(
                session,
                inForce,
                lesson,
                choices,
                namesOf(session),
                breaks.of(session),
                materials.stockOn(actor, session.heldOn()));
    }

    private Map<Long, DayWork> workOf(Actor actor, Session session) {
        var ids = session.enrolments().stream().map(Session.Enrolment::treeId).toList();
        return standings.workOn(actor, session.courseId(), ids, session.heldOn()).stream()
                .collect(Collectors.toMap(work -> work.tree().id(), work -> work));
    }

    private Map<Long, String> namesOf(Session session) {
        var ids = new HashSet<>(session.instructorIds());
        session.enrolments().forEach(enrolment -> ids.add(enrolment.personId()));
        return people.names(ids);
    }

    /** A lesson content has lost since must not keep the class from its plan. */
    private static @Nullable Lesson lessonOf(Content content, @Nullable String code) {
        return code == null ? null : content.lessons().get(code);
    }
}
