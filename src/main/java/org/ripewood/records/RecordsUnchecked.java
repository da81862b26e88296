package org.ripewood.records;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hibernate.jpa.HibernateHints;
import org.ripewood.people.People;
import org.ripewood.sites.Site;
import org.ripewood.sites.Sites;
import org.ripewood.trees.FormerKeepers;
import org.ripewood.trees.ReachedTree;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreesUnchecked;

/**
 * Reads the records of many trees at once: one query a table, however many trees. For rooms that
 * have checked whose trees they are; doors never call it.
 */
@ApplicationScoped
@Transactional
public class RecordsUnchecked {

    private final TreesUnchecked trees;
    private final Sites sites;
    private final ObservationRows observations;
    private final WoundRows wounds;
    private final BranchRows branches;
    private final ContainerStayRows containers;
    private final WorkDoneRows works;
    private final People people;
    private final FormerKeepers formerKeepers;

    RecordsUnchecked(
            TreesUnchecked trees,
            Sites sites,
            ObservationRows observations,
            WoundRows wounds,
            BranchRows branches,
            ContainerStayRows containers,
            WorkDoneRows works,
            People people,
            FormerKeepers formerKeepers) {
        this.trees = trees;
        this.sites = sites;
        this.observations = observations;
        this.wounds = wounds;
        this.branches = branches;
        this.containers = containers;
        this.works = works;
        this.people = people;
        this.formerKeepers = formerKeepers;
    }

    /** The records of these trees on a day; ids of no tree are passed over. */
    public List<TreeRecord> on(Set<Long> treeIds, LocalDate on) {
        return of(trees.byIds(treeIds), on);
    }

    /** The records of trees that were just read. */
    public List<TreeRecord> of(List<Tree> found, LocalDate on) {
        return found.isEmpty()
                ? List.of()
                : read(found, formerKeepers.ofTrees(found), places(found), on);
    }

    /** The record of a tree that was just read. */
    public TreeRecord of(ReachedTree reached, LocalDate on) {
        var trees = List.of(reached.tree());
        return of(reached, Objects.requireNonNull(places(trees).get(reached.tree().siteId())), on);
    }

    /** The same at its site, which was just read. */
    public TreeRecord of(ReachedTree reached, Site site, LocalDate on) {
        var tree = reached.tree();
        return read(
                        List.of(tree),
                        Map.of(tree.id(), reached.formerKeepers()),
                        Map.of(site.id(), site),
                        on)
                .get(0);
    }

    private Map<Long, Site> places(List<Tree> found) {
        return sites.byIds(found.stream().map(Tree::siteId).collect(Collectors.toSet()));
    }

    private List<TreeRecord> read(
            List<Tree> found, Map<Long, Set<Long>> former, Map<Long, Site> places, LocalDate on) {
        var treeIds = found.stream().map(Tree::id).collect(Collectors.toSet());
        var seen = observations(treeIds, on);
        var seenByTree = byTree(seen, Observation::treeId);
        var woundsByTree = byTree(wounds(treeIds, on, seen), Wound::treeId);
        var branchesByTree = byTree(branches(treeIds, on, seen), Branch::treeId);
        var containersByTree = byTree(containers(treeIds, on), ContainerStay::treeId);
        var worksByTree = byTree(works(treeIds, on), WorkDone::treeId);
        var names = names(seen);
        return found.stream()
                .map(
                        tree ->
                                new TreeRecord(
                                        tree,
                                        Objects.requireNonNull(places.get(tree.siteId())),
                                        on,
                                        seenByTree.getOrDefault(tree.id(), List.of()),
                                        woundsByTree.getOrDefault(tree.id(), List.of()),
                                        branchesByTree.getOrDefault(tree.id(), List.of()),
                                        containersByTree.getOrDefault(tree.id(), List.of()),
                                        worksByTree.getOrDefault(tree.id(), List.of()),
                                        named(names, former.getOrDefault(tree.id(), Set.of()))))
                .toList();
    }

