package org.ripewood.news;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.CourseContent;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;

/**
 * Tells what others did to one's own trees, to the trees of students one teaches, and to the dates
 * of one's courses, since one's last visit; from the records there are.
 */
@ApplicationScoped
@Transactional
public class News {

    /** Lines that are told; more are counted. */
    public static final int MOST = 5;

    /** More than these are not counted either. */
    public static final int COUNTED = 50;

    /** What is older is told by the pages it is about alone (common practice, no source). */
    static final Duration NEW_FOR = Duration.ofDays(60);

    private final VisitRows rows;
    private final CourseContent content;
    private final Today today;

    News(VisitRows rows, CourseContent content, Today today) {
        this.rows = rows;
        this.content = content;
        this.today = today;
    }

    /**
     * What happened since the actor's last visit, and notes that they came. Nothing on the first
     * visit.
     *
     * @param session they come by; null for none
     */
    public NewsTold visit(Actor actor, @Nullable Long session) {
        var now = today.moment();
        var person = actor.personId();
        var read = rows.read(person, session, now.minus(NEW_FOR), COUNTED);
        var before = read.visit();
        if (before == null) {
            rows.begin(person, Visit.first(now));
            return new NewsTold(now, List.of(), 0);
        }
        var visit = before.at(now, read.signedIn());
        if (!visit.equals(before)) {
            rows.moveOn(person, visit);
        }
        var fresh = read.rows().stream().filter(row -> !row.at().isBefore(visit.since())).toList();
        var teller = new NewsTeller(content.inForce());
        return new NewsTold(
                visit.since(),
                fresh.stream().limit(MOST).map(teller::tell).toList(),
                Math.max(0, fresh.size() - MOST));
    }
}
