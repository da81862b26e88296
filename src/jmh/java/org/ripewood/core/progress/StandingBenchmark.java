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

    /** Nothing is measured that does not answer as the rulebook does. */
    @Setup
    public void agree() {
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
