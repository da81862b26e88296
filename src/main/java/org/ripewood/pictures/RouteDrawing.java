package org.ripewood.pictures;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.ripewood.core.season.Outlook;

/**
 * A tree's way to a goal, to be drawn.
 *
 * @param tree what to call the tree
 * @param goal what it is on its way to
 * @param latitudeDegrees of its site, south negative: where a growing season begins and ends
 * @param today where the way begins
 * @param reached when the goal is likely to be reached
 * @param stages in the order they are passed
 * @param waitsLongestFor what holds the tree up longest, in words; empty when nothing does
 * @param assumed whether {@code reached} hangs on something taken for granted
 */
public record RouteDrawing(
        String tree,
        String goal,
        double latitudeDegrees,
        LocalDate today,
        Outlook reached,
        List<Stage> stages,
        String waitsLongestFor,
        boolean assumed) {

    /** A stage and its steps, in the order they are told. */
    public record Stage(String title, List<Step> steps) {
        public Stage {
            steps = List.copyOf(steps);
        }
    }

    /**
     * A step on the way.
     *
     * @param when already, when it is done
     * @param critical whether a delay of it delays the goal
     * @param waitsFor what it waits for, in words; empty when for nothing
     * @param assumed whether it hangs on something taken for granted
     */
    public record Step(
            String title, Outlook when, boolean critical, String waitsFor, boolean assumed) {}

    public RouteDrawing {
        if (!(Math.abs(latitudeDegrees) <= 90)) {
            throw new IllegalArgumentException(
                    "latitude must lie between -90 and 90, found " + latitudeDegrees);
        }
        stages = List.copyOf(stages);
    }

    Stream<Step> steps() {
        return stages.stream().flatMap(stage -> stage.steps().stream());
    }
}
