package org.ripewood.records;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;
import org.ripewood.trees.Days;

/** Reads a series into single entries, with every fault of every value. */
@ApplicationScoped
class SeriesReader {

    private static final int CANNOT_BE = 400;
    private static final int DECIMALS = 15;

    private final FactAsked asked;
    private final Days days;

    SeriesReader(FactAsked asked, Days days) {
        this.asked = asked;
        this.days = days;
    }

    /**
     * @throws Refused 400 naming each field as it stands in the series
     */
    List<SeriesEntry> read(Actor actor, long treeId, NewSeries series) {
        return new Reading(actor, treeId, series).all();
    }

    /** A single series being read. */
    private final class Reading {

        private final Actor actor;
        private final long treeId;
        private final NewSeries series;
        private final List<SeriesEntry> entries = new ArrayList<>();
        private final List<Fault> faults = new ArrayList<>();
        private final Map<Object, String> places = new HashMap<>();

        Reading(Actor actor, long treeId, NewSeries series) {
            this.actor = actor;
            this.treeId = treeId;
            this.series = series;
        }

        List<SeriesEntry> all() {
            check(
                    field -> "observedOn",
                    () -> days.requireHappened("observedOn", series.observedOn(), treeId));
            each("diameters", series.diameters(), this::diameter);
            each("wounds", series.wounds(), this::opening);
            each("whole", series.whole(), this::whole);
            if (entries.isEmpty() && faults.isEmpty()) {
                faults.add(new Fault("", "expected at least one value, found none"));
            }
            if (!faults.isEmpty()) {
                throw Refused.invalid(faults);
            }
            return entries;
        }

        private void diameter(String at, NewSeries.Diameter read) {
            var valueField = at + ".diameterMm";
            once(Math.round(read.heightMm()), at + ".heightMm", "this height");
            var seen = seen(Fact.TRUNK_DIAMETER_MM, text(read.diameterMm()), null, read.heightMm());
            enter(valueField, at + ".heightMm", seen);
        }

        private void opening(String at, NewSeries.Opening read) {
            once(Map.entry("wound", read.woundId()), at + ".woundId", "this wound");
            var seen = seen(Fact.WOUND_OPEN_MM, text(read.openMm()), read.woundId(), null);
            enter(at + ".openMm", at + ".woundId", seen);
        }

        private void whole(String at, NewSeries.Whole read) {
            once(read.fact().strip(), at + ".fact", "this fact");
            enter(at + ".value", at + ".fact", seen(read.fact(), read.value(), null, null));
        }

        /** Each check on its own, so that a wrong value does not hide a wrong place. */
        private void enter(String valueField, String placeField, NewObservation seen) {
            var before = faults.size();
            var fact = check(field -> placeField, () -> asked.fact(actor, seen.fact()));
            if (fact == null) {
                return;
            }
            var value = check(field -> valueField, () -> ValueText.read(fact, seen.value()));
            // a day before the wound was made is told where the wound was read
            check(
                    field -> field.equals("observedOn") ? valueField : placeField,
                    () -> asked.requirePlace(fact, treeId, seen));
            check(field -> "note", () -> FactAsked.requireReason(fact, seen.note()));
            if (value != null && faults.size() == before) {
                entries.add(new SeriesEntry(valueField, fact, value, seen));
            }
        }

        private void once(Object place, String field, String what) {
            var first = places.putIfAbsent(place, field);
            if (first != null) {
                faults.add(
                        new Fault(
                                field,
                                "expected %s once, found it at %s as well".formatted(what, first)));
            }
        }

        private void check(Function<String, String> field, Runnable check) {
            check(
                    field,
                    () -> {
                        check.run();
                        return Boolean.TRUE;
                    });
        }

        private <T> @Nullable T check(Function<String, String> field, Check<T> check) {
            try {
                return check.result();
            } catch (Refused refused) {
                if (refused.problem().status() != CANNOT_BE) {
                    throw refused;
                }
                refused.problem()
                        .faults()
                        .forEach(
                                fault ->
                                        faults.add(
                                                new Fault(
                                                        field.apply(fault.field()),
                                                        fault.message())));
                return null;
            }
        }

        private NewObservation seen(
                Fact fact, String value, @Nullable Long woundId, @Nullable Double heightMm) {
            return seen(fact.code(), value, woundId, heightMm);
        }

        private NewObservation seen(
                String fact, String value, @Nullable Long woundId, @Nullable Double heightMm) {
            return new NewObservation(
                    fact, value, series.observedOn(), series.note(), woundId, null, heightMm, null);
        }
    }

    private interface Check<T> {
        T result();
    }

    private interface Each<T> {
        void read(String at, T value);
    }

    private static <T> void each(String field, @Nullable List<T> values, Each<T> each) {
        for (int i = 0; values != null && i < values.size(); i++) {
            each.read("%s[%d]".formatted(field, i), values.get(i));
        }
    }

    /**
     * As a single entry would spell it, with as many decimals as it may have; what is no number is
     * left for the reader to refuse.
     */
    private static String text(double amount) {
        return Double.isFinite(amount)
                ? BigDecimal.valueOf(amount)
                        .setScale(DECIMALS, RoundingMode.HALF_UP)
                        .toPlainString()
                : String.valueOf(amount);
    }
}
