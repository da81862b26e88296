package org.ripewood.records;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ripewood.core.progress.Fact;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.trees.Days;
import org.ripewood.trees.Reach;

/** What trees stood in. */
@ApplicationScoped
public class ContainerBook {

    private static final List<String> KINDS = Fact.CONTAINER_KIND.words();

    private final ContainerStayRows rows;
    private final Reach reach;
    private final Days days;
    private final Today today;

    ContainerBook(ContainerStayRows rows, Reach reach, Days days, Today today) {
        this.rows = rows;
        this.reach = reach;
        this.days = days;
        this.today = today;
    }

    public ContainerStay moveTo(Actor actor, long treeId, NewContainer container) {
        reach.requireHere(actor, treeId);
        days.requireHappened("since", container.since());
        if (!KINDS.contains(container.kind())) {
            throw Refused.invalid(
                    "kind",
                    "expected one of %s, found “%s”.%s"
                            .formatted(
                                    String.join(", ", KINDS),
                                    container.kind(),
                                    Suggestion.maybe(KINDS, container.kind())));
        }
        var row = new ContainerStayEntity();
        row.treeId = treeId;
        row.kind = container.kind();
        row.description = container.description();
        row.litres = container.litres();
        row.since = container.since();
        row.byId = actor.personId();
        row.recordedAt = today.now();
        rows.persist(row);
        return row.toStay();
    }

    public List<ContainerStay> of(Actor actor, long treeId) {
        reach.require(actor, treeId);
        return rows.list("treeId = ?1 order by since desc, id desc", treeId).stream()
                .map(ContainerStayEntity::toStay)
                .toList();
    }

    /** What each tree stood in on a day, in one query; trees nobody said it of are absent. */
    public Map<Long, ContainerStay> on(Collection<Long> treeIds, LocalDate day) {
        var stays = new HashMap<Long, ContainerStay>();
        if (!treeIds.isEmpty()) {
            rows.list(Records.ofTrees("since") + " order by since, id", treeIds, day)
                    .forEach(row -> stays.put(row.treeId, row.toStay()));
        }
        return stays;
    }
}
