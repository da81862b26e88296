package org.ripewood.routes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ripewood.core.growth.Increment;
import org.ripewood.core.growth.Thickening;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.Forecasts;
import org.ripewood.core.progress.Recovery;
import org.ripewood.core.progress.Requirement;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Subject;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.core.route.Durations;
import org.ripewood.core.route.Route;
import org.ripewood.core.route.RouteRules;
import org.ripewood.core.route.Spread;
import org.ripewood.core.route.TreeRoute;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.core.season.Outlook;
import org.ripewood.core.season.TypicalYear;
import org.ripewood.course.Content;
import org.ripewood.course.ContentInJar;

/** A tree by what is known of it, all of it seen on one day by an instructor. */
final class TypicalTree {

    static final LocalDate DAY = LocalDate.of(2026, 11, 30);
    static final Content CONTENT = ContentInJar.read();

    private final String species;
    private final double latitude;
    private final Map<Fact, Value> facts = new EnumMap<>(Fact.class);
    private final Map<String, LocalDate> done = new HashMap<>();
    private Increment gain = Thickening.IN_TRAINING;

    /** A healthy tree in a training container of which a class knows what one visit tells. */
    TypicalTree(String species, double latitude) {
        this.species = species;
        this.latitude = latitude;
        is(Fact.VIGOUR_INDEX, 80).is(Fact.PEST_LEVEL, 0).is(Fact.FIRM_IN_CONTAINER, true);
        is(Fact.SUBSTRATE_DRAINS, true).is(Fact.SOIL_MOIST, true).is(Fact.ROOT_FILL_SHARE, 0.75);
        is(Fact.MATTED_ROOTS, false).is(Fact.CIRCLING_TURN, 0.1).is(Fact.ROOT_FLARE_EXPOSED, true);
        is(Fact.ROOT_SPREAD_DEG, 300).is(Fact.ROOT_GAP_DEG, 50).is(Fact.SACRIFICE_ROOTS_LEFT, 0);
        is(Fact.CONTAINER_KIND, "training").is(Fact.FRONT_MARK, "tentative");
        is(Fact.BRANCH_PLAN, true).is(Fact.SHOOT_EXTENSION_RATIO, 1).is(Fact.LEAF_COLOUR_GRADE, 4);
        is(Fact.FOLIAGE_LOSS_PERCENT, 5).is(Fact.DIEBACK_PERCENT, 0).is(Fact.OPEN_WOUNDS, 0);
        is(Fact.LARGEST_OPENING_MM, 0).is(Fact.SMALLEST_CLOSURE_PERCENT, 100);
        is(Fact.WOUND_STALLED, false).is(Fact.FRESH_WOUNDS, 0).is(Fact.SURPLUS_BRANCH, false);
        is(Fact.REVERSE_TAPER, false).is(Fact.WIRE_ON, false).is(Fact.WIRE_MARK_MM, 0);
        is(Fact.BRANCH_FLEXIBLE, true).is(Fact.THICKEST_BEND_MM, 4).is(Fact.INTERIOR_BUDS, 5);
        is(Fact.GIRTH_RATIO_MAX, 0.35).is(Fact.CANDIDATE_BRANCHES, 2).is(Fact.INTERNODE_MM, 15);
        is(Fact.BRANCH_MISSING, false).is(Fact.DEADWOOD_PRESENT, false);
        is(Fact.SOIL_BELOW_RIM_MM, 2).is(Fact.LAYER_WANTED, false).is(Fact.DEADWOOD_PLAN, false);
        is(Fact.DAYS_SINCE_ROOT_WORK, 700).is(Fact.DAYS_SINCE_FEEDING, 30);
        is(Fact.DAYS_SINCE_CHOP, 36_600).is(Fact.MONTHS_IN_CONTAINER, 24);
        is(Fact.DAYS_SINCE_DEFOLIATION, 36_600).is(Fact.FOLIAGE_REMOVED_SHARE, 0);
        is(Fact.LEADER_SHARE, 0.8).is(Fact.LOW_BUD_BELOW_CUT, true).is(Fact.HEIGHT_TO_BASE, 6);
        is(Fact.PLANNED_CUT_SHARE, 0.3).is(Fact.PLANNED_CUT_MM, 6).is(Fact.SHOW_PLANNED, false);
        is(Fact.LIVE_VEIN_SHARE, 0.8).is(Fact.ANCHOR_FOUND, true).is(Fact.PRIMARY_BRANCHES, 6);
        base(60, 60).branching(false, 1);
    }

