package org.ripewood.core.progress;

import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Runs {@link StandingBenchmark} and prints each contender as a multiple of Java written out.
 *
 * <p>Every round measures all contenders once, each in a JVM of its own that has been warmed up
 * until its times stand still; the ratio is taken within the round and the middle one told, so that
 * a busy quarter of an hour weighs on all alike.
 */
public final class Ratios {

    private static final int ROUNDS = Integer.getInteger("rounds", 3);

    /** Those to be measured, parted by commas; Java written out must be among them. */
    private static final String[] CONTENDERS =
            System.getProperty("contenders", "RULEBOOK,STRAIGHT_JAVA,CEL,DROOLS").split(",");

    /** The optimising compiler stays on, even where the environment turns it off for builds. */
    private static final String[] JVM = {
        "-XX:TieredStopAtLevel=4",
        "-XX:+UseSerialGC",
        "-Xms512m",
        "-Xmx512m",
        "-Djava.util.logging.manager=org.jboss.logmanager.LogManager"
    };

    private record Figures(double micros, double bytes) {}

    private Ratios() {}

    public static void main(String[] args) throws RunnerException {
        var time = new EnumMap<Contenders, List<Double>>(Contenders.class);
        var memory = new EnumMap<Contenders, List<Double>>(Contenders.class);
        for (int round = 0; round < ROUNDS; round++) {
            var figures = round();
            var written = figures.get(Contenders.STRAIGHT_JAVA);
            figures.forEach(
                    (contender, found) -> {
                        add(time, contender, found.micros() / written.micros());
                        add(memory, contender, found.bytes() / 1000);
                    });
        }
        print(time, memory);
    }

    private static Map<Contenders, Figures> round() throws RunnerException {
        var options =
                new OptionsBuilder()
                        .include(StandingBenchmark.class.getName())
                        .forks(1)
                        .param("contender", CONTENDERS)
                        .warmupIterations(2)
                        .warmupTime(TimeValue.seconds(2))
                        .measurementIterations(5)
                        .measurementTime(TimeValue.seconds(2))
                        .jvmArgsAppend(JVM)
                        .addProfiler(GCProfiler.class)
                        .shouldFailOnError(true)
                        .build();
        var figures = new EnumMap<Contenders, Figures>(Contenders.class);
        for (var result : new Runner(options).run()) {
            var contender = Contenders.valueOf(result.getParams().getParam("contender"));
            figures.put(
                    contender, new Figures(result.getPrimaryResult().getScore(), bytes(result)));
        }
        return figures;
    }

    private static double bytes(RunResult result) {
        return result.getSecondaryResults().entrySet().stream()
                .filter(entry -> entry.getKey().endsWith("gc.alloc.rate.norm"))
                .mapToDouble(entry -> entry.getValue().getScore())
                .findFirst()
                .orElseThrow();
    }

    private static void add(
            Map<Contenders, List<Double>> ratios, Contenders contender, double ratio) {
        ratios.computeIfAbsent(contender, none -> new ArrayList<>()).add(ratio);
    }

    private static void print(
            Map<Contenders, List<Double>> time, Map<Contenders, List<Double>> memory) {
        System.out.printf("%nJava written out = 1, middle of %d rounds (least to most)%n", ROUNDS);
        System.out.printf("%-15s %-28s %s%n", "", "time", "kB a tree");
        for (var contender : time.keySet()) {
            System.out.printf(
                    "%-15s %-28s %s%n",
                    contender.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '),
                    told(time.get(contender)),
                    told(memory.get(contender)));
        }
    }

    private static String told(List<Double> ratios) {
        var sorted = ratios.stream().sorted().toList();
        return "%.2f (%.2f to %.2f)"
                .formatted(
                        sorted.get(sorted.size() / 2),
                        sorted.get(0),
                        sorted.get(sorted.size() - 1));
    }
}
