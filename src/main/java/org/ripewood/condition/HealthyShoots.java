package org.ripewood.condition;

import java.time.LocalDate;
import java.util.List;
import java.util.function.DoublePredicate;
import org.ripewood.core.growth.DefoliationClass;
import org.ripewood.core.growth.ShootSample;
import org.ripewood.core.growth.VigourIndex;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;
import org.ripewood.core.season.GrowingDays;
import org.ripewood.core.season.GrowingSeason;
import org.ripewood.records.ContainerStay;
import org.ripewood.records.TreeRecord;
import org.ripewood.records.WorkDone;

/**
 * Those of a tree's measured shoots that tell how its kind grows: measured by an instructor, grown
 * at the school in one kind of place, on a tree that was well and had no heavy work.
 *
 * <p>Whether it was well is asked of foliage, colour, dead twigs and pests, never of the shoots:
 * who leaves the short ones out finds the rest too long.
 */
final class HealthyShoots {

    private static final int POOR_GRADE = 1;
    private static final double MANY_PESTS = 2;

    private final TreeRecord record;
    private final ShootSeasons shoots;

    HealthyShoots(TreeRecord record, GrowingDays growing) {
        this.record = record;
        this.shoots = new ShootSeasons(record, growing);
    }

    /**
     * The shoots of each season that counts.
     *
     * @param since seasons that began before it do not
     */
    List<ShootSample> since(LocalDate since) {
        return shoots.all().stream()
                .filter(one -> !one.season().isBefore(since))
                .filter(one -> one.seen().source() == Source.INSTRUCTOR)
                .filter(one -> !record.tree().cameOn().isAfter(one.season()))
                .filter(this::inOnePlace)
                .filter(this::withoutHeavyWork)
                .filter(this::well)
                .map(
                        one ->
                                new ShootSample(
                                        record.tree().id(),
                                        record.tree().keeperId(),
                                        one.season().getYear(),
                                        one.mm(),
                                        one.inGround()))
                .toList();
    }

    /**
     * It stood in something known when the season began, and went neither into nor out of ground.
     */
    private boolean inOnePlace(ShootSeasons.Shoots of) {
        var day = of.seen().observedOn();
        return record.containers().stream().anyMatch(stay -> !stay.since().isAfter(of.season()))
                && shoots.inGround(of.season()) == of.inGround()
                && record.containers().stream()
                        .map(ContainerStay::since)
                        .filter(since -> since.isAfter(of.season()) && !since.isAfter(day))
                        .allMatch(since -> shoots.inGround(since) == of.inGround());
    }

    /** A season's shoots grow on what the season before left: work in either changes them. */
    private boolean withoutHeavyWork(ShootSeasons.Shoots of) {
        var before =
                GrowingSeason.of(of.season().minusDays(1), record.site().latitude()).firstDay();
        return record.works().stream()
                .filter(work -> work.work().heavy())
                .map(WorkDone::doneOn)
                .noneMatch(day -> isWithin(day, before, of.seen().observedOn()));
    }

    private boolean well(ShootSeasons.Shoots of) {
        return !seen(
                        of,
                        Fact.FOLIAGE_LOSS_PERCENT,
                        loss ->
                                DefoliationClass.ofLoss(loss).code()
                                        >= DefoliationClass.MODERATE.code())
                && !seen(
                        of,
                        Fact.DIEBACK_PERCENT,
                        dead -> VigourIndex.diebackGrade(dead) <= POOR_GRADE)
                && !seen(of, Fact.LEAF_COLOUR_GRADE, colour -> colour <= POOR_GRADE)
                && !seen(of, Fact.PEST_LEVEL, pests -> pests >= MANY_PESTS);
    }

    /** Whether anybody saw so from the season's first day until its shoots were measured. */
    private boolean seen(ShootSeasons.Shoots of, Fact fact, DoublePredicate poor) {
        return record.seen(fact)
                .filter(seen -> isWithin(seen.observedOn(), of.season(), of.seen().observedOn()))
                .anyMatch(seen -> poor.test(((Value.Number) seen.value()).amount()));
    }

    private static boolean isWithin(LocalDate day, LocalDate from, LocalDate to) {
        return !day.isBefore(from) && !day.isAfter(to);
    }
}
