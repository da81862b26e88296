package org.ripewood.core.season;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;

/** Growth-time over a span of years: making it, going there and coming back. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class GrowthTimeBenchmark {

    private static final LocalDate FIRST = LocalDate.of(2000, 1, 1);
    private static final int CASES = 1024;

    @Param({"1", "10", "30", "60"})
    public int years;

    private Climate climate;
    private LocalDate last;
    private GrowthTime time;
    private final LocalDate[] days = new LocalDate[CASES];
    private final double[] amounts = new double[CASES];
    private int next;

    @Setup
    public void grow() {
        climate =
                new Climate(
                        50,
                        NormalYear.of(
                                List.of(-1., -1., 2., 5., 9., 12., 14., 14., 11., 7., 3., 0.),
                                List.of(4., 6., 10., 15., 19., 22., 25., 24., 20., 14., 8., 5.)));
        last = FIRST.plusYears(years).minusDays(1);
        time = GrowthTime.of(climate, Habit.DECIDUOUS, 5, FIRST, last);
        var random = new SplittableRandom(7);
        for (int i = 0; i < CASES; i++) {
            days[i] = FIRST.plusDays(random.nextInt(365 * years));
            amounts[i] = random.nextDouble() * time.between(days[i], last);
        }
    }

    private int step() {
        next = (next + 1) % CASES;
        return next;
    }

    /** The day by which an amount of growth has gone by. */
    @Benchmark
    public Optional<LocalDate> inverse() {
        int i = step();
        return time.dayReaching(days[i], amounts[i]);
    }

    /** The growth between two days. */
    @Benchmark
    public double between() {
        return time.between(days[step()], last);
    }

    /** Stages, day lengths and sums of the whole span. */
    @Benchmark
    public GrowthTime making() {
        return GrowthTime.of(climate, Habit.DECIDUOUS, 5, FIRST, last);
    }
}
