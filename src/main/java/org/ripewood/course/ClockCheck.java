package org.ripewood.course;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.ripewood.core.season.StageRange;
import org.ripewood.core.season.WorkClock;

/**
 * Whether all techniques give one answer to when a species is cut, wired or repotted: those that
 * cut roots go by its root work, those that take branches by one of its clocks for cuts, windows of
 * their own lie within, and no cut is made while it bleeds.
 */
final class ClockCheck {

    private static final Set<WorkClock> CUTS =
            Set.of(WorkClock.SMALL_CUTS, WorkClock.LARGE_CUTS, WorkClock.CHOP);

    private final ContentDocuments shelf;
    private final SpeciesBuilding.Clocks clocks;
    private final Faults faults;

    ClockCheck(ContentDocuments shelf, Faults faults) {
        this.shelf = shelf;
        this.clocks = new SpeciesBuilding.Clocks(shelf);
        this.faults = faults;
    }

    void check() {
        for (var group : shelf.entries(ContentKind.GROUPS, "groups")) {
            checkRanges(group.at("clocks"));
        }
        shelf.all(ContentKind.SPECIES).values().forEach(one -> checkSpecies(one.top()));
        shelf.all(ContentKind.TECHNIQUE).values().forEach(one -> checkTechnique(one.top()));
    }

    private void checkRanges(Part said) {
        for (var name : said.names()) {
            said.each(name).forEach(stages -> SeasonCheck.checkRange(stages, faults));
        }
    }

    /** Whether groups.yaml has all its groups; if not, that is the fault to be told. */
    private boolean groupsKnown(Part species) {
        var known =
                shelf.entries(ContentKind.GROUPS, "groups").stream()
                        .map(group -> group.text("code"))
                        .toList();
        return known.containsAll(CrossReferences.groupsOf(species));
    }

    private void checkSpecies(Part species) {
        checkRanges(species.at("clocks"));
        var repotting = species.at("repotting");
        repotting
                .at("lateSummer")
                .each("stages")
                .forEach(one -> SeasonCheck.checkRange(one, faults));
        species.at("flowering").each("fade").forEach(one -> SeasonCheck.checkRange(one, faults));
        for (var clock : WorkClock.values()) {
            var stages = clocks.stages(species, clock);
            if (stages == null) {
                if (clock != WorkClock.ROOT_WORK && groupsKnown(species)) {
                    faults.add(
                            species.at("code"),
                            "no season for " + clock.code(),
                            "stages for %s among the clocks of the species or of one of its groups"
                                    .formatted(clock.code()));
                }
                continue;
            }
            checkSpecies(species, clock, stages);
        }
    }

    private void checkSpecies(Part species, WorkClock clock, Part stages) {
        var ranges = SpeciesBuilding.Clocks.ranges(stages);
        if (ranges.stream().anyMatch(StageRange::onFlowerTrack)
                && !species.at("flowering").has("fade")) {
            faults.add(
                    stages,
                    "stages of the flowers for %s of %s"
                            .formatted(clock.code(), species.text("code")),
                    "stages of leaves and shoots, or a species that says under flowering when its"
                            + " flowers fade");
        }
        int both = firstInBoth(ranges, clocks.bleeding(species));
        if (CUTS.contains(clock) && both >= 0) {
            faults.add(
                    stages,
                    "%s at stage %02d, when cuts bleed".formatted(clock.code(), both),
                    "stages outside of the bleeding");
        }
    }

    private void checkTechnique(Part technique) {
        var season = technique.at("season");
        var clock = WorkClock.find(String.valueOf(season.text("clock"))).orElse(null);
        var asks = technique.texts("asks");
        boolean roots =
                asks.contains("rootShare") || "root".equals(technique.at("dose").text("kind"));
        boolean branches = asks.contains("foliageShare") && asks.contains("wound");
        if (clock == null && season.has("clock")) {
            return;
        }
        if (roots && clock != WorkClock.ROOT_WORK) {
            faults.add(season, clockOf(season), "clock: root_work. Maybe add it; roots are cut");
        }
        if (branches && (clock == null || !CUTS.contains(clock))) {
            faults.add(
                    season,
                    clockOf(season),
                    "clock: small_cuts, large_cuts or chop. Maybe small_cuts; branches are cut");
        }
        if (clock != null) {
            checkWithin(technique, season, clock);
        }
        boolean cuts =
                (clock != null && CUTS.contains(clock)) || (asks.contains("wound") && !roots);
        if (cuts && !season.has("whileBleeding") && !season.has("anyTime")) {
            checkBleeding(technique, season);
        }
        if (season.has("nearDangerousCold") && !season.has("anyTime")) {
            faults.add(
                    season.at("nearDangerousCold"),
                    "nearDangerousCold beside windows or a clock",
                    "it with anyTime, since the cold decides");
        }
    }

