package org.ripewood.classday;

import java.util.List;
import org.ripewood.boards.DayWork;
import org.ripewood.sessions.Session;

/**
 * What was chosen for a tree that comes to a class day.
 *
 * @param chosen what it does, the most useful first; empty when it does nothing
 * @param others what it could do besides, with why it does not
 */
record TreeChoice(
        Session.Enrolment enrolment,
        DayWork work,
        List<Taken> chosen,
        List<SessionPlan.Other> others) {

    /** One piece of work. */
    record Taken(DayWork.Option option, double usefulness, String why) {}

    /** Why it does nothing: what bars the first thing it could do, or what the tree waits for. */
    String whyIdle() {
        var reported = work.reported();
        if (reported != null) {
            return reported + " What comes next is planned after that.";
        }
        var bars = others.stream().filter(other -> !isCare(other)).findFirst();
        if (bars.isEmpty()) {
            return work.otherwise();
        }
        var first = bars.get();
        return "“%s”: %s".formatted(first.title(), first.why());
    }

    private boolean isCare(SessionPlan.Other other) {
        return work.options().stream()
                .anyMatch(option -> option.care() && option.technique().equals(other.technique()));
    }

    TreeChoice {
        chosen = List.copyOf(chosen);
        others = List.copyOf(others);
    }
}
