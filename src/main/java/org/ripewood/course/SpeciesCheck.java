package org.ripewood.course;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.Habit;

/** What the schema cannot say of a species. */
final class SpeciesCheck {

    private final Faults faults;

    SpeciesCheck(Faults faults) {
        this.faults = faults;
    }

    void check(Part species) {
        for (var group : species.each("groups")) {
            if (isHabit(group.text())) {
                faults.add(
                        group,
                        "the habit \"%s\" among the groups".formatted(group.text()),
                        "groups beside the habit, which counts as one by itself");
            }
        }
        var hardiness = species.at("hardiness");
        checkOrder(hardiness.at("zoneMin"), hardiness.at("zoneMax"));
        var repotting = species.at("repotting");
        checkPair(repotting.at("youngYears"));
        checkPair(repotting.at("oldYears"));
        checkRising(species.at("shoots"), List.of("weak", "fair", "potStrong", "groundStrong"));
        repotting.each("stages").forEach(stages -> SeasonCheck.checkRange(stages, faults));
    }

    private static boolean isHabit(@Nullable String text) {
        return Arrays.stream(Habit.values())
                .anyMatch(habit -> habit.name().toLowerCase(Locale.ROOT).equals(text));
    }

    private void checkPair(Part pair) {
        var both = pair.each();
        if (both.size() == 2) {
            checkOrder(both.get(0), both.get(1));
        }
    }

    private void checkRising(Part lengths, List<String> names) {
        for (int i = 1; i < names.size(); i++) {
            var less = lengths.at(names.get(i - 1));
            var more = lengths.at(names.get(i));
            if (less.isThere() && more.isThere() && less.number() >= more.number()) {
                faults.add(
                        more,
                        "%s %s".formatted(names.get(i), more.value()),
                        "more than %s, %s".formatted(names.get(i - 1), less.value()));
            }
        }
    }

    private void checkOrder(Part least, Part most) {
        if (least.number() > most.number()) {
            faults.add(
                    least,
                    "%s to %s".formatted(least.value(), most.value()),
                    "the lesser number first");
        }
    }
}
