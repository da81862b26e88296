package org.ripewood.classday;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.time.LocalDate;
import org.ripewood.core.progress.ReadyWeeks;
import org.ripewood.platform.Actor;
import org.ripewood.platform.meters.Measured;
import org.ripewood.platform.meters.Meter;

/** The class day: what each tree does, when and with what. */
@ApplicationScoped
@Transactional
public class ClassDays {

    private final SessionPlanner plans;
    private final WeeksAhead weeksAhead;
    private final TimetableMaker timetables;
    private final DayWishes wishes;

    ClassDays(
            SessionPlanner plans,
            WeeksAhead weeksAhead,
            TimetableMaker timetables,
            DayWishes wishes) {
        this.plans = plans;
        this.weeksAhead = weeksAhead;
        this.timetables = timetables;
        this.wishes = wishes;
    }

    /** The plan of a session; for those who run its course. */
    public SessionPlan plan(Actor actor, long sessionId) {
        return plans.plan(actor, sessionId);
    }

    /**
     * Says what a tree is to do that day, or not; for those who run the course. A wish of the same
     * technique said before is replaced, and stays on record.
     */
    public void wish(Actor actor, long sessionId, NewDayWish wish) {
        wishes.say(actor, sessionId, wish);
    }

    /**
     * Lays out the timetable of the day, anew or from a time on; for those who run the course. What
     * has begun by then is kept. 409 when nothing is there to be laid out.
     */
    @Transactional(Transactional.TxType.NOT_SUPPORTED)
    @Measured(Meter.DAY_LAID_OUT)
    public DayTimetable layOut(Actor actor, long sessionId, NewTimetable asked) {
        return timetables.layOut(actor, sessionId, asked);
    }

    /**
     * Which lesson when: how many trees of a course could do each technique in each week; for those
     * who run the course. Asked again with the same words it goes on with the same count.
     *
     * @param from today to a year ahead
     * @param weeks 1 to {@link ReadyWeeks#MOST_WEEKS}
     * @param patience how long to wait; when the count is not through by then, how far it is
     */
    @Transactional(Transactional.TxType.NOT_SUPPORTED)
    public WeeksProgress weeksAhead(
            Actor actor, long courseId, LocalDate from, int weeks, Duration patience) {
        return weeksAhead.ask(actor, courseId, from, weeks, patience);
    }
}
