package org.ripewood.platform.guards;

import io.github.bucket4j.Bucket;
import io.github.bucket4j.TimeMeter;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;

/** Counts what each person asks for, on this node; what is not used of a minute does not add up. */
@ApplicationScoped
class RateLimit {

    /** The status of a request that came too soon (RFC 6585, 4). */
    static final int TOO_MANY = 429;

    private static final Duration MINUTE = Duration.ofMinutes(1);

    private final int mostAMinute;
    private final TimeMeter clock;
    private final Map<Long, Bucket> ofPersons = new ConcurrentHashMap<>();

    @Inject
    RateLimit(@ConfigProperty(name = "ripewood.costly.most-a-minute") int mostAMinute) {
        this(mostAMinute, TimeMeter.SYSTEM_MILLISECONDS);
    }

    RateLimit(int mostAMinute, TimeMeter clock) {
        this.mostAMinute = mostAMinute;
        this.clock = clock;
    }

    /**
     * Counts one more of a person.
     *
     * @throws Refused 429 when there were too many in the last minute
     */
    void count(long personId) {
        if (!ofPersons.computeIfAbsent(personId, this::bucket).tryConsume(1)) {
            throw new Refused(
                    new Problem(
                            TOO_MANY,
                            "too-many",
                            "Too many in a short time",
                            "One person may ask for %d papers and files a minute."
                                    .formatted(mostAMinute),
                            "Maybe wait a moment, and then ask again.",
                            List.of()));
        }
    }

    private Bucket bucket(long personId) {
        return Bucket.builder()
                .withCustomTimePrecision(clock)
                .addLimit(limit -> limit.capacity(mostAMinute).refillGreedy(mostAMinute, MINUTE))
                .build();
    }
}
