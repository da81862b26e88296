package org.ripewood.core.route;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.TypicalYear;

import java.util.List;
import java.util.concurrent.TimeUnit;

/** The route of one tree to its show container, by number of steps and of draws. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class RouteBenchmark {

    @Param({"10", "40", "80"})
    public int steps;

    @Param({"1", "100", "1000"})
    public int draws;

    private List<RouteStep> way;
    private RouteStart start;
    private long seed;

    @Setup
    public void plan() {
        way = new RandomWays(4).steps(steps, true).stream().map(Ways.StepOf::make).toList();
        start =
                new RouteStart(
                        Ways.DAY,
                        new WorkLedger(List.of(), 50),
                        8,
                        TypicalYear.of(Habit.DECIDUOUS, 50));
    }

    @Benchmark
    public Route route() {
        return Route.simulate(start, way, 5, draws, seed++);
    }
}
