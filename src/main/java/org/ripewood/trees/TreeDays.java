package org.ripewood.trees;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.people.Person;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.sites.SiteZones;

/**
 * Which day it is where trees stand, and up to which day their records may speak. A day begins at
 * each site by its own zone: where the server stands says nothing of the tree.
 *
 * <p>No reach is asked, and a tree that is not there has the server's day: a day is no secret.
 */
@ApplicationScoped
@Transactional
public class TreeDays {

    private final TreeRows trees;
    private final SiteZones zones;
    private final Today today;
    private final PeopleUnchecked people;

    TreeDays(TreeRows trees, SiteZones zones, Today today, PeopleUnchecked people) {
        this.trees = trees;
        this.zones = zones;
        this.today = today;
        this.people = people;
    }

    /** The day at a tree's site. */
    public LocalDate at(long treeId) {
        return latest(zonesIn(trees.zoneAt(treeId)));
    }

    /** The day at a site; the server's where there is no such site. */
    public LocalDate atSite(long siteId) {
        return latest(zones.of(siteId));
    }

    /**
     * The day where the trees of these keepers stand, the latest of them when there are several, so
     * that nothing on record of a tree lies ahead; the server's day when they keep none.
     */
    public LocalDate ofKeepers(Collection<Long> keeperIds) {
        return latest(where(keeperIds));
    }

    /**
     * Trees at the school of some keepers, and the day it is where their trees stand.
     *
     * @param trees by id, without what is said of them
     * @param on as {@link #ofKeepers} tells it
     */
    public record Kept(List<Tree> trees, LocalDate on) {

        public Kept {
            trees = List.copyOf(trees);
        }
    }

    /** The trees of these keepers and their day, in one query. */
    public Kept keptBy(Collection<Long> keeperIds) {
        if (keeperIds.isEmpty()) {
            return new Kept(List.of(), today.date());
        }
        var rows = trees.withZones(keeperIds);
        var here =
                rows.stream()
                        .map(row -> (TreeEntity) row[0])
                        .filter(tree -> tree.leftOn == null)
                        .map(TreeEntity::toTree)
                        .toList();
        var zonesThere = rows.stream().map(row -> (String) row[1]).distinct().toList();
        return new Kept(here, latest(zonesIn(zonesThere)));
    }

    /** The same of the students of a course. */
    public LocalDate ofCourse(long courseId) {
        return ofKeepers(people.members(courseId, Role.STUDENT).stream().map(Person::id).toList());
    }

    /** The last day a tree's record may speak of: the server's, or its site's where it is later. */
    public LocalDate last(long treeId) {
        return today.last(ofTree(treeId));
    }

    /** The same of a site. */
    public LocalDate lastAtSite(long siteId) {
        return today.last(zones.of(siteId));
    }

    /**
     * The last day on which something of a person may have been: the server's, that on the school's
     * own ground, or where a tree of theirs stands, whichever is later.
     */
    public LocalDate lastOfPerson(long personId) {
        var there = new HashSet<>(where(Set.of(personId)));
        there.addAll(zones.all());
        return today.last(there);
    }

    private List<ZoneId> where(Collection<Long> keeperIds) {
        return keeperIds.isEmpty() ? List.of() : zonesIn(trees.zonesOf(keeperIds));
    }

    private static List<ZoneId> zonesIn(List<String> names) {
        return names.stream().map(ZoneId::of).toList();
    }

    /** Asked row by row where lists come in, so tree and site are those of the transaction. */
    private List<ZoneId> ofTree(long treeId) {
        var tree = trees.findById(treeId);
        return tree == null ? List.of() : zones.of(tree.siteId);
    }

    private LocalDate latest(Collection<ZoneId> there) {
        return there.stream().map(today::in).max(Comparator.naturalOrder()).orElseGet(today::date);
    }
}
