package org.ripewood.course;

import java.util.ArrayList;
import org.ripewood.core.season.StageRange;

/** Whether a season can open, and whether its stages are stages of a tree. */
final class SeasonCheck {

    private static final String STAGES = "[0-9]{2}-[0-9]{2}";

    private final ContentDocuments shelf;
    private final Faults faults;

    SeasonCheck(ContentDocuments shelf, Faults faults) {
        this.shelf = shelf;
        this.faults = faults;
    }

    void check(Part technique) {
        var season = technique.at("season");
        for (var list : new String[] {"windows", "avoid"}) {
            for (var line : season.each(list)) {
                line.each("stages").forEach(stages -> checkRange(stages, faults));
            }
        }
        checkEverybodyLast(season);
        checkEverySpecies(technique, season);
    }

    private void checkEverybodyLast(Part season) {
        var windows = season.each("windows");
        for (int i = 0; i < windows.size() - 1; i++) {
            if (!windows.get(i).has("groups")) {
                faults.add(
                        windows.get(i),
                        "a line for every species before others",
                        "the line without groups last, since the first that holds counts");
            }
        }
    }

    /** A species that no window holds would never see the season open. */
    private void checkEverySpecies(Part technique, Part season) {
        var windows = season.each("windows");
        if (windows.isEmpty() || windows.stream().anyMatch(line -> !line.has("groups"))) {
            return;
        }
        var without = new ArrayList<String>();
        shelf.all(ContentKind.SPECIES)
                .forEach(
                        (code, species) -> {
                            var groups = CrossReferences.groupsOf(species.top());
                            var meant =
                                    !technique.has("appliesTo")
                                            || CrossReferences.hold(
                                                    technique.at("appliesTo"), code, groups);
                            if (meant
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
                    "a line for every species, or a last one without groups");
        }
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
