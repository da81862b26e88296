package org.ripewood.records;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.course.CourseContent;
import org.ripewood.platform.Actor;
import org.ripewood.sites.Seasons;
import org.ripewood.sites.Sites;
import org.ripewood.trees.Reach;
import org.ripewood.trees.TreeDays;
import org.ripewood.trees.Trees;

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
    private final Trees trees;
    private final Sites sites;
    private final Seasons seasons;
    private final CourseContent content;

    MeasurementSeries(
            SeriesReader reader,
            Observations book,
            ObservationRows observations,
            WoundRows wounds,
            Reach reach,
            TreeDays treeDays,
            Trees trees,
            Sites sites,
            Seasons seasons,
            CourseContent content) {
        this.sites = sites;
        this.seasons = seasons;
        this.content = content;
        this.reader = reader;
        this.book = book;
        this.observations = observations;
        this.wounds = wounds;
        this.reach = reach;
        this.treeDays = treeDays;
        this.trees = trees;
    }

    /**
     * Records what was measured in one go: every value as {@link Observations#observe} would, or
     * none. Values that look odd are asked about first; those confirmed by the question's key are
     * kept.
     */
    public SeriesOutcome record(Actor actor, long treeId, NewSeries series) {
        reach.requireHere(actor, treeId);
        var entries = reader.read(actor, treeId, series);
        var open =
                open(
                        actor,
                        treeId,
                        series.observedOn(),
                        entries,
                        before(treeId, series.observedOn(), null),
                        series.confirmed());
        return open.isEmpty()
                ? new SeriesOutcome.Stored(book.enter(actor, treeId, entries))
                : new SeriesOutcome.Asked(open);
    }

    /**
     * Records one observation, or a correction of one, as {@link Observations#observe} would, and
     * asks about it like about a series of one.
     */
    public SeriesOutcome observe(Actor actor, long treeId, NewObservation seen) {
        var open = questions(actor, treeId, seen);
        return open.isEmpty()
                ? new SeriesOutcome.Stored(List.of(book.observe(actor, treeId, seen)))
                : new SeriesOutcome.Asked(open);
    }

    /**
     * What {@link #observe} would ask about an observation; empty when it would be kept. Faults are
     * told as there.
     */
    public List<Question> questions(Actor actor, long treeId, NewObservation seen) {
        var entry = book.read(actor, treeId, seen);
        var on = seen.observedOn();
        var before =
                SeriesDoubts.ofInterest(entry.fact())
                        ? before(treeId, on, seen.supersedes())
                        : new Before(LastReadings.of(List.of(), List.of()), List.of());
        return open(actor, treeId, on, List.of(entry), before, seen.confirmed());
    }

    /** The questions nobody has answered yet. */
    private List<Question> open(
            Actor actor,
            long treeId,
            LocalDate on,
            List<SeriesEntry> entries,
            Before before,
            @Nullable List<String> confirmed) {
        var answered = confirmed == null ? Set.<String>of() : Set.copyOf(confirmed);
        var asked = new ArrayList<Question>();
        beforeItCame(actor, treeId, on).ifPresent(asked::add);
        var bare = asksOfLeaves(entries) && bare(actor, treeId, before.last(), on);
        asked.addAll(
                new SeriesDoubts(on, entries, before.last(), before.wounds(), bare).questions());
        return asked.stream().filter(question -> !answered.contains(question.key())).toList();
    }

    private static boolean asksOfLeaves(List<SeriesEntry> entries) {
        return entries.stream().anyMatch(entry -> entry.fact() == Fact.FOLIAGE_LOSS_PERCENT);
    }

    /**
     * Whether a tree's leaves are down in their season; what somebody saw goes before the model.
     */
    private boolean bare(Actor actor, long treeId, LastReadings last, LocalDate on) {
        var tree = trees.get(actor, treeId);
        var species = content.inForce().kindOf(tree.species());
        var season = seasons.of(sites.get(tree.siteId()), species);
        var seen = last.whole().get(Fact.GROWTH_STAGE);
        var stages =
                seen == null
                        ? season.usual()
                        : season.from((int) LastReadings.amount(seen), seen.observedOn());
        return species.traits().habit().bareAt(stages.stageOn(on));
    }

    /** A day before the tree was known is often a slip in the year. */
    private Optional<Question> beforeItCame(Actor actor, long treeId, LocalDate on) {
        var came = trees.get(actor, treeId).cameOn();
        return on.isBefore(came)
                ? Optional.of(
                        new Question(
                                "early:came:" + on.format(DateTimeFormatter.BASIC_ISO_DATE),
                                "observedOn",
                                "%s is before %s, the day the tree came. Maybe another year was meant."
                                        .formatted(on, came)))
                : Optional.empty();
    }

    /** What was measured last, as a help to whoever measures again. */
    public LastReadings last(Actor actor, long treeId) {
        reach.require(actor, treeId);
        return before(treeId, treeDays.last(treeId), null).last();
    }

    private record Before(LastReadings last, List<Wound> wounds) {}

    /**
     * @param besides an entry that is being corrected and counts no more; null for none
     */
    private Before before(long treeId, LocalDate on, @Nullable Long besides) {
        var standing =
                observations
                        .list(
                                "treeId = ?1 and observedOn <= ?2 and " + ObservationRows.IN_FORCE,
                                treeId,
                                on)
                        .stream()
                        .map(ObservationEntity::toObservation)
                        .filter(seen -> besides == null || seen.id() != besides)
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