    TypicalTree is(Fact fact, double amount) {
        facts.put(fact, Value.of(amount));
        return this;
    }

    TypicalTree is(Fact fact, boolean so) {
        facts.put(fact, Value.of(so));
        return this;
    }

    TypicalTree is(Fact fact, String word) {
        facts.put(fact, Value.of(word));
        return this;
    }

    TypicalTree base(double mm, double targetMm) {
        is(Fact.TRUNK_BASE_MM, mm).is(Fact.TRUNK_TARGET_MM, targetMm);
        return is(Fact.TRUNK_BASE_SHARE, mm / targetMm);
    }

    TypicalTree branching(boolean hold, double orders) {
        return is(Fact.BRANCHES_HOLD, hold).is(Fact.RAMIFICATION_ORDERS, orders);
    }

    TypicalTree done(String technique) {
        done.put(technique, DAY.minusDays(200));
        return this;
    }

    /** How fast its trunk gains, mm of radius a year. */
    TypicalTree gains(double mm) {
        gain = new Increment(mm, mm / 3);
        return this;
    }

    /** Raw stock from a nursery: thin, unbranched, as it came. */
    TypicalTree raw(double mm, double targetMm) {
        base(mm, targetMm).branching(false, 1);
        is(Fact.CONTAINER_KIND, "nursery").is(Fact.ROOT_FLARE_EXPOSED, false);
        is(Fact.FRONT_MARK, "none").is(Fact.HEIGHT_TO_BASE, 15).is(Fact.PRIMARY_BRANCHES, 2);
        return is(Fact.ROOT_FILL_SHARE, 0.9).is(Fact.BRANCH_PLAN, false);
    }

    Route route(String stage) {
        var goal =
                CONTENT.stages().stream()
                        .filter(one -> one.code().equals(stage))
                        .findFirst()
                        .orElseThrow();
        return route(goal.order(), Route.USUAL_DRAWS);
    }

    Route route(int goal, int draws) {
        return TreeRoute.simulate(
                CONTENT.rulebook(),
                RouteRulesOfContent.of(CONTENT),
                subject(),
                DAY,
                goal,
                draws,
                7);
    }

    /** A route on which all years are alike and everything is done on its first day. */
    Route plainRoute(int goal) {
        var rules = RouteRulesOfContent.of(CONTENT);
        var plain =
                new RouteRules(
                        rules.techniques(),
                        rules.clocks(),
                        rules.effects(),
                        rules.unsettles(),
                        rules.goesAfter(),
                        rules.wounding(),
                        new Durations(rules.durations().changes(), Spread.NONE));
        return TreeRoute.simulate(CONTENT.rulebook(), plain, subject(), DAY, goal, 1, 7);
    }

    /** When each technique could be done as things stand. */
    Map<String, Outlook> openings() {
        var openings = new HashMap<String, Outlook>();
        CONTENT.rulebook()
                .openings(subject(), DAY)
                .all()
                .forEach(opening -> openings.put(opening.technique(), opening.outlook()));
        return openings;
    }

    private Subject subject() {
        var kind = CONTENT.species(species);
        List<Evidence> evidence = new ArrayList<>();
        facts.forEach(
                (fact, value) ->
                        evidence.add(
                                new Evidence(fact, value, DAY, Source.INSTRUCTOR, "somebody", 1)));
        var known = Facts.of(evidence);
        double vigour = known.number(Fact.VIGOUR_INDEX);
        var recovery = Recovery.of(GrowthDays.plain(), vigour, kind.traits());
        return new Subject(
                kind.traits(),
                known,
                new WorkLedger(List.of(), latitude, recovery),
                done,
                null,
                TypicalYear.of(kind.traits().habit(), latitude),
                this::whenMet);
    }

    /** The trunk by its forecast; nothing else is forecast. */
    private Outlook whenMet(Fact fact, Requirement asked, LocalDate from) {
        if (fact == Fact.TRUNK_BASE_SHARE && asked instanceof Requirement.AtLeast least) {
            var target = ((Value.Number) facts.get(Fact.TRUNK_TARGET_MM)).amount();
            var now = ((Value.Number) facts.get(Fact.TRUNK_BASE_MM)).amount();
            var read = List.of(new Thickening.Reading(DAY, now));
            return Thickening.of(read, gain, GrowthDays.plain())
                    .whenAtLeast(least.bound() * target, from);
        }
        return Forecasts.NONE.whenMet(fact, asked, from);
    }
}
