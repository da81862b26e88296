package org.ripewood.records;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Work;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.trees.Days;
import org.ripewood.trees.FormerKeepers;
import org.ripewood.trees.Reach;
import org.ripewood.trees.Trees;

/** What was done to trees. */
@ApplicationScoped
@Transactional
public class WorksDone {

    private final WorkDoneRows rows;
    private final Reach reach;
    private final Days days;
    private final Today today;
    private final Trees trees;

    WorksDone(WorkDoneRows rows, Reach reach, Days days, Today today, Trees trees) {
        this.rows = rows;
        this.reach = reach;
        this.days = days;
        this.today = today;
        this.trees = trees;
    }

    /** Records work done; `clock` is the technique's, null for none. */
    public WorkDone record(
            Actor actor, long treeId, Work work, @Nullable String clock, @Nullable String note) {
        reach.requireHere(actor, treeId);
        days.requireHappened("doneOn", work.doneOn(), treeId);
        if (clock != null && !Clocks.CODES.contains(clock)) {
            throw Refused.invalid(
                    "clock",
                    "there is no clock “%s”.%s"
                            .formatted(clock, Suggestion.maybe(Clocks.CODES, clock)));
        }
        var row = new WorkDoneEntity();
        row.treeId = treeId;
        row.technique = work.technique();
        row.doneOn = work.doneOn();
        row.stress = work.stress();
        row.recoveryDays = work.recoveryDays();
        row.foliageShare = work.foliageShare();
        row.rootShare = work.rootShare();
        row.clock = clock;
        row.byId = actor.personId();
        row.recordedAt = today.now();
        row.note = note;
        rows.persist(row);
        return row.toWorkDone();
    }

    /** Work done, latest first. */
    public List<WorkDone> of(Actor actor, long treeId) {
        var hidden = trees.hiddenKeepers(actor, treeId);
        return rows.list("treeId = ?1 order by doneOn desc, id desc", treeId).stream()
                .map(WorkDoneEntity::toWorkDone)
                .map(done -> done.withNote(FormerKeepers.words(hidden, done.byId(), done.note())))
                .toList();
    }
}
