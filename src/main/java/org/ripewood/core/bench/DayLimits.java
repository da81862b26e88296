package org.ripewood.core.bench;

import java.util.Map;
import java.util.TreeMap;

/**
 * What there is for all trees of a class day together.
 *
 * @param dayMinutes without breaks
 * @param studentMinutes by student for all their trees; who is not named has the whole day
 * @param instructorMinutes of all instructors together
 * @param tools by name how many there are; one that is not named is not there
 * @param materials by name how much there is, in the material's own unit
 * @param mostPerTree pieces of work a tree gets at most, pinned ones apart; usually 1
 */
public record DayLimits(
        int dayMinutes,
        Map<String, Integer> studentMinutes,
        int instructorMinutes,
        Map<String, Integer> tools,
        Map<String, Double> materials,
        int mostPerTree) {

    /** More of one tool than any day can use. */
    public static final int MOST_OF_A_TOOL = 10_000;

    public DayLimits {
        requireBetween("a day's minutes", 1, Span.DAY_MINUTES, dayMinutes);
        requireBetween(
                "instructors' minutes",
                0,
                ClassDay.MOST_INSTRUCTORS * Span.DAY_MINUTES,
                instructorMinutes);
        requireBetween("pieces per tree", 1, 3, mostPerTree);
        studentMinutes = Map.copyOf(studentMinutes);
        tools = Map.copyOf(tools);
        materials = Map.copyOf(materials);
        new TreeMap<>(studentMinutes)
                .forEach((who, minutes) -> requireBetween(who, 0, Span.DAY_MINUTES, minutes));
        new TreeMap<>(tools)
                .forEach((tool, count) -> requireBetween(tool, 0, MOST_OF_A_TOOL, count));
        new TreeMap<>(materials).forEach(DayLimits::requireAmount);
    }

    private static void requireBetween(String what, int least, int most, int found) {
        if (!(found >= least && found <= most)) {
            throw new IllegalArgumentException(
                    "%s run from %d to %d, found %d".formatted(what, least, most, found));
        }
    }

    private static void requireAmount(String material, double amount) {
        if (!(amount >= 0 && amount < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "an amount is 0 or more, found %s of %s".formatted(amount, material));
        }
    }

    int minutesOf(String student) {
        return Math.min(dayMinutes, studentMinutes.getOrDefault(student, dayMinutes));
    }

    int toolMinutes(String tool) {
        return dayMinutes * tools.getOrDefault(tool, 0);
    }
}
