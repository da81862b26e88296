package org.ripewood.condition;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.core.season.GrowingDays;
import org.ripewood.core.season.GrowingSeason;
import org.ripewood.records.ContainerStay;
import org.ripewood.records.Observation;
import org.ripewood.records.TreeRecord;

/**
 * Measured reference shoots, by the growing season they grew in; of a season the last reading
 * counts.
 *
 * <p>A reading of the first two months of growth is of last year's shoots: no others can be
 * measured yet. Until growth is well over, last season's shoots are the newest there can be. Both
 * numbers of days are common practice, no source.
 */
final class ShootSeasons {

    private static final int TOO_SOON_DAYS = 60;
    private static final int GROWN_DAYS = 150;
    private static final int SEASONS_COMPARED = 3;
    private static final String GROUND = "ground";

    /** Shoots of one season. */
    record Shoots(LocalDate season, double mm, boolean inGround, Observation seen) {}

    private final TreeRecord record;
    private final GrowingDays growing;
    private final List<Shoots> seasons;

    ShootSeasons(TreeRecord record, GrowingDays growing) {
        this.record = record;
        this.growing = growing;
        this.seasons = newestFirst();
    }

    private List<Shoots> newestFirst() {
        Map<LocalDate, Shoots> bySeason = new TreeMap<>(Comparator.reverseOrder());
        record.seen(Fact.SHOOT_EXTENSION_MM)
                .sorted(
                        Comparator.comparing(Observation::observedOn)
                                .thenComparing(Observation::id))
                .forEach(seen -> bySeason.put(seasonOf(seen.observedOn()), shoots(seen)));
        return List.copyOf(bySeason.values());
    }

    /** The seasons that were measured, newest first. */
    List<Shoots> all() {
        return seasons;
    }

    private Shoots shoots(Observation seen) {
        return new Shoots(
                seasonOf(seen.observedOn()),
                ((Value.Number) seen.value()).amount(),
                inGround(seen.observedOn()),
                seen);
    }

    /** The first day of the growing season whose shoots are measured on a day. */
    LocalDate seasonOf(LocalDate day) {
        return grownInto(day, TOO_SOON_DAYS);
    }

    /** Whether shoots measured on a day are the newest there can be today. */
    boolean upToDate(LocalDate measuredOn) {
        return !seasonOf(measuredOn).isBefore(grownInto(record.on(), GROWN_DAYS));
    }

    private LocalDate grownInto(LocalDate day, int days) {
        var latitude = record.site().latitude();
        var season = GrowingSeason.of(day, latitude).firstDay();
        return growing.between(season, day) < days
                ? GrowingSeason.of(season.minusDays(1), latitude).firstDay()
                : season;
    }

    /** The newest shoots; null when none were measured. */
    @Nullable Shoots newest() {
        return seasons.isEmpty() ? null : seasons.get(0);
    }

    /**
     * The newest shoots over the mean of up to three earlier seasons in a like place: what grew in
     * the ground is no measure of what grows in a pot. Null when there are none.
     */
    @Nullable Double ratio() {
        var newest = newest();
        if (newest == null) {
            return null;
        }
        var before =
                seasons.stream()
                        .skip(1)
                        .filter(shoots -> shoots.inGround() == newest.inGround())
                        .limit(SEASONS_COMPARED)
                        .mapToDouble(Shoots::mm)
                        .average();
        return before.isPresent() && before.getAsDouble() > 0
                ? Double.valueOf(newest.mm() / before.getAsDouble())
                : null;
    }

    /** Whether the tree stood in the ground on a day; not so while nothing is entered. */
    boolean inGround(LocalDate day) {
        return record.containers().stream()
                .filter(stay -> !stay.since().isAfter(day))
                .max(Comparator.comparing(ContainerStay::since).thenComparing(ContainerStay::id))
                .filter(stay -> stay.kind().equals(GROUND))
                .isPresent();
    }
}
