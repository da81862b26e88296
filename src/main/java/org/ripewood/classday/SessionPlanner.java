package org.ripewood.classday;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Species;
import org.ripewood.platform.Actor;

/** Puts together what a class day needs on paper. */
@ApplicationScoped
class SessionPlanner {

    private final DayReader reader;
    private final TimetableMaker timetables;

    SessionPlanner(DayReader reader, TimetableMaker timetables) {
        this.reader = reader;
        this.timetables = timetables;
    }

    SessionPlan plan(Actor actor, long sessionId) {
        var day = reader.read(actor, sessionId);
        var session = day.session();
        var rows = rows(day);
        var needs = new SessionNeeds(rows, day.toolCounts());
        return new SessionPlan(
                session,
                day.courseName(),
                day.lesson(),
                session.instructorIds().stream().map(id -> nameOf(day, id)).toList(),
                rows,
                needs.tools(),
                needs.toolKinds(),
                needs.materials(),
                new DayShopping(session.heldOn(), day.takes()).wants(rows),
                needs.cautions(speciesOf(day)),
                needs.studentMinutes(),
                needs.instructorMinutes(),
                day.breaks(),
                day.lessonAt(),
                InBetweens.of(rows),
                timetables
                        .inForce(sessionId)
                        .map(plan -> TimetableShown.of(plan, day))
                        .orElse(null));
    }

    /** A row for each piece of work, and one for a tree that does nothing. */
    private static List<SessionPlan.Row> rows(DayRead day) {
        var rows = new ArrayList<SessionPlan.Row>();
        for (var choice : day.choices()) {
            if (choice.chosen().isEmpty()) {
                rows.add(row(day, choice, null, choice.whyIdle(), choice.work().measureFirst()));
            }
            for (var taken : choice.chosen()) {
                rows.add(row(day, choice, taken, taken.why(), taken.option().measureFirst()));
            }
        }
        return rows;
    }

    private static SessionPlan.Row row(
            DayRead day,
            TreeChoice choice,
            TreeChoice.@Nullable Taken taken,
            String why,
            List<String> measureFirst) {
        var tree = choice.work().tree();
        return new SessionPlan.Row(
                choice.enrolment().bench(),
                nameOf(day, choice.enrolment().personId()),
                tree.id(),
                tree.label(),
                day.content().kindOf(tree.species()).common(),
                choice.work().stage(),
                taken == null ? null : day.content().technique(taken.option().technique()),
                taken == null ? null : taken.option().stepId(),
                taken == null ? null : taken.option().ground(),
                why,
                measureFirst,
                choice.others());
    }

    private static Map<Long, Species> speciesOf(DayRead day) {
        var species = new HashMap<Long, Species>();
        for (var choice : day.choices()) {
            var tree = choice.work().tree();
            species.put(tree.id(), day.content().kindOf(tree.species()));
        }
        return species;
    }

    private static String nameOf(DayRead day, long id) {
        return day.names().getOrDefault(id, "Person " + id);
    }
}
