package org.ripewood.steps;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import org.hibernate.exception.ConstraintViolationException;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;

/** Writes what happens to steps; every change leaves an event. */
@ApplicationScoped
public class StepWriter {

    static final int LONGEST_NOTE = 2000;

    private final StepBook steps;
    private final EventBook events;
    private final StepHistories teller;
    private final Event<StepAssigned> assigned;
    private final Today today;

    StepWriter(
            StepBook steps,
            EventBook events,
            StepHistories teller,
            Event<StepAssigned> assigned,
            Today today) {
        this.steps = steps;
        this.events = events;
        this.teller = teller;
        this.assigned = assigned;
        this.today = today;
    }

    /** Keeps a new step; 409 when somebody was quicker with the same technique on the tree. */
    public void begin(Actor actor, StepEntity step, StepState state) {
        step.become(state);
        try {
            steps.persistAndFlush(step);
        } catch (ConstraintViolationException quicker) {
            throw Refused.conflict(
                    "The tree already has an open step for %s.".formatted(step.technique), null);
        }
        note(actor, step, step.note);
        if (state == StepState.ASSIGNED) {
            assigned.fire(new StepAssigned(actor, step.treeId, step.technique, step.id()));
        }
    }

    /** Moves a step on; the version has been checked. */
    void move(Actor actor, StepEntity step, StepTransition move, @Nullable String note) {
        step.become(move.next(step.state));
        note(actor, step, note);
    }

    /** The step as it is now, its version counted on. */
    public Step told(StepEntity step) {
        steps.flush();
        return teller.told(step);
    }

    /** The same without what happened to it. */
    public StepBrief brief(StepEntity step) {
        steps.flush();
        return step.brief();
    }

    static void requireVersion(StepEntity step, long version) {
        if (step.version != version) {
            throw Refused.stale("step");
        }
    }

    /** A note of this length, blank counted as none. */
    public static @Nullable String noteOf(@Nullable String typed) {
        if (typed == null || typed.isBlank()) {
            return null;
        }
        var note = typed.strip();
        if (note.length() > LONGEST_NOTE) {
            throw Refused.invalid(
                    "note",
                    "Expected at most %d characters, found %d."
                            .formatted(LONGEST_NOTE, note.length()));
        }
        return note;
    }

    static String requireNote(@Nullable String typed, String why) {
        var note = noteOf(typed);
        if (note == null) {
            throw Refused.invalid("note", why);
        }
        return note;
    }

    private void note(Actor actor, StepEntity step, @Nullable String note) {
        var event = new EventEntity();
        event.stepId = step.id();
        event.became = step.state;
        event.byId = actor.personId();
        event.happenedAt = today.now();
        event.note = note;
        events.persist(event);
    }
}
