package org.ripewood.trees;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.CourseContent;
import org.ripewood.people.Courses;
import org.ripewood.people.People;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.people.Person;
import org.ripewood.people.Samples;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;

/** Trees within reach: which there are, whose they are and what is said of them. */
@ApplicationScoped
@Transactional
public class Trees {

    private static final String BY_LABEL = " order by label, id";

    private final TreeRows rows;
    private final TreesUnchecked unchecked;
    private final TreeKeepingRows keepings;
    private final People people;
    private final Courses courses;
    private final PeopleUnchecked peopleUnchecked;
    private final Samples samples;
    private final CourseContent content;
    private final SiteReach sites;
    private final WordsBook words;
    private final FormerKeepers formerKeepers;
    private final Reach reach;
    private final Days days;
    private final Today today;

    /** Once there is a tree it is not asked again. */
    private volatile boolean planted;

    Trees(
            TreeRows rows,
            TreesUnchecked unchecked,
            TreeKeepingRows keepings,
            People people,
            Courses courses,
            PeopleUnchecked peopleUnchecked,
            Samples samples,
            CourseContent content,
            SiteReach sites,
            WordsBook words,
            FormerKeepers formerKeepers,
            Reach reach,
            Days days,
            Today today) {
        this.rows = rows;
        this.unchecked = unchecked;
        this.keepings = keepings;
        this.people = people;
        this.courses = courses;
        this.peopleUnchecked = peopleUnchecked;
        this.samples = samples;
        this.content = content;
        this.sites = sites;
        this.words = words;
        this.formerKeepers = formerKeepers;
        this.reach = reach;
        this.days = days;
        this.today = today;
    }

    /** Enters a tree, at a site within reach. */
    public Tree enter(Actor actor, NewTree tree) {
        requireKeeper(actor, tree.keeperId());
        requireSpecies(tree.species());
        sites.requireForTree(actor, tree.siteId());
        days.requireHappenedAt("cameOn", tree.cameOn(), tree.siteId());
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

    /**
     * Trees at the school of those of these keepers whom the actor reaches, by id of tree, without
     * what is said of them.
     */
    public List<Tree> ofKeepers(Actor actor, Collection<Long> keeperIds) {
        var reachable = people.reachable(actor);
        var keepers = new HashSet<>(keeperIds);
        if (reachable != null) {
            keepers.retainAll(reachable);
        }
        return unchecked.ofKeepers(keepers);
    }

    /** What trees are called, by id, also those that left. A label is no secret. */
    public Map<Long, String> labels(Collection<Long> treeIds) {
        return unchecked.byIds(treeIds).stream().collect(Collectors.toMap(Tree::id, Tree::label));
    }

    /** Whether a tree is there and within reach. */
    public boolean reaches(Actor actor, long treeId) {
        return reach.includes(actor, treeId);
    }

    /** A tree within reach, and what the actor may know of who kept it; 404 otherwise. */
    public ReachedTree reached(Actor actor, long treeId) {
        var known = reach.known(actor, treeId);
        var former = known.former();
        return words.reached(known.tree(), former, formerKeepers.hidden(actor, former));
    }

    /** A tree within reach; 404 otherwise. */
    public Tree get(Actor actor, long treeId) {
        return reached(actor, treeId).tree();
    }

    /** What was said of a tree within reach before somebody said something else. */
    public List<EarlierWords> earlierWords(Actor actor, long treeId) {
        return words.earlier(actor, reach.tree(actor, treeId));
    }

    /**
     * Trees within reach by label; of one keeper when given, of the students of one course when
     * given. Those that left the school are not among them.
     */
    public Paged<Tree> list(
            Actor actor, @Nullable Long keeperId, @Nullable Long courseId, PageRequest page) {
        return list(actor, keeperId, courseId, false, page);
    }

    /** The same of trees that left the school. */
    public Paged<Tree> left(
            Actor actor, @Nullable Long keeperId, @Nullable Long courseId, PageRequest page) {
        return list(actor, keeperId, courseId, true, page);
    }

    private Paged<Tree> list(
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

    /**
     * Goes on only when a tree is within reach (404) and has not left the school (409): whatever
     * writes of a tree asks this first.
     */
    public void requireHere(Actor actor, long treeId) {
        reach.requireHere(actor, treeId);
    }

    /** The same of a tree that may be out of reach, of which nothing is said then. */
    public void refuseLeft(Actor actor, long treeId) {
        if (reach.includes(actor, treeId)) {
            reach.requireHere(actor, treeId);
        }
    }

    /**
     * Former keepers of a tree whom the actor does not reach: neither their names nor what they
     * wrote in their own words is for the actor.
     */
    public Set<Long> hiddenKeepers(Actor actor, long treeId) {
        return formerKeepers.hidden(actor, reach.known(actor, treeId).former());
    }

    /** Names on a tree's record, as the actor may read them. */
    public Map<Long, String> names(Actor actor, long treeId, Collection<Long> personIds) {
        return formerKeepers.names(hiddenKeepers(actor, treeId), personIds);
    }

    /** The same of a tree that was just read. */
    public Map<Long, String> names(ReachedTree reached, Collection<Long> personIds) {
        return formerKeepers.names(reached.hidden(), personIds);
    }

    /**
     * Changes label and site (to one within reach), and takes what is said anew of its origin and
     * in its note beside what was said before. Who does not read a former keeper's words leaves
     * them by saying nothing. 412 when the version is not the current one.
     */
    public Tree change(Actor actor, long treeId, long version, NewTree tree) {
        // locked first, so that of two who change it at once the second hears of the first
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
            courses.get(actor, courseId);
            var students =
                    peopleUnchecked.members(courseId, Role.STUDENT).stream()
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
        if (samples.isMadeUp(keeperId)) {
            throw Refused.invalid(
                    "keeperId",
                    "expected a person of the school, found one made up for the sample course");
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

    /** Whether any tree was ever entered at the school, whoever keeps it, but for made-up ones. */
    public boolean isPlanted() {
        if (!planted) {
            planted = rows.countOwn() > 0;
        }
        return planted;
    }
}
