package org.ripewood.calendar;

import biweekly.component.VEvent;
import biweekly.property.Status;
import java.time.format.DateTimeFormatter;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ripewood.sessions.Session;

/**
 * Class dates as events, in UTC: the zone in which they were set is the school's, and a moment
 * needs no description of its rules for summer time.
 *
 * <p>Nothing is said of anybody but the owner: no names, and of other trees only how many.
 */
final class ClassEvents {

    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.UK);

    private ClassEvents() {}

    static List<VEvent> of(Dates dates) {
        return dates.classDates().stream().map(date -> event(dates, date)).toList();
    }

    private static VEvent event(Dates dates, Dates.ClassDate date) {
        var session = date.attendance().session();
        var event = new VEvent();
        event.setUid("session-%d-%s".formatted(session.id(), dates.seed()));
        event.setSequence((int) session.version());
        event.setDateTimeStamp(Date.from(session.changedAt()));
        event.setLastModified(Date.from(session.changedAt()));
        event.setDateStart(Date.from(date.starts()));
        event.setDateEnd(Date.from(date.ends()));
        event.setSummary(summary(date));
        event.setLocation(session.place());
        event.setDescription(description(date) + moved(date.attendance().session().moved()));
        event.setUrl(dates.site() + "/sessions/" + session.id());
        event.setStatus(date.calledOff() ? Status.cancelled() : Status.confirmed());
        return event;
    }

    /** What it was before; calendars show only what it is. */
    private static String moved(Session.@Nullable Moved moved) {
        return moved == null
                ? ""
                : " It was to be on %s, %s, %s."
                        .formatted(DAY.format(moved.heldOn()), moved.startsAt(), moved.place());
    }

    private static String summary(Dates.ClassDate date) {
        var course = date.attendance().course();
        var lesson = date.lesson();
        return lesson == null ? course : course + ": " + lesson;
    }

    private static String description(Dates.ClassDate date) {
        var attendance = date.attendance();
        if (!attendance.session().held()) {
            return "Cancelled; the page of the session says why.";
        }
        if (attendance.teaches()) {
            return "You teach. Trees that come: %d.".formatted(attendance.trees());
        }
        if (attendance.withdrawn()) {
            return "You are no longer enrolled.";
        }
        return date.trees().isEmpty()
                ? "No tree of yours is enrolled."
                : "You bring: " + String.join("; ", date.trees()) + ".";
    }
}
