package org.ripewood.steps;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import io.quarkus.panache.common.Page;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.PageRequest;

/** The steps kept. */
@ApplicationScoped
public class StepBook implements PanacheRepositoryBase<StepEntity, Long> {

    private static final Set<StepState> OPEN =
            Set.of(StepState.ASSIGNED, StepState.REPORTED, StepState.SENT_BACK);

    private static final String REPORTED = "state = REPORTED and ";
    private static final String OF = "treeId in ?1";
    private static final String NOT_OF = "treeId not in ?1";
    private static final String OLDEST_FIRST = " order by reportedAt, id";

    private static final Set<StepState> DONE = Set.of(StepState.SIGNED_OFF, StepState.FOUND_DONE);

    /** A step nobody else can move until this transaction ends. */
    Optional<StepEntity> findToMove(long stepId) {
        return findByIdOptional(stepId, LockModeType.PESSIMISTIC_WRITE);
    }

    /** Open steps of a tree that nobody else can move until this transaction ends. */
    List<StepEntity> openToMove(long treeId) {
        return find("treeId = ?1 and state in ?2 order by id", treeId, OPEN)
                .withLock(LockModeType.PESSIMISTIC_WRITE)
                .list();
    }

    /** Open steps by tree, then by technique. */
    public Map<Long, Map<String, StepBrief>> open(Collection<Long> treeIds) {
        var byTree = new HashMap<Long, Map<String, StepBrief>>();
        if (treeIds.isEmpty()) {
            return byTree;
        }
        List<StepEntity> steps = list("treeId in ?1 and state in ?2 order by id", treeIds, OPEN);
        for (var step : steps) {
            byTree.computeIfAbsent(step.treeId, id -> new HashMap<>())
                    .put(step.technique, step.brief());
        }
        return byTree;
    }

    /** Day each technique was last done, up to a day, by tree. */
    public Map<Long, Map<String, LocalDate>> lastDone(Collection<Long> treeIds, LocalDate on) {
        var byTree = new HashMap<Long, Map<String, LocalDate>>();
        if (treeIds.isEmpty()) {
            return byTree;
        }
        var rows =
                getEntityManager()
                        .createQuery(
                                """
                                select treeId, technique, max(doneOn) from StepEntity
                                where treeId in :trees and state in :done and doneOn <= :on
                                group by treeId, technique""",
                                Object[].class)
                        .setParameter("trees", treeIds)
                        .setParameter("done", DONE)
                        .setParameter("on", on)
                        .getResultList();
        for (var row : rows) {
            byTree.computeIfAbsent((Long) row[0], id -> new HashMap<>())
                    .put((String) row[1], (LocalDate) row[2]);
        }
        return byTree;
    }

    /** Every step of some trees, by tree and then the latest first. */
    public Map<Long, List<StepBrief>> all(Collection<Long> treeIds) {
        return treeIds.isEmpty()
                ? Map.of()
                : list("treeId in ?1 order by id desc", treeIds).stream()
                        .map(StepEntity::brief)
                        .collect(Collectors.groupingBy(StepBrief::treeId));
    }

    /** Every step of a tree, the latest first. */
    public List<StepBrief> all(long treeId) {
        return list("treeId = ?1 order by id desc", treeId).stream()
                .map(StepEntity::brief)
                .toList();
    }

    List<StepEntity> byIds(Collection<Long> ids) {
        return ids.isEmpty() ? List.of() : list("id in ?1", ids);
    }

    List<StepEntity> ofTree(long treeId, PageRequest page) {
        return find("treeId = ?1 order by id desc", treeId).page(pageOf(page)).list();
    }

    /** Reported steps, oldest first; of these trees, or of all but some when null. */
    List<StepEntity> reported(
            @Nullable Collection<Long> treeIds, Collection<Long> without, PageRequest page) {
        return treeIds == null
                ? find(REPORTED + NOT_OF + OLDEST_FIRST, without).page(pageOf(page)).list()
                : find(REPORTED + OF + OLDEST_FIRST, treeIds).page(pageOf(page)).list();
    }

    long countReported(@Nullable Collection<Long> treeIds, Collection<Long> without) {
        return treeIds == null ? count(REPORTED + NOT_OF, without) : count(REPORTED + OF, treeIds);
    }

    private static Page pageOf(PageRequest page) {
        return Page.of(page.page(), page.size());
    }
}
