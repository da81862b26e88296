package org.ripewood.core.growth;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.core.season.Outlook;

/** One wound's closing and one trunk's thickening, from the readings to three days. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class ForecastBenchmark {

    private static final LocalDate MADE = LocalDate.of(2015, 3, 1);

    @Param({"1", "3", "10", "100", "1000"})
    public int readings;

    private final RateBelief kind = CallusPace.MODERATE.belief();
    private final GrowthDays days = GrowthDays.plain();
    private Closure wound;
    private ArrayList<Thickening.Reading> trunk;
    private LocalDate today;

    @Setup
    public void read() {
        var dice = new Random(7);
        var looks = new ArrayList<Closure.Look>();
        trunk = new ArrayList<>();
        for (int i = 1; i <= readings; i++) {
            double share = (double) i / readings;
            var on = MADE.plusDays(Math.round(1_400 * share));
            looks.add(new Closure.Look(on, 30 - 18 * share));
            double grown = 60 - 40 * Math.exp(-1.5 * share);
            trunk.add(new Thickening.Reading(on, grown + 0.5 * dice.nextGaussian()));
        }
        wound = Closure.of(MADE, 30, looks);
        today = MADE.plusDays(1_400);
    }

    @Benchmark
    public Outlook closure() {
        return ClosureForecast.of(wound, kind, 75.0, null, days).whenAtMost(5, today);
    }

    @Benchmark
    public Outlook thickening() {
        return Thickening.of(trunk, Thickening.IN_TRAINING, days).whenAtLeast(58, today);
    }
}
