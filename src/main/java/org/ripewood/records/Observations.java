package org.ripewood.records;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.trees.Days;
import org.ripewood.trees.Reach;
import org.ripewood.trees.Trees;

/** What was seen and measured; a correction stands beside what it corrects. */
@ApplicationScoped
@Transactional
public class Observations {

    private final ObservationRows rows;
    private final FactAsked asked;
    private final Reach reach;
    private final Days days;
    private final Today today;
    private final Trees trees;

    Observations(
            ObservationRows rows,
            FactAsked asked,
            Reach reach,
            Days days,
            Today today,
            Trees trees) {
        this.rows = rows;
        this.asked = asked;
        this.reach = reach;
        this.days = days;
        this.today = today;
        this.trees = trees;
    }

    /** Records an observation, or a correction of one. */
    public Observation observe(Actor actor, long treeId, NewObservation seen) {
        var entry = read(actor, treeId, seen);
        var corrected = corrected(actor, treeId, entry.fact(), seen.supersedes());
        var row = enter(actor, treeId, entry.fact(), entry.value(), seen);
        if (corrected != null) {
            corrected.supersededBy = row.id;
        }
        return row.toObservation();
    }

    /** What is wrong with an observation is told before anything is asked about it. */
    SeriesEntry read(Actor actor, long treeId, NewObservation seen) {
        reach.requireHere(actor, treeId);
        var fact = asked.fact(actor, seen.fact());
        var value = ValueText.read(fact, seen.value());
        days.requireHappened("observedOn", seen.observedOn(), treeId);
        asked.requirePlace(fact, treeId, seen);
        FactAsked.requireReason(fact, seen.note());
        return new SeriesEntry("value", fact, value, seen);
    }

    /** Everything of a series that was read and found good, in its order. */
    List<Observation> enter(Actor actor, long treeId, List<SeriesEntry> series) {
        return series.stream()
                .map(read -> enter(actor, treeId, read.fact(), read.value(), read.seen()))
                .map(ObservationEntity::toObservation)
                .toList();
    }

    private ObservationEntity enter(
            Actor actor, long treeId, Fact fact, Value value, NewObservation seen) {
        var row = row(actor, treeId, fact, value, seen.observedOn(), seen.note());
        row.woundId = seen.woundId();
        row.branchId = seen.branchId();
        row.heightMm = seen.heightMm();
        rows.persist(row);
        return row;
    }

    /** Observations, latest first, corrected ones included and marked. */
    public Paged<Observation> list(Actor actor, long treeId, PageRequest page) {
        var hidden = trees.hiddenKeepers(actor, treeId);
        var query = rows.find("treeId = ?1 order by observedOn desc, id desc", treeId);
        var found = query.page(page.page(), page.size()).list();
        return Paged.of(
                found.stream()
                        .map(ObservationEntity::toObservation)
                        .map(seen -> seen.withoutWordsOf(hidden))
                        .toList(),
                page,
                query.count());
    }

    /** Sets facts as the effect of signed-off work, as seen by the instructor on that day. */
    public void setFacts(
            Actor actor, long treeId, Map<Fact, Value> facts, LocalDate on, String note) {
        actor.require(Role.INSTRUCTOR, "set facts by signing work off");
        reach.requireHere(actor, treeId);
        days.requireHappened("on", on, treeId);
        facts.forEach(
                (fact, value) -> {
                    requireSettable(fact, value);
                    rows.persist(row(actor, treeId, fact, value, on, note));
                });
    }

    /** The entry to be corrected, locked so that it is corrected once; null for a new entry. */
    private @Nullable ObservationEntity corrected(
            Actor actor, long treeId, Fact fact, @Nullable Long id) {
        if (id == null) {
            return null;
        }
        var row = rows.findById(id, LockModeType.PESSIMISTIC_WRITE);
        if (row == null || row.treeId != treeId) {
            throw Refused.invalid("supersedes", "this tree has no entry " + id);
        }
        if (row.supersededBy != null) {
            throw Refused.conflict(
                    "Entry %d was already corrected by entry %d.".formatted(id, row.supersededBy),
                    "Maybe correct entry %d.".formatted(row.supersededBy));
        }
        if (!row.fact.equals(fact.code())) {
            throw Refused.invalid(
                    "supersedes",
                    "entry %d is of %s and cannot be corrected by one of %s"
                            .formatted(id, row.fact, fact.code()));
        }
        if (row.source.equals(Source.INSTRUCTOR.name()) && !actor.is(Role.INSTRUCTOR)) {
            throw Refused.forbidden("Only an instructor may correct what an instructor saw.");
        }
        return row;
    }

    private ObservationEntity row(
            Actor actor, long treeId, Fact fact, Value value, LocalDate on, @Nullable String note) {
        var row = new ObservationEntity();
        row.treeId = treeId;
        row.fact = fact.code();
        row.setValue(value);
        row.observedOn = on;
        row.source = Reach.sourceOf(actor).name();
        row.byId = actor.personId();
        // As exact as the database keeps it, so that an entry is told alike now and later.
        row.recordedAt = today.now().truncatedTo(ChronoUnit.MICROS);
        row.note = note;
        return row;
    }

    private static void requireSettable(Fact fact, Value value) {
        if (!fact.recordable() || fact.scope() != Fact.Scope.TREE) {
            throw Refused.invalid(fact.code(), "cannot be set for a tree as a whole");
        }
        var refusal = fact.refusalOf(value);
        if (refusal != null) {
            throw Refused.invalid(fact.code(), refusal);
        }
    }
}
