package org.ripewood.steps;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import io.quarkus.panache.common.Page;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.platform.PageRequest;

/** The steps kept. */
@ApplicationScoped
public class StepBook implements PanacheRepositoryBase<StepEntity, Long> {

    private static final Set<StepState> OPEN =
            Set.of(StepState.ASSIGNED, StepState.REPORTED, StepState.SENT_BACK);

    private static final String REPORTED = "state = REPORTED and ";
    private static final String KEPT =
            "(select t.id from TreeEntity t where t.keeperId in ?1 and t.leftOn is null)";

    private static final String OF_KEEPERS = "treeId in " + KEPT;
    private static final String NOT_OF_KEEPERS = "treeId not in " + KEPT;
    private static final String OLDEST_FIRST = " order by reportedAt, id";

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

    /** Reported steps of these trees, oldest first. */
    List<StepEntity> reported(Collection<Long> treeIds, PageRequest page) {
        return find(REPORTED + "treeId in ?1" + OLDEST_FIRST, treeIds).page(pageOf(page)).list();
    }

    /** Reported steps of trees at the school of these keepers, oldest first. */
    List<StepEntity> reportedBy(Collection<Long> keepers, PageRequest page) {
        return find(REPORTED + OF_KEEPERS + OLDEST_FIRST, keepers).page(pageOf(page)).list();
    }

    long countReportedBy(Collection<Long> keepers) {
        return count(REPORTED + OF_KEEPERS, keepers);
    }

    /** The same of everybody but one keeper. */
    List<StepEntity> reportedByOthers(long keeper, PageRequest page) {
        return find(REPORTED + NOT_OF_KEEPERS + OLDEST_FIRST, Set.of(keeper))
                .page(pageOf(page))
                .list();
    }

    long countReportedByOthers(long keeper) {
        return count(REPORTED + NOT_OF_KEEPERS, Set.of(keeper));
    }

    private static Page pageOf(PageRequest page) {
        return Page.of(page.page(), page.size());
    }
}
