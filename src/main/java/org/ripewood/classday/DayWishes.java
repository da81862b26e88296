package org.ripewood.classday;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Map;
import org.ripewood.core.bench.TreeWork;
import org.ripewood.course.CourseContent;
import org.ripewood.people.Courses;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.sessions.Sessions;
import org.ripewood.trees.Trees;

/** Takes down what instructors wish for the trees of a class day. */
@ApplicationScoped
class DayWishes {

    private final Sessions sessions;
    private final Courses courses;
    private final Trees trees;
    private final CourseContent content;
    private final WishBook book;
    private final Today today;

    DayWishes(
            Sessions sessions,
            Courses courses,
            Trees trees,
            CourseContent content,
            WishBook book,
            Today today) {
        this.sessions = sessions;
        this.courses = courses;
        this.trees = trees;
        this.content = content;
        this.book = book;
        this.today = today;
    }

    void say(Actor actor, long sessionId, NewDayWish wish) {
        var session = sessions.get(actor, sessionId);
        courses.requireRuns(actor, session.courseId(), "the plan of its sessions");
        trees.refuseLeft(actor, wish.treeId());
        if (session.enrolments().stream().noneMatch(one -> one.treeId() == wish.treeId())) {
            throw Refused.invalid(
                    "treeId", "Tree %d does not come to this session.".formatted(wish.treeId()));
        }
        var techniques = content.inForce().techniques().keySet();
        if (!techniques.contains(wish.technique())) {
            throw Refused.invalid(
                    "technique",
                    "There is no technique “%s”.".formatted(wish.technique())
                            + Suggestion.maybe(techniques, wish.technique()));
        }
        var before = book.of(sessionId).getOrDefault(wish.treeId(), Map.of());
        long pinned = before.values().stream().filter(said -> said == DayWish.PIN).count();
        if (wish.wish() == DayWish.PIN
                && before.get(wish.technique()) != DayWish.PIN
                && pinned >= TreeWork.MOST_PINNED) {
            throw Refused.conflict(
                    "%d pieces of work are pinned for this tree already."
                            .formatted(TreeWork.MOST_PINNED),
                    "Maybe take one of them back.");
        }
        var said = new DayWishEntity();
        said.sessionId = sessionId;
        said.treeId = wish.treeId();
        said.technique = wish.technique();
        said.wish = wish.wish();
        said.saidBy = actor.personId();
        said.saidAt = today.now();
        book.persist(said);
    }
}
