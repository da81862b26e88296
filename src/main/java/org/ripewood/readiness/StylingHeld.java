package org.ripewood.readiness;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import org.ripewood.core.season.SeasonOfYear;
import org.ripewood.standing.TreeOnDay;

/**
 * How many trees are held from styling: those whose next technique of styling is held.
 *
 * @param free how many of them nothing of their own is likely to hold any more by then
 * @param by the last day of the season after the coming one
 * @param season that season by its name, {@code "spring 2027"}
 */
public record StylingHeld(int held, int free, LocalDate by, String season) {

    /** Of a school without trees; north of the tropics the year goes alike. */
    private static final double NORTH = 50;

    private static final int MONTHS_OF_A_SEASON = 3;

    /** Of trees judged already. */
    public static StylingHeld of(Collection<TreeOnDay> trees, LocalDate on) {
        return ofRead(trees.stream().map(TreeRead::of).toList(), on);
    }

    /** The year goes by where most of them stand: by the first of them. */
    static StylingHeld ofRead(List<TreeRead> trees, LocalDate on) {
        double latitude = trees.isEmpty() ? NORTH : trees.get(0).latitudeDegrees();
        var first = SeasonOfYear.of(on, latitude).firstDay().plusMonths(2 * MONTHS_OF_A_SEASON);
        var by = first.plusMonths(MONTHS_OF_A_SEASON).minusDays(1);
        var held = trees.stream().filter(TreeRead::heldFromStyling).toList();
        var free = held.stream().filter(tree -> tree.isFree(by)).count();
        return new StylingHeld(
                held.size(), (int) free, by, SeasonOfYear.of(first, latitude).spoken());
    }

    /** {@code "2 of them free by the end of spring 2027"}; empty when none is held. */
    public String freeWords() {
        if (held == 0) {
            return "";
        }
        var those = free == 0 ? "none of them" : held == 1 ? "it" : free + " of them";
        return "%s free by the end of %s".formatted(those, season);
    }
}
