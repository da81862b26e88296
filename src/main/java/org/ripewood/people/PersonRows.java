package org.ripewood.people;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;

/** The persons as they are kept. */
@ApplicationScoped
public class PersonRows implements PanacheRepositoryBase<PersonEntity, Long> {

    public PersonEntity require(long personId) {
        return findByIdOptional(personId).orElseThrow(() -> Refused.notFound("person", personId));
    }

    /** Logins are kept in small letters; how a person types theirs does not matter. */
    public Optional<PersonEntity> byLogin(String login) {
        return find("login", normal(login)).firstResultOptional();
    }

    public static String normal(String login) {
        return login.strip().toLowerCase(Locale.ROOT);
    }

    public List<PersonEntity> byIds(Collection<Long> ids) {
        return ids.isEmpty() ? List.of() : list("id in ?1", ids);
    }

    /** Ids by login, without the persons themselves; of everybody when null is asked for. */
    public Map<String, Long> logins(@Nullable Collection<Long> ids) {
        var query = "select p.login, p.id from PersonEntity p";
        var asked =
                ids == null
                        ? getEntityManager().createQuery(query, Object[].class)
                        : getEntityManager()
                                .createQuery(query + " where p.id in :ids", Object[].class)
                                .setParameter("ids", ids);
        return asked.getResultList().stream()
                .collect(Collectors.toMap(row -> (String) row[0], row -> (Long) row[1]));
    }

    /** Of everybody, or of those in whose name or login the words stand, however written. */
    public Paged<Person> page(PageRequest page, String words) {
        var found =
                words.isBlank()
                        ? find("order by name, id")
                        : find(
                                "lower(name) like ?1 escape '!' or login like ?1 escape '!'"
                                        + " order by name, id",
                                "%" + asTheyStand(words.strip().toLowerCase(Locale.ROOT)) + "%");
        var items = found.page(page.page(), page.size()).stream().map(PersonEntity::toRecord);
        return Paged.of(items.toList(), page, found.count());
    }

    /** Marks that stand for any letters are looked for as the marks they are. */
    private static String asTheyStand(String words) {
        return words.replaceAll("[!%_]", "!$0");
    }

    private static final String FELLOW =
            "p.active = true and p.id in (select m.personId from MembershipEntity m where m.courseId"
                    + " in (select o.courseId from MembershipEntity o where o.personId = ?1 and"
                    + " o.leftOn is null) and m.leftOn is null)";

    public List<PersonEntity> fellowsOf(Actor actor) {
        return actor.is(Role.REGISTRAR)
                ? list("active = true order by name, id")
                : list(
                        "from PersonEntity p where " + FELLOW + " order by p.name, p.id",
                        actor.personId());
    }

    public boolean isFellow(Actor actor, long personId) {
        return actor.is(Role.REGISTRAR)
                ? count("id = ?1 and active = true", personId) > 0
                : count(
                                "from PersonEntity p where " + FELLOW + " and p.id = ?2",
                                actor.personId(),
                                personId)
                        > 0;
    }

    public List<PersonEntity> membersOf(long courseId, Role as) {
        return list(
                "from PersonEntity p where p.id in (select m.personId from MembershipEntity m"
                        + " where m.courseId = ?1 and m.role = ?2 and m.leftOn is null) order by p.name, p.id",
                courseId,
                as);
    }
}
