package org.ripewood.core.progress;

import com.sun.management.ThreadMXBean;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/**
 * Tells what a tree costs each contender, as a multiple of Java written out.
 *
 * <p>All run in one JVM, one round each in turn, once none gets faster any more. Counted is the
 * processor's time of the thread that judges and not the time that goes by, so that other work on
 * the machine weighs little; that of compiling and of collecting garbage, in threads of their own,
 * is not in it.
 */
public final class Ratios {

    private static final int ROUNDS = Integer.getInteger("rounds", 9);
    private static final long ROUND_NANOS = TimeUnit.SECONDS.toNanos(1);
    private static final long WARM_NANOS = TimeUnit.SECONDS.toNanos(4);
    private static final int MOST_WARM_ROUNDS = 10;
    private static final double ALIKE = 0.05;
    private static final ThreadMXBean THREADS =
            (ThreadMXBean) ManagementFactory.getThreadMXBean();

    private final Contenders who;
    private final Contender contender;
    private final List<RandomTrees.Case> trees;
    private final List<Double> nanos = new ArrayList<>();
    private double bytes;

    private Ratios(Contenders who, Contest contest) {
        this.who = who;
        this.contender = who.make(contest.rules);
        this.trees = contest.trees;
        var rulebook = Contenders.RULEBOOK.make(contest.rules);
        var differences = Agreement.differences(rulebook, contender, trees);
        if (!differences.isEmpty()) {
            throw new IllegalStateException(who + " answers otherwise:\n" + differences);
        }
    }

    /**
     * @param args those measured beside Java written out; none for all
     */
    public static void main(String[] args) {
        var contest = new Contest(Contest.MEASURED);
        var all = new ArrayList<Ratios>();
        for (var who : Contenders.values()) {
            if (args.length == 0
                    || who == Contenders.STRAIGHT_JAVA
                    || List.of(args).contains(who.name())) {
                all.add(new Ratios(who, contest));
            }
        }
        all.forEach(Ratios::warmUp);
        for (int round = 0; round < ROUNDS; round++) {
            all.forEach(each -> each.nanos.add(each.round(ROUND_NANOS)));
        }
        var written =
                all.stream().filter(each -> each.who == Contenders.STRAIGHT_JAVA).findAny();
        all.forEach(each -> each.print(written.orElseThrow()));
    }

    /** Until two rounds differ by less than five per cent, or for forty seconds. */
    private void warmUp() {
        double before = round(WARM_NANOS);
        for (int i = 1; i < MOST_WARM_ROUNDS; i++) {
            double now = round(WARM_NANOS);
            if (Math.abs(now - before) < ALIKE * before) {
                return;
            }
            before = now;
        }
    }

    /** Nanoseconds a tree. */
    private double round(long least) {
        long self = Thread.currentThread().getId();
        long took = THREADS.getThreadAllocatedBytes(self);
        long begun = THREADS.getCurrentThreadCpuTime();
        long judged = 0;
        long nanos = 0;
        while (nanos < least) {
            for (var tree : trees) {
                judged += contender.judge(tree.subject(), tree.on()).isEmpty() ? 0 : 1;
            }
            nanos = THREADS.getCurrentThreadCpuTime() - begun;
        }
        bytes = (double) (THREADS.getThreadAllocatedBytes(self) - took) / judged;
        return (double) nanos / judged;
    }

    private void print(Ratios written) {
        var ratios = new ArrayList<Double>();
        for (int round = 0; round < nanos.size(); round++) {
            ratios.add(nanos.get(round) / written.nanos.get(round));
        }
        ratios.sort(null);
        System.out.printf(
                Locale.ROOT,
                "%-14s %.2f (%.2f to %.2f) of Java written out, %.1f us, %.1f kB a tree%n",
                who,
                ratios.get(ratios.size() / 2),
                ratios.get(0),
                ratios.get(ratios.size() - 1),
                nanos.stream().sorted().toList().get(nanos.size() / 2) / 1000,
                bytes / 1000);
    }
}
