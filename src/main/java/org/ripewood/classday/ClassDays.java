package org.ripewood.classday;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import org.ripewood.platform.Actor;

/** The class day: what each tree does, when and with what. */
@ApplicationScoped
@Transactional
public class ClassDays {

    private final SessionPlanner plans;

    ClassDays(SessionPlanner plans) {
        this.plans = plans;
    }

    /** The plan of a session; for those who run its course. */
    public SessionPlan plan(Actor actor, long sessionId) {
        return plans.plan(actor, sessionId);
    }
}
