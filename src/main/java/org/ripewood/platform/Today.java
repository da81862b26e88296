package org.ripewood.platform;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** The one clock of the service. */
@ApplicationScoped
public class Today {

    private final Clock clock;
    private final Optional<LocalDate> fixed;

    /**
     * @param fixed a day to stay on, for rehearsals and tests; the time of day still runs
     */
    @SuppressWarnings("JavaTimeDefaultTimeZone") // the school's day is its server's day
    Today(@ConfigProperty(name = "ripewood.today") Optional<LocalDate> fixed) {
        this.clock = Clock.systemDefaultZone();
        this.fixed = fixed;
    }

    public LocalDate date() {
        return fixed.orElseGet(() -> LocalDate.now(clock));
    }

    public Instant now() {
        return clock.instant();
    }
}
