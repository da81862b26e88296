package org.ripewood.trees;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.accounts.People;
import org.ripewood.course.CourseContent;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;

/** Which trees there are and whose they are. */
@ApplicationScoped
public class TreeBook {

    private static final String BY_LABEL = " order by label, id";

    private final TreeRows rows;
    private final TreeKeepingRows keepings;
    private final People people;
    private final CourseContent content;
    private final SiteReach sites;
    private final WordsBook words;
    private final Reach reach;
    private final Days days;
    private final Today today;

    TreeBook(
            TreeRows rows,
            TreeKeepingRows keepings,
            People people,
            CourseContent content,
            SiteReach sites,
            WordsBook words,
            Reach reach,
            Days days,
            Today today) {
        this.rows = rows;
        this.keepings = keepings;
        this.people = people;
        this.content = content;
        this.sites = sites;
        this.words = words;
        this.reach = reach;
        this.days = days;
        this.today = today;
    }

    public Tree enter(Actor actor, NewTree tree) {
        requireKeeper(actor, tree.keeperId());
        requireSpecies(tree.species());
        sites.requireForTree(actor, tree.siteId());
        days.requireHappened("cameOn", tree.cameOn());
        var row = new TreeEntity();
        row.label = tree.label();
        row.species = tree.species();
        row.keeperId = tree.keeperId();
        row.siteId = tree.siteId();
        row.cameOn = tree.cameOn();
        row.origin = tree.origin();
        row.note = tree.note();
        row.byId = actor.personId();
        row.recordedAt = today.now();
        rows.persist(row);
        keepings.persist(keeping(row));
        return words.told(actor, row);
    }

    public Paged<Tree> list(
            Actor actor,
            @Nullable Long keeperId,
            @Nullable Long courseId,
            boolean left,
            PageRequest page) {
        var keepers = keepers(actor, keeperId, courseId);
        if (keepers != null && keepers.isEmpty()) {
            return Paged.of(List.of(), page, 0);
        }
        var query =
                keepers == null
                        ? rows.find((left ? TreeRows.ALL_LEFT : TreeRows.HERE) + BY_LABEL)
                        : rows.find(
                                "keeperId in ?1 and "
                                        + (left ? TreeRows.LEFT : TreeRows.HERE)
                                        + BY_LABEL,
                                keepers);
        var found = query.page(page.page(), page.size()).list();
        return Paged.of(words.told(actor, found), page, query.count());
    }

    public List<Tree> ofKeepers(Collection<Long> keeperIds) {
        if (keeperIds.isEmpty()) {
            return List.of();
        }
        return rows
                .list("keeperId in ?1 and " + TreeRows.HERE + " order by id", Set.copyOf(keeperIds))
                .stream()
                .map(TreeEntity::toTree)
                .toList();
    }

    public Map<Long, String> labels(Collection<Long> treeIds) {
        return treeIds.isEmpty()
                ? Map.of()
                : rows.list("id in ?1", Set.copyOf(treeIds)).stream()
                        .collect(Collectors.toMap(tree -> tree.id, tree -> tree.label));
    }

    /** Locked first, so that of two who change it at once the second hears of the first. */
    public Tree change(Actor actor, long treeId, long version, NewTree tree) {
        var row = rows.findById(treeId, LockModeType.PESSIMISTIC_WRITE);
        reach.requireHere(actor, treeId);
        if (row.version != version) {
            throw Refused.stale("tree");
        }
        requireUnchanged("species", row.species, tree.species());
        requireUnchanged("keeperId", row.keeperId, tree.keeperId());
        requireUnchanged("cameOn", row.cameOn, tree.cameOn());
        if (row.siteId != tree.siteId()) {
            sites.requireForTree(actor, tree.siteId());
        }
        row.label = tree.label();
        row.siteId = tree.siteId();
        words.say(actor, row, tree.origin(), tree.note());
        rows.flush();
        return words.told(actor, row);
    }

    /** Whose trees are asked for; null for everybody's. */
    private @Nullable Set<Long> keepers(
            Actor actor, @Nullable Long keeperId, @Nullable Long courseId) {
        var reachable = people.reachable(actor);
        var keepers = reachable == null ? null : new HashSet<>(reachable);
        if (courseId != null) {
            people.getCourse(actor, courseId);
            var students =
                    people.members(courseId, Role.STUDENT).stream()
                            .map(Person::id)
                            .collect(Collectors.toCollection(HashSet::new));
            if (keepers != null) {
                students.retainAll(keepers);
            }
            keepers = students;
        }
        if (keeperId == null) {
            return keepers;
        }
        if (!people.reaches(actor, keeperId)) {
            throw Refused.notFound("person", keeperId);
        }
        return keepers == null || keepers.contains(keeperId) ? Set.of(keeperId) : Set.of();
    }

    /** A registrar reaches everybody, so whether there is such a person is asked as well. */
    private void requireKeeper(Actor actor, long keeperId) {
        if (!people.reaches(actor, keeperId) || people.names(List.of(keeperId)).isEmpty()) {
            throw Refused.notFound("person", keeperId);
        }
    }

    private void requireSpecies(String code) {
        var known = content.inForce().species().keySet();
        if (!known.contains(code)) {
            throw Refused.invalid(
                    "species",
                    "there is no species “%s” in the course content.%s"
                            .formatted(code, Suggestion.maybe(known, code)));
        }
    }

    private static void requireUnchanged(String field, Object is, Object asked) {
        if (!is.equals(asked)) {
            throw Refused.invalid(
                    field, "cannot be changed here; it is %s, found %s".formatted(is, asked));
        }
    }

    private static TreeKeepingEntity keeping(TreeEntity tree) {
        var keeping = new TreeKeepingEntity();
        keeping.treeId = tree.id;
        keeping.keeperId = tree.keeperId;
        keeping.since = tree.cameOn;
        keeping.byId = tree.byId;
        keeping.recordedAt = tree.recordedAt;
        return keeping;
    }
}
