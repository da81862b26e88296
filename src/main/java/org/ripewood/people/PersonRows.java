package org.ripewood.people;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.TypedQuery;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

    /** Roles come in the same statement, as most who ask for a person ask for them next. */
    public List<PersonEntity> byIds(Collection<Long> ids) {
        return ids.isEmpty()
                ? List.of()
                : list(
                        "select distinct p from PersonEntity p left join fetch p.roles"
                                + " where p.id in ?1",
                        ids);
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
                asked("p.id, count(*) over ()", words, " order by p.name, p.id", Object[].class)
                        .setFirstResult(page.page() * page.size())
                        .setMaxResults(page.size())
                        .getResultList();
        var ids = found.stream().map(row -> (Long) row[0]).toList();
        var all = found.isEmpty() ? countWith(words) : (Long) found.get(0)[1];
        return Paged.of(withRoles(ids), page, all);
    }

    /** Asked only where a page lies beyond the last. */
    private long countWith(String words) {
        return asked("count(*)", words, "", Long.class).getSingleResult();
    }

    private <T> TypedQuery<T> asked(String what, String words, String order, Class<T> as) {
        var query = "select " + what + " from PersonEntity p";
        if (words.isBlank()) {
            return getEntityManager().createQuery(query + order, as);
        }
        var stands =
                " where lower(p.name) like :words escape '!' or p.login like :words escape '!'";
        return getEntityManager()
                .createQuery(query + stands + order, as)
                .setParameter(
                        "words", "%" + asTheyStand(words.strip().toLowerCase(Locale.ROOT)) + "%");
    }

    /** Persons by name, with their roles in the same statement. */
    List<Person> withRoles(List<Long> ids) {
        return ids.isEmpty()
                ? List.of()
                : list(
                                "select distinct p from PersonEntity p left join fetch p.roles"
                                        + " where p.id in ?1 order by p.name, p.id",
                                ids)
                        .stream()
                        .map(PersonEntity::toRecord)
                        .toList();
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

    /**
     * @param reach ids of those within reach; null for everybody
     */
    Map<Long, String> namesKnownTo(Actor actor, @Nullable Collection<Long> reach) {
        var names = "select p.id, p.name from PersonEntity p";
        var asked =
                reach == null
                        ? getEntityManager().createQuery(names, Object[].class)
                        : getEntityManager()
                                .createQuery(
                                        names + " where p.id in ?2 or " + FELLOW, Object[].class)
                                .setParameter(1, actor.personId())
                                .setParameter(2, reach);
        return asked.getResultList().stream()
                .collect(Collectors.toMap(row -> (Long) row[0], row -> (String) row[1]));
    }

    /** Members of several courses in that role, by course and then by name, in one statement. */
    Map<Long, Set<PersonEntity>> membersOf(Collection<Long> courseIds, Role as) {
        var byCourse = new HashMap<Long, Set<PersonEntity>>();
        if (courseIds.isEmpty()) {
            return byCourse;
        }
        getEntityManager()
                .createQuery(
                        """
                        select m.courseId, p from MembershipEntity m
                        join PersonEntity p on p.id = m.personId left join fetch p.roles
                        where m.courseId in :courses and m.role = :role and m.leftOn is null
                        order by p.name, p.id""",
                        Object[].class)
                .setParameter("courses", courseIds)
                .setParameter("role", as)
                .getResultList()
                .forEach(
                        row ->
                                byCourse.computeIfAbsent((Long) row[0], id -> new LinkedHashSet<>())
                                        .add((PersonEntity) row[1]));
        return byCourse;
    }

    /** Whether a person belongs to a course in that role. */
    boolean isMember(long courseId, long personId, Role as) {
        return count(
                        "from PersonEntity p where p.id = ?2 and p.id in (select m.personId from"
                                + " MembershipEntity m where m.courseId = ?1 and m.role = ?3 and m.leftOn is null)",
                        courseId,
                        personId,
                        as)
                > 0;
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
