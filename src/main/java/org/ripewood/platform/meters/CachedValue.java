package org.ripewood.platform.meters;

import java.time.Duration;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A value that is asked for anew only when the last answer is too old, however many ask. */
public final class CachedValue<T> implements Supplier<T> {

    private final Supplier<T> source;
    private final long freshNanos;
    private final LongSupplier clock;
    private @Nullable T known;
    private long askedAt;

    public CachedValue(Supplier<T> source, Duration fresh) {
        this(source, fresh, System::nanoTime);
    }

    /**
     * @param clock in nanoseconds, from any beginning
     */
    CachedValue(Supplier<T> source, Duration fresh, LongSupplier clock) {
        this.source = source;
        this.freshNanos = fresh.toNanos();
        this.clock = clock;
    }

    @Override
    public synchronized T get() {
        long now = clock.getAsLong();
        var answer = known;
        if (answer == null || now - askedAt >= freshNanos) {
            answer = source.get();
            known = answer;
            askedAt = now;
        }
        return answer;
    }
}
