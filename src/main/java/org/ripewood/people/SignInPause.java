package org.ripewood.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import org.ripewood.platform.Today;

/**
 * Refuses a login for a while after many failures, so that passwords cannot be guessed. Unknown
 * logins are counted alike. Kept in memory only: a restart forgets, and nobody is shut out for
 * good.
 */
@ApplicationScoped
class SignInPause {

    /** Room for slips, none for guessing (common practice, no source). */
    static final int MOST_FAILURES = 10;

    static final Duration WINDOW = Duration.ofMinutes(15);

    /** So that a flood of invented logins cannot fill the memory; the least recent go first. */
    static final int MOST_LOGINS = 10_000;

    private final InstantSource clock;

    private final Map<String, Deque<Instant>> failures =
            new LinkedHashMap<>(16, 0.75f, true) {
                @Override
                protected boolean removeEldestEntry(Map.Entry<String, Deque<Instant>> eldest) {
                    return size() > MOST_LOGINS;
                }
            };

    @Inject
    SignInPause(Today today) {
        this(today::now);
    }

    SignInPause(InstantSource clock) {
        this.clock = clock;
    }

    /** Until fewer than the most failures lie within the window. */
    synchronized boolean isOn(String login) {
        var times = failures.get(login);
        if (times == null) {
            return false;
        }
        var start = clock.instant().minus(WINDOW);
        times.removeIf(time -> time.isBefore(start));
        return times.size() >= MOST_FAILURES;
    }

    synchronized void countFailure(String login) {
        var times = failures.computeIfAbsent(login, unused -> new ArrayDeque<>());
        times.addLast(clock.instant());
        if (times.size() > MOST_FAILURES) {
            times.removeFirst();
        }
    }

    synchronized void forget(String login) {
        failures.remove(login);
    }

    synchronized int loginsCounted() {
        return failures.size();
    }
}