    private static String clockOf(Part season) {
        var clock = season.text("clock");
        return clock == null ? "no \"clock\"" : "clock: " + clock;
    }

    /** The species that each line of a technique's windows is the first to speak of. */
    private Map<Part, List<Part>> lines(Part technique, Part season) {
        var lines = new LinkedHashMap<Part, List<Part>>();
        for (var document : shelf.all(ContentKind.SPECIES).values()) {
            var species = document.top();
            var code = String.valueOf(species.text("code"));
            var groups = CrossReferences.groupsOf(species);
            if (technique.has("appliesTo")
                    && !CrossReferences.hold(technique.at("appliesTo"), code, groups)) {
                continue;
            }
            season.each("windows").stream()
                    .filter(line -> SeasonCheck.speaksOf(line, code, groups))
                    .findFirst()
                    .ifPresent(
                            line ->
                                    lines.computeIfAbsent(line, l -> new ArrayList<>())
                                            .add(species));
        }
        return lines;
    }

    private void checkWithin(Part technique, Part season, WorkClock clock) {
        lines(technique, season)
                .forEach(
                        (line, all) -> {
                            var outside =
                                    all.stream()
                                            .filter(species -> isOutside(line, species, clock))
                                            .map(species -> named(species, clock))
                                            .toList();
                            if (!outside.isEmpty()) {
                                faults.add(
                                        line.at("stages"),
                                        "%s, outside of %s of %s"
                                                .formatted(
                                                        told(line),
                                                        clock.code(),
                                                        String.join(", ", outside)),
                                        "stages within it. Maybe leave the line out; the clock says"
                                                + " it");
                            }
                        });
    }

    private boolean isOutside(Part line, Part species, WorkClock clock) {
        var own = SpeciesBuilding.Clocks.ranges(line.at("stages"));
        var said = clocks.of(species).of(clock);
        return !said.isEmpty()
                && firstStage(
                                stage ->
                                        holds(own, stage)
                                                && said.stream()
                                                        .noneMatch(
                                                                part ->
                                                                        holds(
                                                                                part.ranges(),
                                                                                stage)))
                        >= 0;
    }

    private String named(Part species, WorkClock clock) {
        var said =
                clocks.of(species).of(clock).stream()
                        .flatMap(part -> part.ranges().stream())
                        .map(StageRange::toString)
                        .toList();
        return "%s (%s)".formatted(species.text("code"), String.join(", ", said));
    }

    private void checkBleeding(Part technique, Part season) {
        lines(technique, season)
                .forEach(
                        (line, all) -> {
                            var bleed =
                                    all.stream()
                                            .filter(species -> bleeds(season, line, species))
                                            .map(species -> species.text("code"))
                                            .toList();
                            if (!bleed.isEmpty()) {
                                faults.add(
                                        line.at("stages"),
                                        "%s, when cuts bleed on %s"
                                                .formatted(told(line), String.join(", ", bleed)),
                                        "a line for them outside of their bleeding. Maybe"
                                                + " whileBleeding, with why it may be done then");
                            }
                        });
    }

    private boolean bleeds(Part season, Part line, Part species) {
        int both =
                firstInBoth(
                        SpeciesBuilding.Clocks.ranges(line.at("stages")), clocks.bleeding(species));
        return both >= 0 && !avoided(season, species, String.valueOf(species.text("code")), both);
    }

    private static boolean avoided(Part season, Part species, String code, int stage) {
        var groups = CrossReferences.groupsOf(species);
        return season.each("avoid").stream()
                .filter(line -> SeasonCheck.speaksOf(line, code, groups))
                .flatMap(line -> SpeciesBuilding.Clocks.ranges(line.at("stages")).stream())
                .anyMatch(range -> range.holds(stage));
    }

    private static int firstInBoth(List<StageRange> one, List<StageRange> other) {
        return firstStage(stage -> holds(one, stage) && holds(other, stage));
    }

    /** A range of leaves over winter runs past the codes of the flowers, but does not hold them. */
    private static boolean holds(List<StageRange> ranges, int stage) {
        boolean flower =
                stage >= StageRange.FIRST_FLOWER_STAGE && stage <= StageRange.LAST_FLOWER_STAGE;
        return ranges.stream().anyMatch(r -> r.onFlowerTrack() == flower && r.holds(stage));
    }

    private static int firstStage(IntPredicate wanted) {
        return IntStream.range(0, 100).filter(wanted).findFirst().orElse(-1);
    }

    private static String told(Part line) {
        return String.join(", ", line.texts("stages"));
    }
}
