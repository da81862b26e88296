package org.ripewood.trees;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.hibernate.jpa.HibernateHints;
import org.jspecify.annotations.Nullable;

@ApplicationScoped
class TreeRows implements PanacheRepositoryBase<TreeEntity, Long> {

    /** No index serves it, so that each list goes on by the one it has: most trees are here. */
    static final String HERE = "leftOn is null";

    static final String LEFT = "leftOn is not null";

    /** Of the whole school they are found by their departures, which are few. */
    static final String ALL_LEFT = LEFT + " and id in (select d.treeId from DepartureEntity d)";

    /** A site's zone is read here as a tree's, and nothing else of the site. */
    private static final String ZONES =
            "select distinct s.zone from TreeEntity t join SiteEntity s on s.id = t.siteId where ";

    /** Read-only, so that nothing is compared again when the transaction ends. */
    List<Tree> read(String query, Object... parameters) {
        return find(query, parameters)
                .withHint(HibernateHints.HINT_READ_ONLY, true)
                .<TreeEntity>list()
                .stream()
                .map(TreeEntity::toTree)
                .toList();
    }

    /** Names alone, with the keeper's beside each; of everybody's trees for null. */
    List<TreeName> names(@Nullable Collection<Long> keepers) {
        var query =
                "select new org.ripewood.trees.TreeName(t.id, t.label, t.species, p.name,"
                        + " t.leftOn) from TreeEntity t join PersonEntity p on p.id = t.keeperId";
        var asked =
                keepers == null
                        ? getEntityManager().createQuery(query, TreeName.class)
                        : getEntityManager()
                                .createQuery(
                                        query + " where t.keeperId in :keepers", TreeName.class)
                                .setParameter("keepers", keepers);
        return asked.getResultList();
    }

    /** How many trees there are, those of a sample course not counted. */
    long countOwn() {
        return count("keeperId not in (select s.personId from SamplePersonEntity s)");
    }

    Set<Long> sitesOf(Collection<Long> keepers) {
        return Set.copyOf(
                getEntityManager()
                        .createQuery(
                                "select distinct t.siteId from TreeEntity t where t.keeperId in"
                                        + " :keepers",
                                Long.class)
                        .setParameter("keepers", keepers)
                        .getResultList());
    }

    /**
     * A tree and each of its former keepers, in one query: the tree in every row, and in its second
     * place a keeper's id, null when one keeper only had it. No row when there is no such tree.
     */
    List<Object[]> withFormerKeepers(long treeId) {
        return getEntityManager()
                .createQuery(
                        "select t, k.keeperId from TreeEntity t left join TreeKeepingEntity k on"
                                + " k.treeId = t.id and k.keeperId <> t.keeperId where t.id = :tree",
                        Object[].class)
                .setParameter("tree", treeId)
                .getResultList();
    }

    /** The zone at a tree's site, in one query for pages; none when there is no such tree. */
    List<String> zoneAt(long treeId) {
        return getEntityManager()
                .createQuery(ZONES + "t.id = :tree", String.class)
                .setParameter("tree", treeId)
                .getResultList();
    }

    /** The zones in which trees of these keepers stand, each once. */
    List<String> zonesOf(Collection<Long> keepers) {
        return getEntityManager()
                .createQuery(ZONES + "t.keeperId in :keepers", String.class)
                .setParameter("keepers", keepers)
                .getResultList();
    }

    /**
     * Trees of these keepers by id, also those that left, each with the zone at its site in the
     * second place.
     */
    List<Object[]> withZones(Collection<Long> keepers) {
        return getEntityManager()
                .createQuery(
                        "select t, s.zone from TreeEntity t join SiteEntity s on s.id = t.siteId"
                                + " where t.keeperId in :keepers order by t.id",
                        Object[].class)
                .setParameter("keepers", keepers)
                .setHint(HibernateHints.HINT_READ_ONLY, true)
                .getResultList();
    }

    Set<Long> sitesTaken() {
        return Set.copyOf(
                getEntityManager()
                        .createQuery("select distinct t.siteId from TreeEntity t", Long.class)
                        .getResultList());
    }

    /** Whose trees stand at a site, those that left not counted. */
    Set<Long> keepersAt(long siteId) {
        return Set.copyOf(
                getEntityManager()
                        .createQuery(
                                "select distinct t.keeperId from TreeEntity t where t.siteId = :site and "
                                        + "t."
                                        + HERE,
                                Long.class)
                        .setParameter("site", siteId)
                        .getResultList());
    }

    /** Codes of the species at a site, the most frequent first. */
    List<String> speciesAt(long siteId) {
        return getEntityManager()
                .createQuery(
                        "select t.species from TreeEntity t where t.siteId = :site and t.leftOn is null"
                                + " group by t.species order by count(t) desc, t.species",
                        String.class)
                .setParameter("site", siteId)
                .getResultList();
    }
}
