package org.ripewood.platform;

import java.time.Duration;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.jboss.logging.Logger;

/** A number that is asked for anew only when what is known of it is too old. */
final class Seldom implements Supplier<Number> {

    private static final Logger LOG = Logger.getLogger(Seldom.class);

    private final Supplier<Long> amount;
    private final long freshNanos;
    private final LongSupplier clock;
    private double known = Double.NaN;
    private long askedAt;

    /**
     * @param clock in nanoseconds, from any beginning
     */
    Seldom(Supplier<Long> amount, Duration fresh, LongSupplier clock) {
        this.amount = amount;
        this.freshNanos = fresh.toNanos();
        this.clock = clock;
        this.askedAt = clock.getAsLong() - freshNanos;
    }

    /** NaN, which Prometheus takes for unknown, while it cannot be told. */
    @Override
    public synchronized Number get() {
        long now = clock.getAsLong();
        if (now - askedAt >= freshNanos) {
            askedAt = now;
            try {
                known = amount.get();
            } catch (RuntimeException e) {
                LOG.warn("A number to be watched cannot be told.", e);
                known = Double.NaN;
            }
        }
        return known;
    }
}
