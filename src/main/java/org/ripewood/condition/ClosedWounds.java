package org.ripewood.condition;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.ripewood.core.growth.CallusPace;
import org.ripewood.core.growth.ClosingBelief;
import org.ripewood.core.growth.ClosurePriors;
import org.ripewood.core.growth.RateBelief;
import org.ripewood.core.growth.YearEvidence;
import org.ripewood.core.growth.YearSpread;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Species;
import org.ripewood.people.Samples;
import org.ripewood.platform.Today;
import org.ripewood.records.RecordsUnchecked;
import org.ripewood.records.TreeRecord;
import org.ripewood.sites.Seasons;

/**
 * What the school's own closed wounds teach of how fast each kind of tree closes. Worked out once
 * an hour, from the latest of them: the belief moves slowly, and a wound closes in years.
 */
@ApplicationScoped
class ClosedWounds {

    private static final int MOST_TREES = 500;
    private static final long HOUR = TimeUnit.HOURS.toNanos(1);

    /** What was learnt, of each kind and of how far years differ. */
    record Beliefs(Map<CallusPace, RateBelief> rates, YearSpread years) {

        static final Beliefs NONE = new Beliefs(Map.of(), YearSpread.UNKNOWN);

        ClosingBelief of(CallusPace pace) {
            var rate = rates.get(pace);
            return new ClosingBelief(rate == null ? pace.belief() : rate, years);
        }
    }

    private record Taught(Beliefs beliefs, long at) {}

    private final RecordsUnchecked records;
    private final Samples samples;
    private final CourseContent content;
    private final Seasons seasons;
    private final Today today;
    private volatile Taught taught = new Taught(Beliefs.NONE, 0);

    ClosedWounds(
            RecordsUnchecked records,
            Samples samples,
            CourseContent content,
            Seasons seasons,
            Today today) {
        this.records = records;
        this.samples = samples;
        this.content = content;
        this.seasons = seasons;
        this.today = today;
    }

    /** What is believed of how a species closes wounds. */
    ClosingBelief of(Species species) {
        return beliefs().of(pace(species));
    }

    private Beliefs beliefs() {
        // An import retells years gone by, when nothing of this was known yet.
        if (today.isRetold()) {
            return Beliefs.NONE;
        }
        var known = taught;
        if (known.beliefs().rates().isEmpty() || System.nanoTime() - known.at() > HOUR) {
            known = new Taught(learn(), System.nanoTime());
            taught = known;
        }
        return known.beliefs();
    }

    Beliefs learn() {
        var inForce = content.inForce();
        var rates = new EnumMap<CallusPace, List<Double>>(CallusPace.class);
        var years = new ArrayList<YearEvidence>();
        var trees = Set.copyOf(records.treesWithClosedWounds(MOST_TREES));
        var madeUp = samples.madeUp();
        for (var record : records.on(trees, today.date())) {
            var species = inForce.species().get(record.tree().species());
            if (species != null && !madeUp.contains(record.tree().keeperId())) {
                collect(record, species, rates, years);
            }
        }
        var beliefs = new EnumMap<CallusPace, RateBelief>(CallusPace.class);
        for (var pace : CallusPace.values()) {
            beliefs.put(pace, pace.belief().learn(rates.getOrDefault(pace, List.of())));
        }
        return new Beliefs(beliefs, YearSpread.UNKNOWN.learn(years));
    }

    private void collect(
            TreeRecord record,
            Species species,
            Map<CallusPace, List<Double>> rates,
            List<YearEvidence> years) {
        var season = seasons.of(record.site(), species);
        var vigour =
                new FactsOnDay(record, TreeKind.of(content.inForce(), species, season)).vigour();
        var growth = season.growth();
        for (var wound : record.wounds()) {
            ClosurePriors.rateOf(
                            wound.closure(),
                            Double.isNaN(vigour) ? CallusPace.AT_VIGOUR : vigour,
                            growth)
                    .ifPresent(
                            rate ->
                                    rates.computeIfAbsent(pace(species), any -> new ArrayList<>())
                                            .add(rate));
            YearEvidence.of(wound.closure(), pace(species).belief(), growth).ifPresent(years::add);
        }
    }

    private static CallusPace pace(Species species) {
        return CallusPace.valueOf(species.callusPace().toUpperCase(Locale.ROOT));
    }
}
