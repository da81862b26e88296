package org.ripewood.sessions;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.stream.Collectors;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.trees.TreeHandedOver;
import org.ripewood.trees.TreeLeft;
import org.ripewood.trees.Trees;

/**
 * What becomes of a tree's places in classes ahead when it gets another keeper or leaves. Written
 * in the transaction in which that happens.
 *
 * <p>A place is a person with a tree. It goes along to a new keeper who attends the course, and is
 * given up otherwise: whoever handed the tree over comes without it only with another tree. Classes
 * that have begun stay as they are, since who came is part of the record.
 */
@ApplicationScoped
class TreePlaces {

    private final SessionBook sessions;
    private final EnrolmentBook enrolments;
    private final WaitBook waits;
    private final SessionPlaces places;
    private final PeopleUnchecked peopleUnchecked;
    private final Trees trees;
    private final Today today;

    TreePlaces(
            SessionBook sessions,
            EnrolmentBook enrolments,
            WaitBook waits,
            SessionPlaces places,
            PeopleUnchecked peopleUnchecked,
            Trees trees,
            Today today) {
        this.sessions = sessions;
        this.enrolments = enrolments;
        this.waits = waits;
        this.places = places;
        this.peopleUnchecked = peopleUnchecked;
        this.trees = trees;
        this.today = today;
    }

    List<Session> ahead(Actor actor, long treeId) {
        trees.get(actor, treeId);
        var coming =
                enrolments.ofTree(treeId).stream()
                        .map(enrolment -> enrolment.sessionId)
                        .collect(Collectors.toSet());
        return sessions.byIds(coming).stream()
                .filter(places::ahead)
                .map(session -> session.told(List.of()))
                .toList();
    }

    void follow(@Observes TreeHandedOver handed) {
        for (var place : enrolments.ofTree(handed.treeId())) {
            var session = sessions.findById(place.sessionId, LockModeType.PESSIMISTIC_WRITE);
            if (places.ahead(session)) {
                giveUp(session, place);
                if (attends(session, handed.keeperId())) {
                    enrolments.persist(
                            EnrolmentEntity.coming(
                                    place.sessionId,
                                    handed.keeperId(),
                                    handed.treeId(),
                                    place.bench));
                }
                sessions.flush();
                places.moveUp(session);
            }
        }
        for (var wait : waits.ofTree(handed.treeId())) {
            var session = sessions.findById(wait.sessionId, LockModeType.PESSIMISTIC_WRITE);
            if (places.ahead(session)) {
                endWait(session, wait);
                if (attends(session, handed.keeperId())) {
                    waits.persist(
                            WaitEntity.waiting(
                                    wait.sessionId,
                                    handed.keeperId(),
                                    handed.treeId(),
                                    wait.since));
                }
            }
        }
        sessions.flush();
    }

    void giveUp(@Observes TreeLeft left) {
        for (var place : enrolments.ofTree(left.treeId())) {
            var session = sessions.findById(place.sessionId, LockModeType.PESSIMISTIC_WRITE);
            if (places.ahead(session)) {
                giveUp(session, place);
                places.moveUp(session);
            }
        }
        for (var wait : waits.ofTree(left.treeId())) {
            var session = sessions.findById(wait.sessionId, LockModeType.PESSIMISTIC_WRITE);
            if (places.ahead(session)) {
                endWait(session, wait);
            }
        }
    }

    /** Written at once: a tree has one place in a class at a time. */
    private void giveUp(SessionEntity session, EnrolmentEntity place) {
        place.withdraw(today.now());
        session.changedAt = today.now();
        enrolments.flush();
    }

    private void endWait(SessionEntity session, WaitEntity wait) {
        wait.end(today.now());
        session.changedAt = today.now();
        waits.flush();
    }

    private boolean attends(SessionEntity session, long personId) {
        return peopleUnchecked.members(session.courseId, Role.STUDENT).stream()
                .anyMatch(member -> member.id() == personId);
    }
}
