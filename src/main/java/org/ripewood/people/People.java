package org.ripewood.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;

/** The people of the school, as far as somebody may know of them, and whose trees they may see. */
@ApplicationScoped
@Transactional
public class People {

    private final PersonRows persons;
    private final Reach reach;

    People(PersonRows persons, Reach reach) {
        this.persons = persons;
        this.reach = reach;
    }

    /** A person within reach, oneself included; 404 otherwise. */
    public Person get(Actor actor, long personId) {
        if (!reaches(actor, personId)) {
            throw Refused.notFound("person", personId);
        }
        return persons.require(personId).toRecord();
    }

    /** What a person is called; 404 when there is none. A name is no secret. */
    public String name(long personId) {
        return persons.require(personId).name;
    }

    /** Names by id, in one query; unknown ids are absent. */
    public Map<Long, String> names(Collection<Long> personIds) {
        return persons.byIds(personIds).stream()
                .collect(Collectors.toMap(person -> person.id, person -> person.name));
    }

    /** A person by the name they sign in with; registrars only. */
    public Optional<Person> findByLogin(Actor actor, String login) {
        actor.require(Role.REGISTRAR, "look people up by the name they sign in with");
        return persons.byLogin(login).map(PersonEntity::toRecord);
    }

    /**
     * Everybody, by name; registrars only.
     *
     * @param words that stand in the name or the login, in any case of letters; blank for everybody
     */
    public Paged<Person> everybody(Actor actor, PageRequest page, String words) {
        actor.require(Role.REGISTRAR, "list everybody");
        return persons.page(page, words);
    }

    /** PersonRows whose trees the actor may see, by login. */
    public Map<String, Long> loginsInReach(Actor actor) {
        return persons.logins(reach.of(actor));
    }

    /**
     * Who may sign in and belongs to a course the actor belongs to, by name; for a registrar
     * everybody who may sign in.
     */
    public List<Person> fellows(Actor actor) {
        return persons.fellowsOf(actor).stream().map(PersonEntity::toRecord).toList();
    }

    /**
     * Names of those whom the actor may look up, by id, in one query: fellows, and whoever is
     * within reach; for a registrar everybody, those who may not sign in any more among them.
     */
    public Map<Long, String> known(Actor actor) {
        return persons.namesKnownTo(actor, reach.of(actor));
    }

    /** Whether a person is among those whom the actor may look up. */
    public boolean mayLookUp(Actor actor, long personId) {
        return reaches(actor, personId) || isFellow(actor, personId);
    }

    /**
     * A person whom the actor may look up, as {@link #known} says; 404 otherwise. What may be told
     * of one who is not within reach is the name and what they are at the school.
     */
    public Person lookUp(Actor actor, long personId) {
        if (!mayLookUp(actor, personId)) {
            throw Refused.notFound("person", personId);
        }
        return persons.require(personId).toRecord();
    }

    /** Whether a person is among the actor's {@link #fellows}. */
    public boolean isFellow(Actor actor, long personId) {
        return persons.isFellow(actor, personId);
    }

    /**
     * Whether the actor may see that person's trees: their own, as instructor of a course the
     * person attends, or as registrar.
     */
    public boolean reaches(Actor actor, long personId) {
        return reach.includes(actor, personId);
    }

    /**
     * Students of every course the actor teaches, their own id included; for a registrar null,
     * meaning everybody.
     */
    public @Nullable List<Long> reachable(Actor actor) {
        return reach.of(actor);
    }
}
