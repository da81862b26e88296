package org.ripewood.core.progress;

import org.ripewood.core.progress.TechniqueText.Check;
import org.ripewood.core.season.StageRange;
import org.ripewood.core.season.TypicalYear;
import org.ripewood.core.season.WeatherRule;
import org.ripewood.core.season.WorkClocks;

import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Writes a season rule for one species. */
final class SeasonText {

    /** Stages of shoots in growth. */
    private static final List<Integer> IN_GROWTH = List.of(31, 32, 33, 34, 35);

    private final Tongue tongue;
    private final Traits traits;

    SeasonText(Tongue tongue, Traits traits) {
        this.tongue = tongue;
        this.traits = traits;
    }

    Check check(SeasonRule rule) {
        var open = rule.stagesOf(traits);
        var closed =
                rule.avoid().stream()
                        .filter(avoid -> avoid.speaksOf(traits))
                        .flatMap(avoid -> avoid.stages().stream())
                        .toList();
        var ranges = open.stream().flatMap(part -> part.ranges().stream()).toList();
        var seen = Bool.atLeast(tongue.figure("flowers"), 0);
        var shut =
                Bool.any(
                        leaves(closed),
                        Bool.all(seen, flowers(closed)),
                        weather(rule.weather()).not());
        var inLeaves = byLeaves(rule, open, closed);
        var mayFade = ofFlowers(ranges) ? mayOpen(ranges, closed) : Bool.FALSE;
        var unseen =
                Bool.any(
                        Bool.all(inLeaves.not(), mayFade),
                        Bool.all(inLeaves, ofFlowers(closed) ? Bool.TRUE : Bool.FALSE));
        var inFlowers = Bool.all(seen, parts(open, part -> flowers(part.ranges())));
        return new Check(
                "season",
                Bool.any(shut, seen, unseen.not()),
                Bool.all(shut.not(), Bool.any(inLeaves, inFlowers)),
                Bool.FALSE);
    }

    /** Where no winter comes, work of growth is open all year, the rest in the cold. */
    private Bool byLeaves(
            SeasonRule rule, List<WorkClocks.Stages> open, List<StageRange> closed) {
        if (rule.anyStage()) {
            return Bool.TRUE;
        }
        var usual = parts(open, part -> leaves(part.ranges()));
        var inGrowth = parts(open, part -> grows(part.ranges(), closed) ? Bool.TRUE : Bool.FALSE);
        var neverRests =
                Bool.all(
                        tongue.sign("withoutWinter"),
                        Bool.equal(tongue.figure("stage"), TypicalYear.GROWING));
        return Bool.any(
                Bool.all(neverRests, Bool.any(inGrowth, tongue.sign("coolestWeeks"))),
                Bool.all(neverRests.not(), usual));
    }

    private static boolean grows(List<StageRange> open, List<StageRange> closed) {
        return IN_GROWTH.stream().anyMatch(stage -> holds(open, stage) && !holds(closed, stage));
    }

    private static boolean holds(List<StageRange> ranges, int stage) {
        return ranges.stream().anyMatch(range -> !range.onFlowerTrack() && range.holds(stage));
    }

    /** Any of the parts whose stages are right and whose weather allows it. */
    private Bool parts(List<WorkClocks.Stages> parts, Function<WorkClocks.Stages, Bool> right) {
        return Bool.any(
                parts.stream()
                        .map(part -> Bool.all(right.apply(part), enoughLeft(part), cool(part)))
                        .toList());
    }

    private Bool enoughLeft(WorkClocks.Stages part) {
        return left(part.growingDaysLeft());
    }

    private Bool left(int days) {
        return days == 0 ? Bool.TRUE : Bool.atLeast(tongue.figure("daysLeft"), days);
    }

    private Bool cool(WorkClocks.Stages part) {
        return Double.isInfinite(part.notAboveCelsius())
                ? Bool.TRUE
                : Bool.atMost(tongue.figure("warmest"), part.notAboveCelsius());
    }

    private Bool weather(WeatherRule rule) {
        var thawed =
                switch (rule.notWhileFrozen()) {
                    case NOTHING -> Bool.TRUE;
                    case WOOD -> tongue.sign("woodFrozen").not();
                    case BALL -> tongue.sign("ballFrozen").not();
                };
        var cold = rule.nearDangerousCold() ? tongue.sign("nearDangerousCold") : Bool.TRUE;
        return Bool.all(left(rule.growingDaysLeft()), thawed, cold);
    }

    /** Buds and fruit go by the leaves where stages of them are given, and by a look else. */
    private Bool mayOpen(List<StageRange> open, List<StageRange> closed) {
        if (open.stream().anyMatch(SeasonText::holdsFade)) {
            return mayFade();
        }
        var free =
                IntStream.range(0, 100)
                        .anyMatch(stage -> holds(open, stage) && !holds(closed, stage));
        return free ? Bool.FALSE : Bool.TRUE;
    }

    /** Stages 67 to 69: petals falling to all fallen. */
    private static boolean holdsFade(StageRange range) {
        return range.onFlowerTrack()
                && IntStream.rangeClosed(67, 69).anyMatch(stage -> range.holds(stage));
    }

    /** Flowers may fade at any stage when nobody has said at which they do. */
    private Bool mayFade() {
        var fade = traits.clocks().flowersFade();
        return fade.isEmpty() ? Bool.TRUE : within(tongue.figure("stage"), fade);
    }

    private static boolean ofFlowers(List<StageRange> ranges) {
        return ranges.stream().anyMatch(StageRange::onFlowerTrack);
    }

    private Bool leaves(List<StageRange> ranges) {
        return within(
                tongue.figure("stage"),
                ranges.stream().filter(range -> !range.onFlowerTrack()).toList());
    }

    private Bool flowers(List<StageRange> ranges) {
        return within(
                tongue.figure("flowers"),
                ranges.stream().filter(StageRange::onFlowerTrack).toList());
    }

    private static Bool within(String stage, List<StageRange> ranges) {
        return Bool.any(ranges.stream().map(range -> within(stage, range)).toList());
    }

    private static Bool within(String stage, StageRange range) {
        var begun = Bool.atLeast(stage, range.from());
        var notOver = Bool.atMost(stage, range.to());
        return range.from() <= range.to() ? Bool.all(begun, notOver) : Bool.any(begun, notOver);
    }
}
