package org.ripewood.core.progress;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

import java.util.List;
import java.util.concurrent.TimeUnit;

/** How one tree stands on a day with every technique of the course content, by each contender. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class StandingBenchmark {

    @Param public Contenders contender;

    private Contender judge;
    private List<RandomTrees.Case> trees;
    private int next;

    private static final long ROUND_NANOS = TimeUnit.SECONDS.toNanos(4);
    private static final int MOST_ROUNDS = 10;
    private static final double ALIKE = 0.05;

    /** What answers otherwise than the rulebook, or is still getting faster, is not measured. */
    @Setup
    public void prepare() {
        agree();
        warmUp();
    }

    /** Until two rounds differ by less than five per cent, or for forty seconds. */
    private void warmUp() {
        double before = round();
        for (int i = 1; i < MOST_ROUNDS; i++) {
            double now = round();
            if (Math.abs(now - before) < ALIKE * before) {
                return;
            }
            before = now;
        }
    }

    /** Nanoseconds a tree. */
    private double round() {
        long begun = System.nanoTime();
        long judged = 0;
        while (System.nanoTime() - begun < ROUND_NANOS) {
            for (var tree : trees) {
                judged += judge.judge(tree.subject(), tree.on()).isEmpty() ? 0 : 1;
            }
        }
        return (double) (System.nanoTime() - begun) / judged;
    }

    private void agree() {
        var contest = new Contest(Contest.MEASURED);
        trees = contest.trees;
        judge = contender.make(contest.rules);
        var rulebook = Contenders.RULEBOOK.make(contest.rules);
        var differences = Agreement.differences(rulebook, judge, trees);
        if (!differences.isEmpty()) {
            throw new IllegalStateException(
                    contender + " answers otherwise:\n" + String.join("\n", differences));
        }
    }

    /** One tree after the other, over and over. */
    @Benchmark
    public List<Outcome> standings() {
        var tree = trees.get(next);
        next = next + 1 == trees.size() ? 0 : next + 1;
        return judge.judge(tree.subject(), tree.on());
    }
}
