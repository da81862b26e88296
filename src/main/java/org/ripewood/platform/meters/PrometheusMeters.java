package org.ripewood.platform.meters;

import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.function.Supplier;

/** Meters as Micrometer keeps them, for a Prometheus to read. */
@ApplicationScoped
class PrometheusMeters implements Meters {

    private static final Duration FRESH = Duration.ofMinutes(1);

    private final MeterRegistry registry;

    PrometheusMeters(MeterRegistry registry) {
        this.registry = registry;
    }

    @Override
    public <T> T time(Meter meter, Supplier<T> work) {
        var begun = Timer.start(registry);
        try {
            return work.get();
        } finally {
            begun.stop(Timer.builder(meter.title()).description(meter.help()).register(registry));
        }
    }

    @Override
    public void count(Meter meter) {
        Counter.builder(meter.title()).description(meter.help()).register(registry).increment();
    }

    @Override
    public void watch(Meter meter, Supplier<Long> amount) {
        Gauge.builder(meter.title(), new CachedGauge(amount, FRESH, System::nanoTime))
                .description(meter.help())
                .register(registry);
    }
}
