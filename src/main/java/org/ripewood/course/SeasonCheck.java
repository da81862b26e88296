package org.ripewood.course;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.ripewood.core.season.StageRange;
import org.ripewood.course.CrossReferences.Codes;

/** Whether a season can open, and whether its stages are stages of a tree. */
final class SeasonCheck {

    static final String STAGES = "[0-9]{2}-[0-9]{2}";
    private static final int STAGE_CODES = 100;

    private final ContentDocuments shelf;
    private final Codes species;
    private final Faults faults;

    SeasonCheck(ContentDocuments shelf, Codes species, Faults faults) {
        this.shelf = shelf;
        this.species = species;
        this.faults = faults;
    }

    void check(Part technique) {
        var season = technique.at("season");
        for (var list : new String[] {"windows", "avoid"}) {
            for (var line : season.each(list)) {
                line.each("species").forEach(one -> species.check(one, faults));
                line.each("stages").forEach(stages -> checkRange(stages, faults));
            }
        }
        checkKind(season);
        checkEverybodyLast(season);
        checkEverySpecies(technique, season);
        checkEverOpen(technique, season);
    }

    private void checkKind(Part season) {
        boolean any = season.has("anyTime");
        boolean bound = season.has("windows") || season.has("clock");
        if (season.isThere() && any == bound) {
            faults.add(
                    season,
                    any
                            ? "anyTime beside windows or a clock"
                            : "neither anyTime, windows nor clock",
                    "exactly one of: anyTime; windows, clock or both");
        }
    }

    private static boolean forEverybody(Part line) {
        return !line.has("groups") && !line.has("species");
    }

    /** Whether a line of windows or of stages to avoid speaks of a species. */
    static boolean speaksOf(Part line, String code, Collection<String> groups) {
        return forEverybody(line) || CrossReferences.hold(line, code, groups);
    }

    private void checkEverybodyLast(Part season) {
        var windows = season.each("windows");
        for (int i = 0; i < windows.size() - 1; i++) {
            if (forEverybody(windows.get(i))) {
                faults.add(
                        windows.get(i),
                        "a line for every species before others",
                        "the line without groups and species last, since the first that holds counts");
            }
        }
    }

    /** A species that no window holds would never see the season open. */
    private void checkEverySpecies(Part technique, Part season) {
        var windows = season.each("windows");
        if (windows.isEmpty()
                || season.has("clock")
                || windows.stream().anyMatch(SeasonCheck::forEverybody)) {
            return;
        }
        var without = new ArrayList<String>();
        shelf.all(ContentKind.SPECIES)
                .forEach(
                        (code, species) -> {
                            var groups = CrossReferences.groupsOf(species.top());
                            if (isMeant(technique, code, groups)
                                    && windows.stream()
                                            .noneMatch(
                                                    line ->
                                                            CrossReferences.hold(
                                                                    line, code, groups))) {
                                without.add(code);
                            }
                        });
        if (!without.isEmpty()) {
            faults.add(
                    season.at("windows"),
                    "no line for " + String.join(", ", without),
                    "a line for every species, or a last one without groups and species");
        }
    }

    /** What is avoided must leave something of what is open. */
    private void checkEverOpen(Part technique, Part season) {
        var never = new ArrayList<String>();
        shelf.all(ContentKind.SPECIES)
                .forEach(
                        (code, species) -> {
                            var groups = CrossReferences.groupsOf(species.top());
                            if (isMeant(technique, code, groups)
                                    && !everOpen(season, code, groups)) {
                                never.add(code);
                            }
                        });
        if (!never.isEmpty()) {
            faults.add(
                    season.at("avoid"),
                    "every stage closed for " + String.join(", ", never),
                    "lines that leave at least one stage open");
        }
    }

    private static boolean everOpen(Part season, String code, Set<String> groups) {
        var windows = season.each("windows");
        var open =
                windows.stream()
                        .filter(line -> speaksOf(line, code, groups))
                        .findFirst()
                        .map(SeasonCheck::ranges)
                        .orElse(List.of());
        var closed =
                season.each("avoid").stream()
                        .filter(line -> speaksOf(line, code, groups))
                        .flatMap(line -> ranges(line).stream())
                        .toList();
        if (!windows.isEmpty() && open.isEmpty()) {
            // No line for the species, or stages that are none: told elsewhere.
            return true;
        }
        return IntStream.range(0, STAGE_CODES)
                .filter(stage -> windows.isEmpty() || holds(open, stage))
                .anyMatch(stage -> !holds(closed, stage));
    }

    private static boolean isMeant(Part technique, String code, Collection<String> groups) {
        return !technique.has("appliesTo")
                || CrossReferences.hold(technique.at("appliesTo"), code, groups);
    }

    private static boolean holds(List<StageRange> ranges, int stage) {
        return ranges.stream().anyMatch(range -> range.holds(stage));
    }

    private static List<StageRange> ranges(Part line) {
        return line.texts("stages").stream()
                .filter(text -> text.matches(STAGES))
                .map(StageRange::parse)
                .toList();
    }

    /**
     * Checks a range of stages: both ends on one track, and none in the side shoots (2) or the
     * harvestable parts (4), which trees and shrubs do not use (Meier 2001, BBCH Monograph, 2nd
     * edition: pome fruit, stone fruit, grapevine).
     */
    static void checkRange(Part at, Faults faults) {
        var text = at.text();
        if (text == null || !text.matches(STAGES)) {
            return;
        }
        var range = StageRange.parse(text);
        if (isUnused(range.from()) || isUnused(range.to())) {
            faults.add(
                    at,
                    "\"%s\"".formatted(text),
                    "BBCH stages of trees: bud 00-09, leaf 10-19, shoot 31-39, flower and fruit"
                            + " 51-89, end of the season 91-99");
        } else if (isFlower(range.from()) != isFlower(range.to())
                || (isFlower(range.from()) && range.from() > range.to())) {
            faults.add(
                    at,
                    "\"%s\", from one track to the other".formatted(text),
                    "both ends among leaves and shoots, or both among flower and fruit (51 to 89)");
        }
    }

    private static boolean isUnused(int stage) {
        return stage / 10 == 2 || stage / 10 == 4;
    }

    private static boolean isFlower(int stage) {
        return stage >= StageRange.FIRST_FLOWER_STAGE && stage <= StageRange.LAST_FLOWER_STAGE;
    }
}
