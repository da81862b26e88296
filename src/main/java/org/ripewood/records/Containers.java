package org.ripewood.records;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import org.ripewood.core.progress.Fact;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.trees.Days;
import org.ripewood.trees.Reach;

/** What trees stood in. */
@ApplicationScoped
@Transactional
public class Containers {

    private static final List<String> KINDS = Fact.CONTAINER_KIND.words();

    private final ContainerStayRows rows;
    private final Reach reach;
    private final Days days;
    private final Today today;

    Containers(ContainerStayRows rows, Reach reach, Days days, Today today) {
        this.rows = rows;
        this.reach = reach;
        this.days = days;
        this.today = today;
    }

    /** Moves a tree to another container. */
    public ContainerStay moveTo(Actor actor, long treeId, NewContainer container) {
        reach.requireHere(actor, treeId);
        days.requireHappened("since", container.since(), treeId);
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

    /** Containers, latest first. */
    public List<ContainerStay> of(Actor actor, long treeId) {
        reach.require(actor, treeId);
        return rows.list("treeId = ?1 order by since desc, id desc", treeId).stream()
                .map(ContainerStayEntity::toStay)
                .toList();
    }
}
