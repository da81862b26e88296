package org.ripewood.records;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
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
import org.ripewood.accounts.People;
import org.ripewood.sites.Site;
import org.ripewood.sites.SiteEntity;
import org.ripewood.sites.SiteRows;
import org.ripewood.trees.FormerKeepers;
import org.ripewood.trees.TreeEntity;
import org.ripewood.trees.TreeRows;

/** Reads the records of many trees at once: one query a table, however many trees. */
@ApplicationScoped
public class Records {

    private final TreeRows trees;
    private final SiteRows sites;
    private final ObservationRows observations;
    private final WoundRows wounds;
    private final BranchRows branches;
    private final ContainerStayRows containers;
    private final WorkDoneRows works;
    private final People people;
    private final FormerKeepers formerKeepers;

    Records(
            TreeRows trees,
            SiteRows sites,
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
        var found = treeIds.isEmpty() ? List.<TreeEntity>of() : read(trees, "id in ?1", treeIds);
        if (found.isEmpty()) {
            return List.of();
        }
        var places = sitesOf(found);
        var seen = observations(treeIds, on);
        var seenByTree = byTree(seen, Observation::treeId);
        var woundsByTree = byTree(wounds(treeIds, on, seen), Wound::treeId);
        var branchesByTree = byTree(branches(treeIds, on), Branch::treeId);
        var containersByTree = byTree(containers(treeIds, on), ContainerStay::treeId);
        var worksByTree = byTree(works(treeIds, on), WorkDone::treeId);
        var names = names(seen);
        var former = formerKeepers.of(found);
        return found.stream()
                .map(
                        tree ->
                                new TreeRecord(
                                        tree.toTree(),
                                        Objects.requireNonNull(places.get(tree.siteId)),
                                        on,
                                        seenByTree.getOrDefault(tree.id, List.of()),
                                        woundsByTree.getOrDefault(tree.id, List.of()),
                                        branchesByTree.getOrDefault(tree.id, List.of()),
                                        containersByTree.getOrDefault(tree.id, List.of()),
                                        worksByTree.getOrDefault(tree.id, List.of()),
                                        named(names, former.getOrDefault(tree.id, Set.of()))))
                .toList();
    }

    private Map<Long, Site> sitesOf(Collection<TreeEntity> found) {
        var ids = found.stream().map(tree -> tree.siteId).collect(Collectors.toSet());
        return read(sites, SiteRows.WITH_MONTHS + " where s.id in ?1", ids).stream()
                .map(SiteEntity::toSite)
                .collect(Collectors.toMap(Site::id, Function.identity()));
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

    private List<Branch> branches(Set<Long> ids, LocalDate on) {
        var present = "treeId in ?1 and enteredOn <= ?2 and (removedOn is null or removedOn > ?2)";
        return read(branches, present, ids, on).stream()
                .map(branch -> branch.toBranch(null, null))
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
