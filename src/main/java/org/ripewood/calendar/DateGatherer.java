package org.ripewood.calendar;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.accounts.CalendarOwner;
import org.ripewood.aftercare.Aftercare;
import org.ripewood.core.season.Span;
import org.ripewood.course.CourseContent;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.sessions.Attendance;
import org.ripewood.sessions.Sessions;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;

/** Asks the rooms for what belongs into a person's calendar. */
@ApplicationScoped
class DateGatherer {

    /** So long after its day a class date stays, called off or not. */
    static final int DAYS_BACK = 30;

    /** Care further ahead is moved by the season too easily to be worth a date. */
    static final int CARE_DAYS_AHEAD = 120;

    private final Sessions sessions;
    private final Aftercare aftercare;
    private final Trees trees;
    private final CourseContent content;
    private final Today today;

    DateGatherer(
            Sessions sessions,
            Aftercare aftercare,
            Trees trees,
            CourseContent content,
            Today today) {
        this.sessions = sessions;
        this.aftercare = aftercare;
        this.trees = trees;
        this.content = content;
        this.today = today;
    }

    @Transactional
    Dates of(CalendarOwner owner, String site) {
        var person = owner.person();
        var actor = new Actor(person.id(), person.roles());
        var on = today.date();
        var labels =
                trees.ofKeepers(actor, List.of(person.id())).stream()
                        .collect(Collectors.toMap(Tree::id, Tree::label));
        return new Dates(
                owner.seed(),
                site,
                on.atStartOfDay(today.zone()).toInstant(),
                sessions.ofPerson(actor, on.minusDays(DAYS_BACK)).stream()
                        .map(attendance -> classDate(attendance, labels))
                        .toList(),
                aftercare.ofKeeper(
                        actor,
                        person.id(),
                        new Span(on.minusDays(DAYS_BACK), on.plusDays(CARE_DAYS_AHEAD))));
    }

    private Dates.ClassDate classDate(Attendance attendance, Map<Long, String> labels) {
        var session = attendance.session();
        var lesson = session.lesson() == null ? null : lessonTitle(session.lesson());
        return new Dates.ClassDate(
                attendance,
                moment(session.heldOn(), session.startsAt(), today.zone()),
                moment(session.heldOn(), session.endsAt(), today.zone()),
                lesson,
                attendance.treeIds().stream()
                        .map(id -> labels.getOrDefault(id, "a tree you no longer keep"))
                        .toList());
    }

    /** An hour that the clock skips in spring is told as the one after it. */
    static Instant moment(LocalDate day, LocalTime time, ZoneId zone) {
        return day.atTime(time).atZone(zone).toInstant();
    }

    private @Nullable String lessonTitle(String code) {
        var lesson = content.inForce().lessons().get(code);
        return lesson == null ? null : lesson.title();
    }
}
