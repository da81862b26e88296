package org.ripewood.condition;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.growth.ClosingBelief;
import org.ripewood.core.growth.Closure;
import org.ripewood.core.growth.ClosureForecast;
import org.ripewood.core.growth.Thickening;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.Forecasts;
import org.ripewood.core.progress.Requirement;
import org.ripewood.core.progress.Value;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.core.season.Outlook;
import org.ripewood.records.TreeRecord;
import org.ripewood.records.Wound;

/** What growing alone will bring about on a tree: wounds that close, a trunk that thickens. */
final class TreeForecasts implements Forecasts {

    private static final Set<Fact> STRENGTH =
            EnumSet.of(
                    Fact.VIGOUR_INDEX,
                    Fact.SHOOT_EXTENSION_RATIO,
                    Fact.SHOOT_EXTENSION_MM,
                    Fact.LEAF_COLOUR_GRADE,
                    Fact.FOLIAGE_LOSS_PERCENT,
                    Fact.DIEBACK_PERCENT);

    /** Below a fair tree of the school's rubric of vigour. */
    private static final double WEAK = 55;

    private final TreeRecord record;
    private final Function<Fact, String> titles;
    private final ClosingBelief closing;
    private final Facts facts;
    private final GrowthDays growth;
    private final List<Wound> wounds;
    private final Map<Long, ClosureForecast> closures = new HashMap<>();
    private @Nullable Thickening trunk;

    /**
     * @param titles what facts are called
     * @param leastWoundMm first width from which a cut counts as a wound
     * @param closing what is believed of how the tree's kind closes wounds
     */
    TreeForecasts(
            TreeRecord record,
            Function<Fact, String> titles,
            ClosingBelief closing,
            Facts facts,
            GrowthDays growth,
            double leastWoundMm) {
        this.record = record;
        this.titles = titles;
        this.closing = closing;
        this.facts = facts;
        this.growth = growth;
        this.wounds = WoundFacts.counted(record, leastWoundMm);
    }

    @Override
    public Outlook whenMet(Fact fact, Requirement requirement, LocalDate from) {
        Outlook grown = null;
        if (requirement instanceof Requirement.AtMost most) {
            grown = whenAtMost(fact, most.bound(), from);
        } else if (requirement instanceof Requirement.AtLeast least) {
            grown = whenAtLeast(fact, least.bound(), from);
        }
        return grown == null ? untold(fact) : grown;
    }

    private Outlook untold(Fact fact) {
        return new Outlook.Unsaid(
                "Time alone is not known to change this: %s. %s"
                        .formatted(titles.apply(fact), whenToLook(fact)));
    }

    /** Whoever is told to work on a weak tree, so that it can be looked at again, harms it. */
    private String whenToLook(Fact fact) {
        if (fact == Fact.PEST_LEVEL) {
            return "Treat it, and look again in a week or two.";
        }
        if (STRENGTH.contains(fact)) {
            return "Give the tree light, feed and no work, and look at it again while it grows.";
        }
        return facts.number(Fact.VIGOUR_INDEX) < WEAK
                ? "Let the tree grow strong first, then look at it again."
                : "Look at it again after the next work.";
    }

    private @Nullable Outlook whenAtMost(Fact fact, double bound, LocalDate from) {
        return switch (fact) {
            case LARGEST_OPENING_MM -> allAtMost(wounds.stream(), wound -> bound, from);
            case OPEN_WOUNDS -> openAtMost(bound, from);
            case FRESH_WOUNDS -> freshAtMost(bound);
            default -> null;
        };
    }

    private @Nullable Outlook whenAtLeast(Fact fact, double bound, LocalDate from) {
        return switch (fact) {
            case SMALLEST_CLOSURE_PERCENT ->
                    allAtMost(
                            wounds.stream().filter(WoundFacts::closureAsked),
                            wound -> wound.firstWidthMm() * (1 - bound / 100),
                            from);
            case TRUNK_BASE_MM -> trunk().whenAtLeast(bound, from);
            case TRUNK_BASE_SHARE -> baseAtLeast(bound, from);
            default -> null;
        };
    }

    /** How a wound of the tree closes. */
    ClosureForecast closing(Wound wound) {
        return closures.computeIfAbsent(
                wound.id(),
                any -> {
                    if (wound.deadwoodByDesign()) {
                        return ClosureForecast.deadwood(wound.closure(), growth);
                    }
                    var vigour = facts.number(Fact.VIGOUR_INDEX);
                    return ClosureForecast.of(
                            wound.closure(),
                            closing,
                            Double.isNaN(vigour) ? null : vigour,
                            trunk().form() == Thickening.Form.NOTHING_READ
                                    ? null
                                    : trunk().increment(),
                            growth);
                });
    }

    /** How the trunk's base thickens. */
    Thickening trunk() {
        var known = trunk;
        if (known == null) {
            known = Thickening.of(readings(), Thickening.IN_TRAINING, growth);
            trunk = known;
        }
        return known;
    }

    private List<Thickening.Reading> readings() {
        return record.seen(Fact.TRUNK_BASE_MM)
                .map(
                        seen ->
                                new Thickening.Reading(
                                        seen.observedOn(), ((Value.Number) seen.value()).amount()))
                .toList();
    }

    private interface Width {
        double askedOf(Wound wound);
    }

    private Outlook allAtMost(Stream<Wound> asked, Width mm, LocalDate from) {
        return Outlook.allOf(
                asked.map(wound -> closing(wound).whenAtMost(mm.askedOf(wound), from)).toList());
    }

    /** Of more wounds than may be open, those that close first have to have closed. */
    private Outlook openAtMost(double most, LocalDate from) {
        var justClosed = Math.nextDown(Closure.OPEN_FROM_MM);
        var outlooks =
                wounds.stream()
                        .map(wound -> closing(wound).whenAtMost(justClosed, from))
                        .sorted(Comparator.comparing(outlook -> order(outlook, from)));
        return allButLatest(outlooks.toList(), most);
    }

    private Outlook freshAtMost(double most) {
        var outlooks =
                WoundFacts.toDress(record)
                        .map(Wound::madeOn)
                        .sorted()
                        .map(made -> made.plusDays(WoundFacts.FRESH_DAYS + 1L))
                        .map(day -> (Outlook) Outlook.Expected.on(day));
        return allButLatest(outlooks.toList(), most);
    }

    private static Outlook allButLatest(List<Outlook> soonestFirst, double most) {
        long gone = Math.max(0, soonestFirst.size() - (long) most);
        return Outlook.allOf(soonestFirst.stream().limit(gone).toList());
    }

    private static LocalDate order(Outlook outlook, LocalDate from) {
        return outlook.dayAt(0.5, from).orElse(LocalDate.MAX);
    }

    private Outlook baseAtLeast(double share, LocalDate from) {
        var target = facts.number(Fact.TRUNK_TARGET_MM);
        return Double.isNaN(target)
                ? new Outlook.Unsaid("No trunk base is planned yet: say how thick it is to be.")
                : trunk().whenAtLeast(share * target, from);
    }
}
