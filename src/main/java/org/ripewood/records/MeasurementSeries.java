package org.ripewood.records;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.platform.Actor;
import org.ripewood.trees.Reach;
import org.ripewood.trees.TreeDays;

/** Series of measurements: read, held against the record, asked about, kept as a whole. */
@ApplicationScoped
@Transactional
public class MeasurementSeries {

    private final SeriesReader reader;
    private final Observations book;
    private final ObservationRows observations;
    private final WoundRows wounds;
    private final Reach reach;
    private final TreeDays treeDays;

    MeasurementSeries(
            SeriesReader reader,
            Observations book,
            ObservationRows observations,
            WoundRows wounds,
            Reach reach,
            TreeDays treeDays) {
        this.reader = reader;
        this.book = book;
        this.observations = observations;
        this.wounds = wounds;
        this.reach = reach;
        this.treeDays = treeDays;
    }

    /**
     * Records what was measured in one go: every value as {@link Observations#observe} would, or
     * none. Values that look odd are asked about first; those confirmed by the question's key are
     * kept.
     */
    public SeriesOutcome record(Actor actor, long treeId, NewSeries series) {
        reach.requireHere(actor, treeId);
        var entries = reader.read(actor, treeId, series);
        var before = before(treeId, series.observedOn());
        var confirmed = series.confirmed() == null ? Set.of() : Set.copyOf(series.confirmed());
        var open =
                new SeriesDoubts(series.observedOn(), entries, before.last(), before.wounds())
                        .questions().stream()
                                .filter(question -> !confirmed.contains(question.key()))
                                .toList();
        return open.isEmpty()
                ? new SeriesOutcome.Stored(book.enter(actor, treeId, entries))
                : new SeriesOutcome.Asked(open);
    }

    /** What was measured last, as a help to whoever measures again. */
    public LastReadings last(Actor actor, long treeId) {
        reach.require(actor, treeId);
        return before(treeId, treeDays.last(treeId)).last();
    }

    private record Before(LastReadings last, List<Wound> wounds) {}

    private Before before(long treeId, LocalDate on) {
        var standing =
                observations
                        .list(
                                "treeId = ?1 and observedOn <= ?2 and " + ObservationRows.IN_FORCE,
                                treeId,
                                on)
                        .stream()
                        .map(ObservationEntity::toObservation)
                        .toList();
        var readings =
                standing.stream()
                        .filter(seen -> seen.woundId() != null)
                        .collect(Collectors.groupingBy(Observation::woundId));
        var cuts =
                wounds.list("treeId = ?1 and madeOn <= ?2 order by madeOn, id", treeId, on).stream()
                        .map(row -> row.toWound(readings.getOrDefault(row.id, List.of())))
                        .toList();
        return new Before(LastReadings.of(standing, cuts), cuts);
    }
}
