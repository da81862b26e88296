package org.ripewood.core.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.route.Ways.StepOf;
import org.ripewood.core.season.Outlook;

/**
 * Without seasons and heavy work a route is a network of the critical path method.
 *
 * <p>An activity's length is a lag from its step to the steps that follow, and the end is a step of
 * its own. One unit of time of the examples is a day here.
 */
@Tag("fast")
class CriticalPathTest {

    /** Steps of a network: activity to its length, and to what comes before it. */
    private static final class Project {
        final Map<String, Integer> length = new LinkedHashMap<>();
        final Map<String, List<String>> before = new LinkedHashMap<>();

        Project activity(String name, int days, String... after) {
            length.put(name, days);
            before.put(name, List.of(after));
            return this;
        }

        List<RouteStep> steps() {
            var steps = new ArrayList<RouteStep>();
            before.forEach((name, after) -> steps.add(step(name, after)));
            steps.add(step("end", List.copyOf(length.keySet())));
            return steps;
        }

        private RouteStep step(String name, List<String> after) {
            var step = new StepOf(name);
            after.forEach(
                    other -> step.lags.add(Lag.sure(other, "length." + other, length.get(other))));
            return step.make();
        }
    }

    private static Route route(Project project) {
        return Route.simulate(Ways.start(), project.steps(), 1, 1, 7);
    }

    private static long startOf(Route route, String code) {
        return ChronoUnit.DAYS.between(Ways.DAY, Ways.likely(route, code));
    }

    private static List<String> chain(Route route) {
        return route.chain().stream().map(Route.Link::code).toList();
    }

    /**
     * A design example with seven activities: 16 hours, critical path A B D E G.
     *
     * <p>Source: studylib.net document 8378728, example 1, tables 1 and 2.
     */
    @Test
    void sevenActivitiesTakeTheirPublishedTimes() {
        var route =
                route(
                        new Project()
                                .activity("A", 6)
                                .activity("B", 2, "A")
                                .activity("C", 2, "A")
                                .activity("D", 3, "B")
                                .activity("F", 2, "C")
                                .activity("E", 4, "D", "F")
                                .activity("G", 1, "E"));
        var published = Map.of("A", 0, "B", 6, "C", 6, "D", 8, "F", 8, "E", 11, "G", 15);
        published.forEach((name, early) -> assertThat(startOf(route, name)).isEqualTo((int) early));
        assertThat(startOf(route, "end")).isEqualTo(16);
        assertThat(chain(route)).containsExactly("A", "B", "D", "E", "G", "end");
    }

    /**
     * Events 1 to 6: lengths 1-2 7, 1-3 10, 2-4 6, 3-4 5, 3-5 4, 4-5 3, 5-6 2; 20 units, critical
     * path 1 3 4 5 6.
     *
     * <p>Source: Taylor, "Introduction to Management Science", instructor's solutions to chapter 8,
     * problem 5 (as in the public scan 47113515, TaylCh08, page 114).
     */
    @Test
    void aNetworkOfEventsTakesItsPublishedTimes() {
        var route =
                Route.simulate(
                        Ways.start(),
                        Ways.steps(
                                new StepOf("e1"),
                                new StepOf("e2").lag("e1", 7),
                                new StepOf("e3").lag("e1", 10),
                                new StepOf("e4").lag("e2", 6).lag("e3", 5),
                                new StepOf("e5").lag("e3", 4).lag("e4", 3),
                                new StepOf("e6").lag("e5", 2)),
                        1,
                        1,
                        7);
        var published = Map.of("e2", 7, "e3", 10, "e4", 15, "e5", 18, "e6", 20);
        published.forEach((name, early) -> assertThat(startOf(route, name)).isEqualTo((int) early));
        assertThat(chain(route)).containsExactly("e1", "e3", "e4", "e5", "e6");
    }

    /**
     * A critical path of three-point activities: mean 15 weeks, variance 3.11, standard deviation
     * 1.76.
     *
     * <p>Source: Heizer and Render, "Operations Management", chapter on project management, worked
     * PERT example, critical path A C E G H; from memory. A hundredth of a week is a day here, and
     * each length is normal with the published mean and variance. Tolerances: three standard errors
     * of quantiles of 20,000 draws (5 and 6 days).
     */
    @Test
    void theCriticalPathSpreadsAsItsVariancesSay() {
        String[] names = {"A", "C", "E", "G", "H"};
        double[] mean = {2, 2, 4, 5, 2};
        double[] variance = {4 / 36.0, 4 / 36.0, 1, 64 / 36.0, 4 / 36.0};
        var steps = new ArrayList<RouteStep>();
        String before = null;
        for (int i = 0; i <= names.length; i++) {
            var step = new StepOf(i < names.length ? names[i] : "end");
            if (before != null) {
                int middle = (int) (mean[i - 1] * 100);
                int side = (int) Math.round(1.2815515655 * Math.sqrt(variance[i - 1]) * 100);
                step.lags.add(
                        new Lag(before, "length." + before, middle - side, middle, middle + side));
            }
            steps.add(step.make());
            before = step.code;
        }
        var route = Route.simulate(Ways.start(), steps, 1, 20_000, 3);
        var end = (Outlook.Expected) route.goal();
        long tenth = ChronoUnit.DAYS.between(Ways.DAY, end.earliest());
        long half = ChronoUnit.DAYS.between(Ways.DAY, end.likely());
        long nine = ChronoUnit.DAYS.between(Ways.DAY, end.latest());
        assertThat((double) half).isCloseTo(1500, within(5.0));
        assertThat((nine - tenth) / 2.0 / 1.2815515655).isCloseTo(176.4, within(4.0));
    }
}
