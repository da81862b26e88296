package org.ripewood.platform;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jspecify.annotations.Nullable;

/** The one clock of the service. */
@ApplicationScoped
public class Today {

    private static final ThreadLocal<@Nullable LocalDate> AS_OF = new ThreadLocal<>();

    private final Clock clock;
    private final Optional<LocalDate> fixed;
    private final Supplier<List<ZoneId>> ground;

    /**
     * @param fixed a day to stay on everywhere, for rehearsals and tests; the time of day still
     *     runs
     */
    @Inject
    @SuppressWarnings("JavaTimeDefaultTimeZone") // the school's day is its server's day
    Today(
            @ConfigProperty(name = "ripewood.today") Optional<LocalDate> fixed,
            Instance<GroundZones> ground) {
        this(Clock.systemDefaultZone(), fixed, () -> ground.get().all());
    }

    /**
     * @param ground the zones of the school's own ground
     */
    Today(Clock clock, Optional<LocalDate> fixed, Supplier<List<ZoneId>> ground) {
        this.clock = clock;
        this.fixed = fixed;
        this.ground = ground;
    }

    /** The server's day. */
    public LocalDate date() {
        return in(clock.getZone());
    }

    /** The day in a zone; the same everywhere while the day is a fixed one or told again. */
    public LocalDate in(ZoneId zone) {
        var asOf = AS_OF.get();
        return asOf != null
                ? asOf
                : fixed.orElseGet(() -> LocalDate.ofInstant(clock.instant(), zone));
    }

    /**
     * The last day that has begun: the server's, or that in one of the zones where it is later.
     * Whoever stands there writes down what they did today.
     */
    public LocalDate last(Collection<ZoneId> zones) {
        return zones.stream()
                .map(this::in)
                .filter(day -> day.isAfter(date()))
                .max(Comparator.naturalOrder())
                .orElseGet(this::date);
    }

    /** The same of the zones of the school's own ground, for what is no tree's and no person's. */
    public LocalDate last() {
        return last(ground.get());
    }

    /** Where the school's clock hangs: the zone of its server, in which class times are given. */
    public ZoneId zone() {
        return clock.getZone();
    }

    /** Whether a day gone by is being told again, as by an import. */
    public boolean isRetold() {
        return AS_OF.get() != null;
    }

    public Instant now() {
        var asOf = AS_OF.get();
        // As fine as a database keeps it, so that what is told now is what is read later.
        var now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        return asOf == null ? now : now.atZone(clock.getZone()).with(asOf).toInstant();
    }

    /** The moment itself, also while a day gone by is being told again. */
    public Instant moment() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }

    /**
     * Does some work as on another day, so that a record from the past is judged and dated by the
     * day it was made; only this thread is taken back.
     */
    public void asOf(LocalDate day, Runnable work) {
        var before = AS_OF.get();
        AS_OF.set(day);
        try {
            work.run();
        } finally {
            if (before == null) {
                AS_OF.remove();
            } else {
                AS_OF.set(before);
            }
        }
    }
}
