package org.ripewood.photos;

import static java.util.concurrent.TimeUnit.SECONDS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.quarkus.runtime.configuration.MemorySize;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.math.BigInteger;
import java.time.Duration;
import java.util.ArrayList;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.platform.problems.Refused;

/** Nobody's pictures hold up another's for long. */
@Tag("fast")
class DecodingQueueTest {

    private static final long ONE = 1;
    private static final long OTHER = 2;

    private final ExecutorService requests = Executors.newCachedThreadPool();
    private final CountDownLatch end = new CountDownLatch(1);

    @AfterEach
    void endAll() {
        end.countDown();
        requests.shutdownNow();
    }

    @Test
    void aPictureThatTakesSecondsHoldsUpNoOther() throws Exception {
        var limits =
                new PhotoLimits(
                        new MemorySize(BigInteger.valueOf(2_000_000)), 60_000_000, 500, 200);
        var darkroom = new PhotoProcessor(limits);
        var slow = Pictures.blackPng(7_700, 7_700);
        var usual = Pictures.jpeg();
        darkroom.develop(OTHER, new ByteArrayInputStream(usual));
        var read = new CountDownLatch(1);
        var large = requests.submit(() -> darkroom.develop(ONE, told(slow, read)));
        read.await();
        for (int i = 0; i < 5; i++) {
            darkroom.develop(OTHER, new ByteArrayInputStream(usual));
        }
        assertThat(large.isDone()).isFalse();
        assertThat(large.get(60, SECONDS).widthPx).isEqualTo(PhotoProcessor.LONGEST_EDGE_PX);
    }

    /** Says when its first bytes are read, which is when it is that picture's turn. */
    private static InputStream told(byte[] bytes, CountDownLatch read) {
        return new ByteArrayInputStream(bytes) {
            @Override
            public synchronized int read(byte[] into, int from, int most) {
                read.countDown();
                return super.read(into, from, most);
            }
        };
    }

    @Test
    void aPersonHasOnePictureInHand() throws Exception {
        var queue = new DecodingQueue(Duration.ofSeconds(20));
        var begun = begin(queue, ONE);
        var second = requests.submit(() -> queue.ofPerson(ONE, () -> end.getCount()));
        assertThat(queue.ofPerson(OTHER, () -> "at once")).isEqualTo("at once");
        assertThat(second.isDone()).isFalse();
        end.countDown();
        assertThat(second.get(10, SECONDS)).isZero();
        assertThat(begun.get(10, SECONDS)).isEqualTo("done");
    }

    @Test
    void moreThanABrowserSendsIsRefusedAtOnce() throws Exception {
        var queue = new DecodingQueue(Duration.ofSeconds(20));
        var all = new ArrayList<Future<?>>();
        all.add(begin(queue, ONE));
        for (int i = 1; i < DecodingQueue.MOST_OF_PERSON; i++) {
            var entered = new CompletableFuture<Thread>();
            all.add(
                    requests.submit(
                            () -> {
                                entered.complete(Thread.currentThread());
                                return queue.ofPerson(ONE, () -> "later");
                            }));
            awaitWaiting(entered.get(10, SECONDS));
        }
        assertThat(status(() -> queue.ofPerson(ONE, () -> "one more"))).isEqualTo(429);
        assertThat(queue.ofPerson(OTHER, () -> "at once")).isEqualTo("at once");
        end.countDown();
        for (var one : all) {
            one.get(10, SECONDS);
        }
        assertThat(queue.ofPerson(ONE, () -> "again")).isEqualTo("again");
    }

    @Test
    void whoseTurnDoesNotComeIsToldSo() throws Exception {
        var queue = new DecodingQueue(Duration.ofMillis(50));
        var begun = new CountDownLatch(1);
        var held = requests.submit(() -> queue.large(() -> hold(begun)));
        begun.await();
        assertThat(status(() -> queue.large(() -> "too late"))).isEqualTo(503);
        assertThat(queue.usual(() -> "at once")).isEqualTo("at once");
        end.countDown();
        assertThat(held.get(10, SECONDS)).isEqualTo("done");
    }

    private Future<String> begin(DecodingQueue queue, long person) throws InterruptedException {
        var begun = new CountDownLatch(1);
        var work = requests.submit(() -> queue.ofPerson(person, () -> hold(begun)));
        begun.await();
        return work;
    }

    private String hold(CountDownLatch begun) {
        begun.countDown();
        try {
            end.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return "done";
    }

    private static void awaitWaiting(Thread thread) throws InterruptedException {
        while (thread.getState() != Thread.State.TIMED_WAITING) {
            Thread.sleep(1);
        }
    }

    private static int status(Runnable refused) {
        return catchThrowableOfType(Refused.class, refused::run).problem().status();
    }
}
