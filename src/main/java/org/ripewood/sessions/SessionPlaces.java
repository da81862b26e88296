package org.ripewood.sessions;

import static java.util.Objects.requireNonNull;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hibernate.exception.ConstraintViolationException;
import org.jspecify.annotations.Nullable;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.people.Person;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreesUnchecked;

/**
 * The places of a session: who comes, at which bench, and who waits. A tree takes a place. Who asks
 * for one when all are taken waits, and moves up by itself as soon as one is free, unless the
 * session has begun. Called for a session nobody else can change meanwhile.
 */
@ApplicationScoped
class SessionPlaces {

    private final EnrolmentBook enrolments;
    private final WaitBook waits;
    private final PeopleUnchecked people;
    private final TreesUnchecked trees;
    private final Today today;

    SessionPlaces(
            EnrolmentBook enrolments,
            WaitBook waits,
            PeopleUnchecked people,
            TreesUnchecked trees,
            Today today) {
        this.enrolments = enrolments;
        this.waits = waits;
        this.people = people;
        this.trees = trees;
        this.today = today;
    }

    /**
     * A tree that asks for a place, with who comes with it.
     *
     * @param bench null for the lowest free number
     */
    record Asking(long personId, long treeId, @Nullable String bench) {}

    /**
     * Gives places to those who ask, in their order; those for whom there is none wait. Who comes
     * or waits already is passed over.
     *
     * @return whether anybody was added
     */
    boolean take(SessionEntity session, List<Asking> asking) {
        var id = requireNonNull(session.id);
        var coming = new ArrayList<>(enrolments.of(List.of(id)));
        var waiting = waits.of(id).stream().map(wait -> wait.treeId).collect(Collectors.toSet());
        var trees = coming.stream().map(one -> one.treeId).collect(Collectors.toSet());
        var added = false;
        for (var one : asking) {
            if (waiting.contains(one.treeId()) || !trees.add(one.treeId())) {
                continue;
            }
            added = true;
            if (session.hasPlaceFor(coming.size())) {
                coming.add(come(session, one, coming));
            } else {
                waits.persist(WaitEntity.waiting(id, one.personId(), one.treeId(), today.now()));
            }
        }
        flush();
        return added;
    }

    /**
     * Gives free places to those who wait longest. Whose tree left the school or who no longer
     * attends the course waits no more. Nobody moves up once the session has begun or is called
     * off.
     */
    void moveUp(SessionEntity session) {
        var id = requireNonNull(session.id);
        var waiting = ahead(session) ? waits.of(id) : List.<WaitEntity>of();
        if (waiting.isEmpty()) {
            return;
        }
        var coming = new ArrayList<>(enrolments.of(List.of(id)));
        var kept = treesOfCourse(session.courseId);
        for (var wait : waiting) {
            var tree = kept.get(wait.treeId);
            if (tree == null || tree.keeperId() != wait.personId) {
                wait.end(today.now());
            } else if (session.hasPlaceFor(coming.size())) {
                wait.end(today.now());
                coming.add(come(session, new Asking(wait.personId, wait.treeId, null), coming));
            }
        }
        flush();
    }

    /** Trees that may come: those of the course's students, by id. */
    Map<Long, Tree> treesOfCourse(long courseId) {
        var students = people.members(courseId, Role.STUDENT).stream().map(Person::id).toList();
        return students.isEmpty()
                ? Map.of()
                : trees.ofKeepers(students).stream()
                        .collect(Collectors.toMap(Tree::id, Function.identity()));
    }

    /** Whether a session is to be held and has not begun. */
    boolean ahead(SessionEntity session) {
        return session.ahead(today.date(), LocalTime.ofInstant(today.now(), today.zone()));
    }

    private EnrolmentEntity come(SessionEntity session, Asking one, List<EnrolmentEntity> coming) {
        var bench = one.bench() == null ? freeBench(coming) : one.bench();
        var enrolment =
                EnrolmentEntity.coming(
                        requireNonNull(session.id), one.personId(), one.treeId(), bench);
        enrolments.persist(enrolment);
        return enrolment;
    }

    private static String freeBench(List<EnrolmentEntity> coming) {
        return BenchNumbers.free(coming.stream().map(one -> one.bench).toList());
    }

    private void flush() {
        try {
            enrolments.flush();
        } catch (ConstraintViolationException quicker) {
            throw Refused.conflict(
                    "One of these trees was enrolled by somebody else just now.",
                    "Maybe open the session again and look who comes.");
        }
    }
}
