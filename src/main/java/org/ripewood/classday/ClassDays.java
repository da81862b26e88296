package org.ripewood.classday;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.time.LocalDate;
import org.ripewood.core.progress.ReadyWeeks;
import org.ripewood.platform.Actor;

/** The class day: what each tree does, when and with what. */
@ApplicationScoped
@Transactional
public class ClassDays {

    private final SessionPlanner plans;
    private final WeeksAhead weeksAhead;

    ClassDays(SessionPlanner plans, WeeksAhead weeksAhead) {
        this.plans = plans;
        this.weeksAhead = weeksAhead;
    }

    /** The plan of a session; for those who run its course. */
    public SessionPlan plan(Actor actor, long sessionId) {
        return plans.plan(actor, sessionId);
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
