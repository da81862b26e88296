package org.ripewood.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ripewood.platform.Role;

/** What rooms ask of people whom they have already checked; doors never call it. */
@ApplicationScoped
@Transactional
public class PeopleUnchecked {

    private final PersonRows persons;
    private final CourseRows courses;

    PeopleUnchecked(PersonRows persons, CourseRows courses) {
        this.persons = persons;
        this.courses = courses;
    }

    /** A person by id; 404 when there is none. */
    public Person get(long personId) {
        return persons.require(personId).toRecord();
    }

    /** A person by the name they sign in with. */
    public Optional<Person> findByLogin(String login) {
        return persons.byLogin(login).map(PersonEntity::toRecord);
    }

    /** Courses a person belongs to in that role and that are not over by a day, latest first. */
    public List<Course> coursesNotOver(long personId, Role as, LocalDate by) {
        return courses.ofMember(personId, as).stream()
                .map(CourseEntity::toRecord)
                .filter(course -> !course.over(by))
                .toList();
    }

    /** Members of a course in that role, by name. */
    public List<Person> members(long courseId, Role as) {
        return persons.membersOf(courseId, as).stream().map(PersonEntity::toRecord).toList();
    }

    /** Members of several courses in that role, by course and then by name, in one statement. */
    public Map<Long, List<Person>> members(Collection<Long> courseIds, Role as) {
        var byCourse = new HashMap<Long, List<Person>>();
        persons.membersOf(courseIds, as)
                .forEach(
                        (course, members) ->
                                byCourse.put(
                                        course,
                                        members.stream().map(PersonEntity::toRecord).toList()));
        return byCourse;
    }
}
