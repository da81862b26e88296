package org.ripewood.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;

/**
 * Which courses and which people are made up. It is no secret: whoever sees the course, the person
 * or a tree of theirs is told so on its page.
 */
@ApplicationScoped
@Transactional
public class Samples {

    private final SampleRows rows;
    private final SamplePersonRows people;
    private final PersonRows persons;
    private final Today today;

    Samples(SampleRows rows, SamplePersonRows people, PersonRows persons, Today today) {
        this.rows = rows;
        this.people = people;
        this.persons = persons;
        this.today = today;
    }

    /** Sample courses by age. There is one at most, unless another came in with a record's file. */
    public List<Sample> all() {
        return rows.list("order by addedAt, courseId").stream()
                .map(SampleCourseEntity::toRecord)
                .toList();
    }

    /** The same, once nobody else is adding one; for the rest of the transaction nobody does. */
    public List<Sample> allThereWillBe() {
        rows.waitForOthers();
        return all();
    }

    /** A sample course, which nobody else throws away meanwhile. */
    public Optional<Sample> lock(long courseId) {
        return Optional.ofNullable(rows.findById(courseId, LockModeType.PESSIMISTIC_WRITE))
                .map(SampleCourseEntity::toRecord);
    }

    /** Ids of the people made up for a sample course. */
    public Set<Long> peopleOf(long courseId) {
        return people.ofCourse(courseId).stream()
                .map(one -> one.personId)
                .collect(Collectors.toSet());
    }

    /** Ids of everybody who is made up. */
    public Set<Long> madeUp() {
        return people.listAll().stream().map(one -> one.personId).collect(Collectors.toSet());
    }

    public boolean isMadeUp(long personId) {
        return people.findByIdOptional(personId).isPresent();
    }

    /**
     * Marks what was just entered as a sample. From now on nobody can sign in as one of these
     * people, and no tree comes to them or goes from them.
     *
     * @param siteId the site made for it; null for none
     */
    public void mark(
            Actor by, long courseId, @Nullable Long siteId, Collection<Long> madeUpPeople) {
        var course = new SampleCourseEntity();
        course.courseId = courseId;
        course.siteId = siteId;
        course.byId = by.personId();
        course.addedAt = today.now();
        rows.persist(course);
        for (var personId : madeUpPeople) {
            var person = new SamplePersonEntity();
            person.personId = personId;
            person.courseId = courseId;
            people.persist(person);
            persons.require(personId).active = false;
        }
        rows.flush();
    }
}
