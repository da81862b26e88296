package org.ripewood.trees;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.Habit;
import org.ripewood.course.Species;
import org.ripewood.sites.Site;

/**
 * A species' year at a place: every technique's open days across half months, to be read by a
 * teacher against what the species needs.
 *
 * @param site null for a mild cool-temperate year in the north, when no site is chosen
 * @param first first day of the growing season told
 * @param withoutWinter whether trees never rest there, so that winter's work has the coolest weeks
 * @param months names of its twelve months, from the first day's on
 * @param stages growth stage at the beginning of each half month, two digits
 * @param clocks what stands with the species, once for all techniques
 * @param parts techniques by the stage of development they belong to
 */
public record SeasonSheet(
        @Nullable Site site,
        Species species,
        LocalDate first,
        boolean withoutWinter,
        List<String> months,
        List<String> stages,
        List<Clock> clocks,
        List<Part> parts) {

    /**
     * Whether the species needs winter, as all but tropical kinds do (common practice, no source).
     */
    public boolean wantsWinter() {
        return species.traits().habit() != Habit.TROPICAL;
    }

    /** What is said once of the species, in words. */
    public record Clock(String title, String stages) {}

    public record Part(String title, List<Row> rows) {}

    /**
     * One technique.
     *
     * @param halves of each half month: "x" open on most of its days, "·" on some, "" on none
     * @param days the open days in words
     */
    public record Row(String technique, String title, List<String> halves, String days) {}
}
