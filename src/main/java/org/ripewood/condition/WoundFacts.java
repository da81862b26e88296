package org.ripewood.condition;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.growth.ClosingBelief;
import org.ripewood.core.growth.Closure;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.records.Observation;
import org.ripewood.records.TreeRecord;
import org.ripewood.records.Wound;

/** How the wounds of a tree close; deadwood by design is no wound that has to. */
final class WoundFacts {

    static final int FRESH_DAYS = 7;

    /** First width from which the share closed is asked for (common practice, no source). */
    private static final double CLOSURE_FROM_MM = 10;

    private final GrowthDays growth;
    private final ClosingBelief closing;
    private final List<Wound> wounds;
    private final List<Closure> closures;
    private final List<Wound> fresh;
    private final LocalDate on;
    private final LocalDate asOf;
    private final Source source;
    private final String from;

    /** The widest open cut as somebody saw it on a tree without wounds; null when nobody has. */
    private final @Nullable Observation said;

    private WoundFacts(
            TreeRecord record, GrowthDays growth, ClosingBelief closing, double leastMm) {
        this.growth = growth;
        this.closing = closing;
        this.wounds = counted(record, leastMm);
        this.closures = wounds.stream().map(Wound::closure).toList();
        this.on = record.on();
        this.fresh = toDress(record).filter(this::fresh).toList();
        this.asOf = lookedOn();
        this.source =
                wounds.stream()
                        .map(WoundFacts::readBy)
                        .min(Comparator.naturalOrder())
                        .orElse(Source.DERIVED);
        this.said = wounds.isEmpty() ? said(record) : null;
        this.from = wounds.isEmpty() ? none(record) : "openings of wounds";
    }

    /** What somebody said of the widest cut last; null when nobody has. */
    private static @Nullable Observation said(TreeRecord record) {
        return record.seen(Fact.WIDEST_OPEN_CUT_MM)
                .max(
                        Comparator.comparing(Observation::observedOn)
                                .thenComparing(Observation::source)
                                .thenComparingLong(Observation::id))
                .orElse(null);
    }

    private String none(TreeRecord record) {
        if (said != null) {
            return "what was seen of its cuts; no wounds in the record";
        }
        return record.wounds().isEmpty()
                ? "nobody has said; none in the record"
                : "no wounds in the record that have to close";
    }

    /**
     * What wounds say of a tree.
     *
     * <p>A tree without wounds counts as one without cuts, until somebody has said how wide the
     * widest is that is still open; then that counts until wounds are entered.
     *
     * @param closing what is believed of how the tree's kind closes them
     * @param leastMm first width from which a cut counts
     */
    static List<Evidence> of(
            TreeRecord record, GrowthDays growth, ClosingBelief closing, double leastMm) {
        return new WoundFacts(record, growth, closing, leastMm).all();
    }

    /** Wounds that have to close: neither deadwood by design nor the small cuts of a year. */
    static List<Wound> counted(TreeRecord record, double leastMm) {
        return toDress(record).filter(wound -> wound.firstWidthMm() >= leastMm).toList();
    }

    /** Wounds that are dressed while they are fresh, however small: all but deadwood by design. */
    static Stream<Wound> toDress(TreeRecord record) {
        return record.wounds().stream().filter(wound -> !wound.deadwoodByDesign());
    }

    /** Whether its share of closing is asked for: it was a real cut, or is one still. */
    static boolean closureAsked(Wound wound) {
        return wound.firstWidthMm() >= CLOSURE_FROM_MM || wound.closure().open();
    }

    private List<Evidence> all() {
        double seen = said == null ? 0 : ((Value.Number) said.value()).amount();
        return List.of(
                ofOpenings(
                        Fact.OPEN_WOUNDS,
                        seen,
                        seen >= Closure.OPEN_FROM_MM
                                ? 1
                                : (double) closures.stream().filter(Closure::open).count()),
                ofOpenings(
                        Fact.LARGEST_OPENING_MM,
                        seen,
                        closures.stream()
                                .mapToDouble(closure -> closure.latest().openMm())
                                .max()
                                .orElse(seen)),
                number(
                        Fact.SMALLEST_CLOSURE_PERCENT,
                        wounds.stream()
                                .filter(WoundFacts::closureAsked)
                                .mapToDouble(wound -> wound.closure().percent())
                                .min()
                                .orElse(100)),
                Derived.flag(
                        Fact.WOUND_STALLED,
                        closures.stream().anyMatch(closure -> doesNotClose(closure)),
                        asOf,
                        source,
                        from),
                // Known from the day it was made, however long ago anybody looked.
                Derived.number(
                        Fact.FRESH_WOUNDS,
                        (double) fresh.size(),
                        on,
                        Source.DERIVED,
                        "days wounds were made"));
    }

    /**
     * Bare wood that somebody saw is theirs, and grows old; that there is none stays so, since
     * every new cut is entered.
     *
     * @param seen the widest cut that somebody saw; 0 when nobody has, or when wounds tell it
     */
    private Evidence ofOpenings(Fact fact, double seen, double amount) {
        return said != null && seen > 0
                ? Derived.number(fact, amount, said.observedOn(), said.source(), from)
                : number(fact, amount);
    }

    private boolean doesNotClose(Closure closure) {
        return closure.open() && (closure.reopened() || closure.stalled(closing, growth));
    }

    private Evidence number(Fact fact, double amount) {
        return Derived.number(fact, amount, asOf, source, from);
    }

    /**
     * The oldest of the latest looks. A wound fully closed has nothing left to look at, so with no
     * other the record is as good as today's.
     */
    private LocalDate lookedOn() {
        return closures.stream()
                .filter(closure -> !closure.closed())
                .map(closure -> closure.latest().on())
                .min(Comparator.naturalOrder())
                .orElse(on);
    }

    private boolean fresh(Wound wound) {
        return ChronoUnit.DAYS.between(wound.madeOn(), on) <= FRESH_DAYS;
    }

    private static Source readBy(Wound wound) {
        var readings = wound.readings();
        return readings.isEmpty() ? wound.source() : readings.get(readings.size() - 1).source();
    }
}
