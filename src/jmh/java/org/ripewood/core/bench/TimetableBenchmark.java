package org.ripewood.core.bench;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

import java.util.concurrent.TimeUnit;

/**
 * A class day laid out by list, and by search and proof, by number of trees. Read the times against
 * each other, not by themselves: {@code list} with 10 trees is 1.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class TimetableBenchmark {

    @Param({"10", "20", "30"})
    public int trees;

    private ClassDay day;

    @Setup
    public void fillDay() {
        day = new RandomDays(trees).day(trees, 2, 0.7);
    }

    @Benchmark
    public Timetable list() {
        return new ListTimetabler().plan(day, Timetabler.NEVER);
    }

    @Benchmark
    public Timetable searched() {
        return new ChocoTimetabler(1).plan(day, Timetabler.NEVER);
    }
}
