package org.ripewood.assess;

import jakarta.enterprise.context.ApplicationScoped;
import org.ripewood.people.People;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.trees.Trees;

/** Who may judge what, and who may read it. */
@ApplicationScoped
class JudgementReach {

    private final Trees trees;
    private final People people;
    private final PeopleUnchecked peopleUnchecked;

    JudgementReach(Trees trees, People people, PeopleUnchecked peopleUnchecked) {
        this.trees = trees;
        this.people = people;
        this.peopleUnchecked = peopleUnchecked;
    }

    /** Goes on for those who reach the tree or the student; 404 for everybody else. */
    void require(Actor actor, Judged of) {
        if (of.isTree()) {
            trees.get(actor, of.id());
        } else if (!people.reaches(actor, of.id())) {
            throw Refused.notFound("person", of.id());
        }
    }

    /** Goes on unless it is a tree that left the school: then nothing is written of it. */
    void requireHere(Actor actor, Judged of) {
        if (of.isTree()) {
            trees.requireHere(actor, of.id());
        }
    }

    /** Goes on for instructors who reach it; nobody judges their own skill. */
    void requireJudge(Actor actor, Judged of) {
        actor.require(Role.INSTRUCTOR, "judge by a rubric");
        require(actor, of);
        if (of.isTree()) {
            return;
        }
        if (of.id() == actor.personId()) {
            throw Refused.forbidden("Nobody judges their own skill.");
        }
        if (!peopleUnchecked.get(of.id()).roles().contains(Role.STUDENT)) {
            throw Refused.conflict("Person %d is not a student.".formatted(of.id()), null);
        }
    }

    /** Whether somebody reaches it. */
    boolean reaches(Actor actor, Judged of) {
        return of.isTree() ? trees.reaches(actor, of.id()) : people.reaches(actor, of.id());
    }
}
