package org.ripewood.calendar;

import biweekly.component.VEvent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import org.ripewood.aftercare.CareTask;
import org.ripewood.aftercare.MeasuringDay;
import org.ripewood.core.season.CareState;
import org.ripewood.core.season.Span;

/**
 * Care and measuring days as events of whole days that leave the owner free.
 *
 * <p>They are events and not to-dos because most calendar programs do not show the to-dos of a
 * calendar they only read. Care of more than two weeks stands on its first day, or it would cover
 * the whole season; what is late stands on today. They are told anew each day: their stamp is the
 * day's beginning, and of two tellings the later counts (RFC 5546, 2.1.5).
 */
final class CareEvents {

    private static final int MOST_DAYS_SHOWN = 14;

    private final Dates dates;

    private CareEvents(Dates dates) {
        this.dates = dates;
    }

    static List<VEvent> of(Dates dates) {
        var events = new CareEvents(dates);
        var all = new ArrayList<VEvent>();
        dates.care().tasks().forEach(task -> all.add(events.of(task)));
        dates.care().measuring().forEach(day -> all.add(events.of(day)));
        return all;
    }

    private VEvent of(CareTask task) {
        var late = task.state() == CareState.LATE;
        var event = event("care-" + task.id(), shown(task, late));
        var longer = !late && longerThanShown(task);
        event.setSummary(
                "%s: %s%s%s"
                        .formatted(
                                task.tree(),
                                late ? "late: " : "",
                                task.task().replaceFirst("\\.$", ""),
                                longer ? " (until " + task.to() + ")" : ""));
        event.setDescription(
                "After: %s, %s. In time from %s to %s."
                        .formatted(task.afterTitle(), task.workedOn(), task.from(), task.to()));
        event.setUrl("%s/trees/%d/checklist".formatted(dates.site(), task.treeId()));
        return event;
    }

    private VEvent of(MeasuringDay day) {
        var event = event("measure-" + day.id(), new Span(day.by(), day.by()));
        var what = day.subject().name().toLowerCase(Locale.ROOT);
        event.setSummary("%s: measure the %s again".formatted(day.tree(), what));
        event.setDescription(
                "Measured last on %s; after this day it counts as too old."
                        .formatted(day.measuredOn()));
        event.setUrl("%s/trees/%d/measure".formatted(dates.site(), day.treeId()));
        return event;
    }

    private Span shown(CareTask task, boolean late) {
        if (late) {
            return new Span(dates.on(), dates.on());
        }
        return longerThanShown(task) ? new Span(task.from(), task.from()) : task.span();
    }

    private static boolean longerThanShown(CareTask task) {
        return task.from().plusDays(MOST_DAYS_SHOWN).isBefore(task.to().plusDays(1));
    }

    private VEvent event(String name, Span days) {
        var event = new VEvent();
        event.setUid(name + "-" + dates.seed());
        event.setDateTimeStamp(Date.from(dates.dayBegan()));
        event.setSequence(0);
        event.setDateStart(WholeDay.of(days.from()), false);
        // the end of an event is the day after its last (RFC 5545, 3.6.1)
        event.setDateEnd(WholeDay.of(days.to().plusDays(1)), false);
        event.setTransparency(true);
        return event;
    }

    /** A day as the library writes it: without a time, by the components of the date. */
    private static final class WholeDay {

        private WholeDay() {}

        @SuppressWarnings("JavaTimeDefaultTimeZone") // the library writes days in that zone
        static Date of(LocalDate day) {
            return Date.from(day.atStartOfDay(java.time.ZoneId.systemDefault()).toInstant());
        }
    }
}