    private List<Observation> observations(Set<Long> ids, LocalDate on) {
        var standing = ofTrees("observedOn") + " and " + ObservationRows.IN_FORCE;
        return read(observations, standing, ids, on).stream()
                .map(ObservationEntity::toObservation)
                .toList();
    }

    private List<Wound> wounds(Set<Long> ids, LocalDate on, List<Observation> seen) {
        var readings =
                seen.stream()
                        .filter(reading -> reading.woundId() != null)
                        .collect(Collectors.groupingBy(Observation::woundId));
        return read(wounds, ofTrees("madeOn"), ids, on).stream()
                .map(row -> row.toWound(readings.getOrDefault(row.id, List.of())))
                .toList();
    }

    private List<Branch> branches(Set<Long> ids, LocalDate on, List<Observation> seen) {
        var entered = "treeId in ?1 and enteredOn <= ?2 order by id";
        var readings = Branches.byBranch(seen);
        return read(branches, entered, ids, on).stream()
                .map(row -> Branches.told(row, readings.getOrDefault(row.id, List.of())))
                .toList();
    }

    private List<ContainerStay> containers(Set<Long> ids, LocalDate on) {
        return read(containers, ofTrees("since"), ids, on).stream()
                .map(ContainerStayEntity::toStay)
                .toList();
    }

    private List<WorkDone> works(Set<Long> ids, LocalDate on) {
        return read(works, ofTrees("doneOn"), ids, on).stream()
                .map(WorkDoneEntity::toWorkDone)
                .toList();
    }

    /** Evidence is told to whoever reaches the tree, and kept with decisions. */
    private static Map<Long, String> named(Map<Long, String> names, Set<Long> former) {
        if (former.isEmpty()) {
            return names;
        }
        var told = new HashMap<>(names);
        former.forEach(keeper -> told.replace(keeper, FormerKeepers.NAME));
        return told;
    }

    private Map<Long, String> names(List<Observation> seen) {
        var ids = seen.stream().map(Observation::byId).collect(Collectors.toSet());
        return ids.isEmpty() ? Map.of() : Map.copyOf(people.names(ids));
    }

    /** Read-only, so that nothing is compared again when the transaction ends. */
    private static <E> List<E> read(
            PanacheRepositoryBase<E, Long> rows, String query, Object... parameters) {
        return rows.find(query, parameters).withHint(HibernateHints.HINT_READ_ONLY, true).list();
    }

    /** Whether an entry is there that nobody has corrected. */
    public boolean isInForce(long observationId) {
        var row = observations.findById(observationId);
        return row != null && row.supersededBy == null;
    }

    /**
     * The day each person last observed something of these trees, up to a day; those who never did
     * are absent. One query.
     */
    public Map<Long, LocalDate> lastObservedBy(
            Collection<Long> personIds, Collection<Long> treeIds, LocalDate until) {
        return observations.lastBy(personIds, treeIds, until);
    }

    /**
     * What each of some trees stood in on a day, in one query; trees without an entry are absent.
     */
    public Map<Long, ContainerStay> containersOn(Collection<Long> treeIds, LocalDate day) {
        var stays = new HashMap<Long, ContainerStay>();
        if (!treeIds.isEmpty()) {
            containers
                    .list(ofTrees("since") + " order by since, id", treeIds, day)
                    .forEach(row -> stays.put(row.treeId, row.toStay()));
        }
        return stays;
    }

    /** Trees whose shoots an instructor measured since a day, the latest first. */
    public List<Long> treesWithShoots(LocalDate since, int most) {
        return observations.treesWithShoots(since, most);
    }

    /** Trees with a wound read as closed, the latest first. */
    public List<Long> treesWithClosedWounds(int most) {
        return observations.treesWithClosedWounds(most);
    }

    private static <V> Map<Long, List<V>> byTree(List<V> rows, Function<V, Long> treeId) {
        return rows.stream().collect(Collectors.groupingBy(treeId));
    }

    /**
     * Rows of some trees up to a day. The day is told so that no index serves it: given both, H2
     * reads the whole index by day, where each tree's few rows are wanted.
     */
    static String ofTrees(String day) {
        return "treeId in ?1 and coalesce(%s, ?2) <= ?2".formatted(day);
    }
}
