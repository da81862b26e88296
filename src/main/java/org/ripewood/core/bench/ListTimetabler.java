package org.ripewood.core.bench;

import java.util.function.BooleanSupplier;

/**
 * A list schedule: jobs are put on the day in the order of a rule of priority, each phase as early
 * as it fits; of fourteen such orders the best plan counts.
 *
 * <p>Deterministic, and done in some milliseconds; the bound takes most of the time. A plan in
 * force is one of those compared, so that more instructors or a longer day never lose a job of it.
 */
public final class ListTimetabler implements Timetabler {

    private static final int BOUND_ROUNDS = 60;

    @Override
    public Timetable plan(ClassDay day, Underway underway, BooleanSupplier stop) {
        var model = new DayModel(day, underway);
        var plan = new PriorityRules(model).plan();
        return TimetableResult.tell(
                model, plan, Bounds.of(model, plan, BOUND_ROUNDS, stop), Timetable.Found.LISTED);
    }
}
