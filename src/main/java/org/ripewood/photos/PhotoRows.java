package org.ripewood.photos;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import io.quarkus.panache.common.Page;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.time.Instant;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.PageRequest;

/** The photos kept. */
@ApplicationScoped
class PhotoRows implements PanacheRepositoryBase<PhotoEntity, Long> {

    private static final String THERE = " and removedAt is null";
    private static final String LATEST_FIRST = " order by takenOn desc, id desc";
    private static final String OF_TREE = "treeId = ?1" + THERE;
    private static final String OF_PERSON = "byId = ?1" + THERE;

    List<PhotoEntity> ofTree(long treeId, PageRequest page) {
        return find(OF_TREE + LATEST_FIRST, treeId).page(Page.of(page.page(), page.size())).list();
    }

    List<PhotoEntity> ofTree(long treeId) {
        return list(OF_TREE + LATEST_FIRST, treeId);
    }

    Optional<PhotoEntity> latestFront(long treeId) {
        return find(OF_TREE + " and seenFrom = ?2" + LATEST_FIRST, treeId, Viewpoint.FRONT)
                .page(Page.ofSize(1))
                .firstResultOptional();
    }

    List<PhotoEntity> removedOfTree(long treeId) {
        return list("treeId = ?1 and removedAt is not null order by removedAt desc", treeId);
    }

    List<PhotoEntity> byIds(Collection<Long> ids) {
        return ids.isEmpty() ? List.of() : list("id in ?1", ids);
    }

    List<PhotoEntity> ofWound(long woundId) {
        return list("woundId = ?1" + THERE + LATEST_FIRST, woundId);
    }

    List<PhotoEntity> ofStep(long stepId) {
        return list("stepId = ?1" + THERE + LATEST_FIRST, stepId);
    }

    /** The last photo of a tree, and its last from the front; null where there is none. */
    record Shown(long treeId, @Nullable Long front, long last) {}

    List<Shown> shownOf(Collection<Long> treeIds) {
        return getEntityManager()
                .createQuery(
                        "select treeId, max(case when seenFrom = :front then id end), max(id)"
                                + " from PhotoEntity where treeId in :trees"
                                + THERE
                                + " group by treeId",
                        Object[].class)
                .setParameter("front", Viewpoint.FRONT)
                .setParameter("trees", treeIds)
                .getResultList()
                .stream()
                .map(row -> new Shown((Long) row[0], (Long) row[1], (Long) row[2]))
                .toList();
    }

    long countOfTree(long treeId) {
        return count(OF_TREE, treeId);
    }

    /** All that a person sent since a moment, those taken away since included. */
    long countSince(long personId, Instant moment) {
        return count("byId = ?1 and recordedAt >= ?2", personId, moment);
    }

    /** Those there that a person sent. */
    long countOf(long personId) {
        return count(OF_PERSON, personId);
    }

    /** The same, and nobody else can change them until this transaction ends. */
    List<PhotoEntity> toRemoveOf(long personId) {
        return find(OF_PERSON + " order by id", personId)
                .withLock(LockModeType.PESSIMISTIC_WRITE)
                .list();
    }

    /** A photo nobody else can change until this transaction ends. */
    Optional<PhotoEntity> findToChange(long photoId) {
        return findByIdOptional(photoId, LockModeType.PESSIMISTIC_WRITE);
    }

    /** Those of some keys that a photo is kept under. */
    Set<String> inUse(Collection<String> keys) {
        var used = new HashSet<String>();
        for (var row : list("fileKey in ?1 or thumbnailKey in ?1", keys)) {
            used.add(row.fileKey);
            used.add(row.thumbnailKey);
        }
        return used;
    }
}
