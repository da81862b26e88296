package org.ripewood.photos;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;

/**
 * Who decodes a picture next. Decoding takes memory, so two are decoded at once: a large one, which
 * may take seconds, and one of the size phones send, which therefore never waits for a large one. A
 * person has one picture decoded at a time, so that nobody waits for all of another's.
 */
final class DecodingQueue {

    /** More than a browser sends at once (common practice, no source). */
    static final int MOST_OF_PERSON = 6;

    private final Duration patience;
    private final Semaphore usual = new Semaphore(1, true);
    private final Semaphore large = new Semaphore(1, true);
    private final Map<Long, Sent> ofPersons = new ConcurrentHashMap<>();

    /**
     * @param patience how long a request waits for its turn before it is refused
     */
    DecodingQueue(Duration patience) {
        this.patience = patience;
    }

    /**
     * What a person has sent that is not done yet.
     *
     * @param many at least 1
     */
    private record Sent(Semaphore place, int many) {}

    /**
     * Does what one person sent after what they sent before.
     *
     * @throws Refused 429 when they have {@link #MOST_OF_PERSON} waiting; 503 when their turn does
     *     not come
     */
    <T> T ofPerson(long personId, Supplier<T> work) {
        var sent = ofPersons.compute(personId, (id, before) -> oneMore(before));
        try {
            if (sent.many() > MOST_OF_PERSON) {
                throw tooMany();
            }
            return inTurn(sent.place(), work);
        } finally {
            ofPersons.computeIfPresent(personId, (id, before) -> oneLess(before));
        }
    }

    private static Sent oneMore(@Nullable Sent before) {
        return before == null
                ? new Sent(new Semaphore(1, true), 1)
                : new Sent(before.place(), before.many() + 1);
    }

    private static @Nullable Sent oneLess(Sent before) {
        return before.many() == 1 ? null : new Sent(before.place(), before.many() - 1);
    }

    /** Does what takes a moment, such as a photo of a phone's usual size. */
    <T> T usual(Supplier<T> work) {
        return inTurn(usual, work);
    }

    /** Does what may take seconds. */
    <T> T large(Supplier<T> work) {
        return inTurn(large, work);
    }

    private <T> T inTurn(Semaphore place, Supplier<T> work) {
        boolean taken = false;
        try {
            taken = place.tryAcquire(patience.toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        if (!taken) {
            throw busy();
        }
        try {
            return work.get();
        } finally {
            place.release();
        }
    }

    private static Refused tooMany() {
        return new Refused(
                new Problem(
                        429,
                        "too-many",
                        "Too many at once",
                        "%d photos of yours are still being looked at; this one was not kept."
                                .formatted(MOST_OF_PERSON),
                        "Maybe wait until they are kept, and then send it again.",
                        List.of()));
    }

    private static Refused busy() {
        return new Refused(
                new Problem(
                        503,
                        "busy",
                        "Too much to do at this moment",
                        "Photos of others are still being looked at; yours was not kept.",
                        "Maybe send it again in a minute.",
                        List.of()));
    }
}
