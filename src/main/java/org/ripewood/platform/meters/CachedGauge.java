package org.ripewood.platform.meters;

import java.time.Duration;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.jboss.logging.Logger;

/** A number to be watched, which may cost a query and so is asked for seldom. */
final class CachedGauge implements Supplier<Number> {

    private static final Logger LOG = Logger.getLogger(CachedGauge.class);

    private final CachedValue<Number> number;

    /**
     * @param clock in nanoseconds, from any beginning
     */
    CachedGauge(Supplier<Long> amount, Duration fresh, LongSupplier clock) {
        this.number = new CachedValue<>(() -> known(amount), fresh, clock);
    }

    /** NaN, which Prometheus takes for unknown, while it cannot be told. */
    @Override
    public Number get() {
        return number.get();
    }

    private static Number known(Supplier<Long> amount) {
        try {
            return amount.get();
        } catch (RuntimeException e) {
            LOG.warn("A number to be watched cannot be told.", e);
            return Double.NaN;
        }
    }
}
