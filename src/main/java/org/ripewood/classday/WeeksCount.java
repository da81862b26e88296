package org.ripewood.classday;

import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;

/** One count of weeks that goes on in the background. */
final class WeeksCount {

    /** Is told how many trees are through. */
    interface Step {
        void done(int trees);
    }

    private final int trees;
    private final long begunNanos = System.nanoTime();
    private final CompletableFuture<LessonWeeks> result = new CompletableFuture<>();
    private volatile int counted;

    WeeksCount(int trees) {
        this.trees = trees;
    }

    /** Runs the count; what goes wrong is told to those who wait for it. */
    void run(Function<Step, LessonWeeks> count) {
        try {
            result.complete(count.apply(through -> counted = through));
        } catch (RuntimeException | Error failure) {
            result.completeExceptionally(failure);
        }
    }

    boolean over() {
        return result.isDone();
    }

    boolean isOlderThan(Duration age) {
        return System.nanoTime() - begunNanos > age.toNanos();
    }

    WeeksProgress await(Duration patience) {
        try {
            return new WeeksProgress(
                    trees, trees, result.get(patience.toMillis(), TimeUnit.MILLISECONDS));
        } catch (TimeoutException goesOn) {
            return new WeeksProgress(counted, trees, null);
        } catch (ExecutionException failed) {
            throw new CompletionException(failed.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return new WeeksProgress(counted, trees, null);
        }
    }
}
