package org.ripewood.web.courses;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Lesson;
import org.ripewood.people.Course;
import org.ripewood.sessions.Presence;
import org.ripewood.sessions.Roll;
import org.ripewood.sessions.Session;
import org.ripewood.trees.Tree;
import org.ripewood.web.kit.FormState;

/**
 * What the page of a session shows.
 *
 * @param trees of the course's students that do not come yet; empty for readers who may not enrol
 * @param withoutTree names of students of the course who keep no tree
 * @param coming what the trees that come or wait are called, by id
 * @param runs whether the reader may enrol and see the plan
 */
record SessionPageModel(
        Session session,
        Course course,
        @Nullable Lesson lesson,
        Map<Long, String> names,
        Map<Long, String> coming,
        List<Tree> trees,
        List<String> withoutTree,
        boolean runs,
        Roll roll,
        FormState typed) {

    public FormState enrolment() {
        return typed.orFresh("enrolment", FormState.fresh("enrolment"));
    }

    public FormState cancellation() {
        return typed.orFresh("cancellation", FormState.fresh("cancellation"));
    }

    /**
     * What was ticked, or else every tree that does not come yet; none once the day has come, since
     * who came then is said one by one.
     */
    public FormState many() {
        var fresh = FormState.fresh("many");
        return typed.orFresh(
                "many",
                roll.open()
                        ? fresh
                        : fresh.withAll("treeIds", trees.stream().map(Tree::id).toList()));
    }

    /** Where and when it is to be, as typed or as it is. */
    public FormState move() {
        return typed.orFresh("move", asItIs(session));
    }

    /** The form that moves a session, as it is opened afresh. */
    static FormState asItIs(Session session) {
        return FormState.fresh("move")
                .with("version", session.version())
                .with("heldOn", session.heldOn())
                .with("startsAt", session.startsAt())
                .with("endsAt", session.endsAt())
                .with("place", session.place())
                .withIfKnown("places", session.places());
    }

    /** What was typed, or else what is marked. */
    public FormState rollTyped() {
        return typed.orFresh("roll", marked(roll));
    }

    /** The form of who came, as it is marked. */
    static FormState marked(Roll roll) {
        var fresh = FormState.fresh("roll").with("version", roll.version());
        for (var line : roll.lines()) {
            var mark = line.mark();
            if (mark != null) {
                fresh = fresh.with("mark." + line.personId(), mark.presence());
            }
        }
        return fresh;
    }

    public Presence[] presences() {
        return Presence.values();
    }

    /** Whether something is said of every student already. */
    public boolean everybodyMarked() {
        return roll.lines().stream().allMatch(line -> line.mark() != null);
    }

    public String name(long personId) {
        return names.getOrDefault(personId, "");
    }

    public String label(long treeId) {
        return coming.getOrDefault(treeId, "");
    }
}
