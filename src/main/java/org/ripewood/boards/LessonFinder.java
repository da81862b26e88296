package org.ripewood.boards;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import org.ripewood.people.Courses;
import org.ripewood.people.People;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.standing.SubjectGatherer;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreesUnchecked;

/** Finds which lessons trees wait for: a student's own, or those of a course. */
@ApplicationScoped
@Transactional
public class LessonFinder {

    private final People people;
    private final PeopleUnchecked peopleUnchecked;
    private final Courses courses;
    private final TreesUnchecked treesUnchecked;
    private final SubjectGatherer gatherer;

    LessonFinder(
            People people,
            PeopleUnchecked peopleUnchecked,
            Courses courses,
            TreesUnchecked treesUnchecked,
            SubjectGatherer gatherer) {
        this.people = people;
        this.peopleUnchecked = peopleUnchecked;
        this.courses = courses;
        this.treesUnchecked = treesUnchecked;
        this.gatherer = gatherer;
    }

    /**
     * Which lessons a person's trees wait for, the one that frees most first; 404 out of reach.
     * Nothing for who is no student: only students have skills to show.
     */
    public List<LessonNeed> ofPerson(Actor actor, long personId, LocalDate on) {
        if (!people.reaches(actor, personId)) {
            throw Refused.notFound("person", personId);
        }
        return of(List.of(peopleUnchecked.get(personId)), on);
    }

    /** The same over all students of a course; for those who run it. */
    public List<LessonNeed> ofCourse(Actor actor, long courseId, LocalDate on) {
        courses.get(actor, courseId);
        courses.requireRuns(actor, courseId, "its lessons");
        return of(peopleUnchecked.members(courseId, Role.STUDENT), on);
    }

    private List<LessonNeed> of(Collection<Person> students, LocalDate on) {
        var keepers = students.stream().map(Person::id).toList();
        var kept = keepers.isEmpty() ? List.<Tree>of() : treesUnchecked.ofKeepers(keepers);
        var gathered = gatherer.of(kept, students, on);
        return gathered.isEmpty() ? List.of() : LessonsNext.of(gathered.get(0).content(), gathered);
    }
}
