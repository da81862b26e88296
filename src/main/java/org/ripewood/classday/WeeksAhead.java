package org.ripewood.classday;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.ripewood.boards.WorkFinder;
import org.ripewood.core.progress.ReadyWeeks;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.people.Courses;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeDays;
import org.ripewood.trees.TreesUnchecked;

/**
 * Counts the weeks ahead of a course in the background, some trees at a time, so that a school of a
 * thousand trees sees how far it is and no transaction is held all the while.
 */
@ApplicationScoped
class WeeksAhead {

    private static final int TREES_AT_A_TIME = 50;

    /** A count nobody came back for is forgotten after so long. */
    private static final Duration KEPT = Duration.ofMinutes(5);

    /** What makes two counts the same. */
    private record Asked(
            long personId,
            long courseId,
            LocalDate from,
            int weeks,
            LocalDate today,
            String rules) {}

    private final Courses courses;
    private final PeopleUnchecked peopleUnchecked;
    private final TreesUnchecked treesUnchecked;
    private final WorkFinder workFinder;
    private final CourseContent content;
    private final TreeDays treeDays;
    private final Map<Asked, WeeksCount> counts = new ConcurrentHashMap<>();

    /** One at a time: a count keeps a core busy, and the class must not wait for it. */
    private final ExecutorService worker =
            Executors.newSingleThreadExecutor(
                    task -> {
                        var thread = new Thread(task, "weeks-ahead");
                        thread.setDaemon(true);
                        return thread;
                    });

    WeeksAhead(
            Courses courses,
            PeopleUnchecked peopleUnchecked,
            TreesUnchecked treesUnchecked,
            WorkFinder workFinder,
            CourseContent content,
            TreeDays treeDays) {
        this.courses = courses;
        this.peopleUnchecked = peopleUnchecked;
        this.treesUnchecked = treesUnchecked;
        this.workFinder = workFinder;
        this.content = content;
        this.treeDays = treeDays;
    }

    @PreDestroy
    void stop() {
        worker.shutdownNow();
    }

    /**
     * The count, waited for.
     *
     * @param patience how long; when it is not through by then, how far it is
     */
    WeeksProgress ask(Actor actor, long courseId, LocalDate from, int weeks, Duration patience) {
        courses.get(actor, courseId);
        courses.requireRuns(actor, courseId, "what its trees could do");
        var now = treeDays.ofCourse(courseId);
        check(now, from, weeks);
        counts.values().removeIf(count -> count.isOlderThan(KEPT));
        var asked =
                new Asked(
                        actor.personId(), courseId, from, weeks, now, content.inForce().revision());
        var count = counts.computeIfAbsent(asked, any -> begin(actor, asked));
        try {
            return count.await(patience);
        } finally {
            if (count.over()) {
                counts.remove(asked, count);
            }
        }
    }

    private static void check(LocalDate first, LocalDate from, int weeks) {
        if (from.isBefore(first) || from.isAfter(first.plusYears(1))) {
            throw Refused.invalid(
                    "from",
                    "Expected a day from %s to %s; found %s."
                            .formatted(first, first.plusYears(1), from));
        }
        if (weeks < 1 || weeks > ReadyWeeks.MOST_WEEKS) {
            throw Refused.invalid(
                    "weeks",
                    "Expected 1 to %d weeks; found %d.".formatted(ReadyWeeks.MOST_WEEKS, weeks));
        }
    }

    private WeeksCount begin(Actor actor, Asked asked) {
        var students =
                peopleUnchecked.members(asked.courseId(), Role.STUDENT).stream()
                        .map(Person::id)
                        .toList();
        var ids =
                students.isEmpty()
                        ? List.<Long>of()
                        : treesUnchecked.ofKeepers(students).stream().map(Tree::id).toList();
        var count = new WeeksCount(ids.size());
        var inForce = content.inForce();
        worker.execute(() -> count.run(step -> count(actor, asked, ids, inForce, step)));
        return count;
    }

    private LessonWeeks count(
            Actor actor, Asked asked, List<Long> ids, Content inForce, WeeksCount.Step step) {
        var counting = new ReadyWeeks.Count(asked.from(), asked.weeks(), inForce.steps());
        for (int at = 0; at < ids.size(); at += TREES_AT_A_TIME) {
            var some = ids.subList(at, Math.min(ids.size(), at + TREES_AT_A_TIME));
            QuarkusTransaction.requiringNew()
                    .run(
                            () ->
                                    workFinder
                                            .outlooks(actor, asked.courseId(), some)
                                            .forEach(tree -> counting.add(tree.openings())));
            step.done(at + some.size());
        }
        return told(asked, ids.size(), inForce, counting.counted());
    }

    private static LessonWeeks told(Asked asked, int trees, Content inForce, ReadyWeeks counted) {
        return new LessonWeeks(
                asked.courseId(),
                counted.from(),
                counted.weeks(),
                trees,
                counted.rows().stream()
                        .filter(row -> inForce.techniques().containsKey(row.technique()))
                        .map(row -> told(counted, row, inForce))
                        .toList());
    }

    private static LessonWeeks.Row told(ReadyWeeks counted, ReadyWeeks.Row row, Content inForce) {
        var technique = inForce.technique(row.technique());
        int best = row.best();
        return new LessonWeeks.Row(
                technique,
                technique.lessons().stream().map(inForce::lesson).toList(),
                row.weeks(),
                row.unsaid(),
                best < 0 ? null : counted.from().plusWeeks(best));
    }
}
