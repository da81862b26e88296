package org.ripewood.records;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.growth.AgedVigour;
import org.ripewood.core.growth.Doubt;
import org.ripewood.core.growth.Doubt.Oddity;
import org.ripewood.core.growth.Earlier;
import org.ripewood.core.growth.Plausible;
import org.ripewood.core.growth.TaperProfile.Reading;
import org.ripewood.core.growth.TrunkAround;
import org.ripewood.core.progress.Fact;

/** What is odd about a series, held against what the record says up to its day. */
final class SeriesDoubts {

    private final LocalDate on;
    private final List<SeriesEntry> series;
    private final LastReadings last;
    private final Map<Long, Wound> wounds;
    private final boolean bare;
    private final @Nullable Earlier height;

    /**
     * @param last what was measured last up to that day
     * @param wounds all of the tree's, with readings up to that day
     * @param bare whether the tree's leaves are down in their season on that day
     */
    SeriesDoubts(
            LocalDate on,
            List<SeriesEntry> series,
            LastReadings last,
            List<Wound> wounds,
            boolean bare) {
        this.bare = bare;
        this.on = on;
        this.series = series;
        this.last = last;
        this.wounds = wounds.stream().collect(Collectors.toMap(Wound::id, Function.identity()));
        this.height = height();
    }

    /** Whether anything can be odd about values of a fact; of others no reading is asked for. */
    static boolean ofInterest(Fact fact) {
        return switch (fact) {
            case WOUND_OPEN_MM,
                    TRUNK_DIAMETER_MM,
                    TRUNK_BASE_MM,
                    SHOOT_EXTENSION_MM,
                    HEIGHT_MM,
                    INTERNODE_MM,
                    VIGOUR_INDEX,
                    FOLIAGE_LOSS_PERCENT ->
                    true;
            default -> false;
        };
    }

    /** One question at most for a value. */
    List<Question> questions() {
        var questions = new ArrayList<Question>();
        for (var entry : series) {
            doubt(entry).map(doubt -> question(entry, doubt)).ifPresent(questions::add);
        }
        return questions;
    }

    private Optional<Doubt> doubt(SeriesEntry entry) {
        return switch (entry.fact()) {
            case WOUND_OPEN_MM -> wound(entry);
            case TRUNK_DIAMETER_MM -> trunk(entry);
            case TRUNK_BASE_MM ->
                    Plausible.girth(entry.amount(), "at the base", on, before(entry.fact()));
            case SHOOT_EXTENSION_MM -> Plausible.shoot(entry.amount(), before(entry.fact()));
            case HEIGHT_MM, INTERNODE_MM -> Plausible.length(entry.amount(), before(entry.fact()));
            case VIGOUR_INDEX -> Plausible.strength(entry.amount(), strengthSeen());
            case FOLIAGE_LOSS_PERCENT -> Plausible.foliage(entry.amount(), bare);
            default -> Optional.empty();
        };
    }

    /** What tells of strength in the same series, or was seen in the year before. */
    private List<AgedVigour.Seen> strengthSeen() {
        var seen = new ArrayList<AgedVigour.Seen>();
        for (var fact : StrengthSeen.FACTS) {
            series.stream()
                    .filter(entry -> entry.fact() == fact)
                    .findFirst()
                    .map(entry -> StrengthSeen.of(fact, entry.amount(), on))
                    .or(() -> strengthSeen(fact))
                    .ifPresent(seen::add);
        }
        return seen;
    }

    private Optional<AgedVigour.Seen> strengthSeen(Fact fact) {
        return Optional.ofNullable(last.whole().get(fact))
                .filter(before -> !before.observedOn().isBefore(on.minusYears(1)))
                .map(
                        before ->
                                StrengthSeen.of(
                                        fact, LastReadings.amount(before), before.observedOn()));
    }

    private Optional<Doubt> wound(SeriesEntry entry) {
        var wound = Objects.requireNonNull(wounds.get(entry.seen().woundId()));
        var readings = wound.readings();
        return Plausible.wound(
                entry.amount(),
                new Earlier(wound.madeOn(), wound.firstWidthMm()),
                readings.isEmpty()
                        ? null
                        : LastReadings.earlier(readings.get(readings.size() - 1)));
    }

    private Optional<Doubt> trunk(SeriesEntry entry) {
        long at = Math.round(entry.heightMm());
        var before = new TreeMap<Long, Reading>();
        last.marks().stream()
                .filter(mark -> height == null || LastReadings.heightMm(mark) <= height.mm())
                .forEach(mark -> before.put(markOf(mark), reading(mark)));
        var now = new TreeMap<>(before);
        series.stream()
                .filter(other -> other.fact() == Fact.TRUNK_DIAMETER_MM)
                .forEach(other -> now.put(Math.round(other.heightMm()), reading(other)));
        before.remove(at);
        now.remove(at);
        return Plausible.trunk(
                reading(entry),
                on,
                lastAt(at),
                new TrunkAround(height, List.copyOf(now.values()), List.copyOf(before.values())));
    }

    private @Nullable Earlier lastAt(long at) {
        return last.marks().stream()
                .filter(mark -> markOf(mark) == at)
                .findFirst()
                .map(LastReadings::earlier)
                .orElse(null);
    }

    /** The height of the same series, or the one measured last. */
    private @Nullable Earlier height() {
        return series.stream()
                .filter(entry -> entry.fact() == Fact.HEIGHT_MM)
                .findFirst()
                .map(entry -> new Earlier(on, entry.amount()))
                .orElse(before(Fact.HEIGHT_MM));
    }

    private @Nullable Earlier before(Fact fact) {
        var seen = last.whole().get(fact);
        return seen == null ? null : LastReadings.earlier(seen);
    }

    private static Question question(SeriesEntry entry, Doubt doubt) {
        var field =
                doubt.oddity() == Oddity.ABOVE
                        ? entry.field().replace(".diameterMm", ".heightMm")
                        : entry.field();
        var key =
                "%s:%s:%s"
                        .formatted(
                                doubt.oddity().name().toLowerCase(Locale.ROOT),
                                place(entry),
                                plain(entry.amount()));
        return new Question(key, field, doubt.words());
    }

    private static String place(SeriesEntry entry) {
        var woundId = entry.seen().woundId();
        var heightMm = entry.seen().heightMm();
        return woundId != null
                ? "wound" + woundId
                : heightMm != null ? "height" + plain(heightMm) : entry.fact().code();
    }

    private static Reading reading(Observation mark) {
        return new Reading(LastReadings.heightMm(mark), LastReadings.amount(mark));
    }

    private static Reading reading(SeriesEntry entry) {
        return new Reading(entry.heightMm(), entry.amount());
    }

    private static long markOf(Observation mark) {
        return Math.round(LastReadings.heightMm(mark));
    }

    private static String plain(double amount) {
        return BigDecimal.valueOf(amount).stripTrailingZeros().toPlainString();
    }
}
