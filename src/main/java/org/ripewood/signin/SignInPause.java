package org.ripewood.signin;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.audit.Audit;
import org.ripewood.audit.Deed;
import org.ripewood.passwords.Secret;
import org.ripewood.platform.Today;
import org.ripewood.platform.meters.Meter;
import org.ripewood.platform.meters.Meters;

/**
 * Refuses tries to sign in for a while after many failures, so that passwords cannot be guessed.
 * Kept in the database, so that every node counts the same. Unknown names are counted alike.
 *
 * <p>Whoever fails on purpose with somebody's name must not lock them out: a browser in which they
 * signed in before counts for itself, and no pause of the name or of the network holds for it.
 */
@ApplicationScoped
@Transactional
public class SignInPause {

    /** Room for slips, none for guessing (common practice, no source). */
    public static final int MOST_FAILURES = 10;

    /** A whole class may sit behind one address (common practice, no source). */
    static final int MOST_FROM_ADDRESS = 100;

    static final Duration WINDOW = Duration.ofMinutes(15);

    private final SignInFailures failures;
    private final Audit audit;
    private final Today today;
    private final Meters meters;

    SignInPause(SignInFailures failures, Audit audit, Today today, Meters meters) {
        this.audit = audit;
        this.failures = failures;
        this.today = today;
        this.meters = meters;
    }

    /** Nobody asks for a link more often than they look for an answer (our own choice). */
    public static final int MOST_WISHES = 3;

    /** A class on its first day, whose passwords went lost over the summer (our own choice). */
    public static final int MOST_WISHES_FROM_ADDRESS = 30;

    /** What is tried, how often, and how a failure and the pause after it are written down. */
    enum Kind {
        SIGN_IN(MOST_FAILURES, MOST_FROM_ADDRESS, Deed.SIGN_IN_FAILED, Deed.SIGN_IN_PAUSED),
        CONFIRM(MOST_FAILURES, MOST_FROM_ADDRESS, Deed.CONFIRM_FAILED, Deed.CONFIRM_PAUSED),
        WISH(MOST_WISHES, MOST_WISHES_FROM_ADDRESS, null, null);

        private final int most;
        private final int mostFromAddress;
        private final @Nullable Deed failed;
        private final @Nullable Deed paused;

        Kind(int most, int mostFromAddress, @Nullable Deed failed, @Nullable Deed paused) {
            this.most = most;
            this.mostFromAddress = mostFromAddress;
            this.failed = failed;
            this.paused = paused;
        }
    }

    /**
     * A try, counted by its key, and by the network it came from where that says anything.
     *
     * @param fromAnywhere whether the network holds it too
     */
    public record Try(Kind kind, String loginKey, String addressKey, boolean fromAnywhere) {

        public static Try ofLogin(String login, String network) {
            return new Try(Kind.SIGN_IN, Secret.hash("login " + login), Secret.hash(network), true);
        }

        static Try ofBrowser(String login, String secret, String network) {
            var key = Secret.hash("browser " + secret + " " + login);
            return new Try(Kind.SIGN_IN, key, Secret.hash(network), false);
        }

        /**
         * A password asked again of somebody who is signed in: each session counts for itself, so
         * that nobody else's guessing keeps its owner from it.
         */
        static Try ofSession(long personId, @Nullable Long session) {
            var key = Secret.hash("again %d %s".formatted(personId, session));
            return new Try(Kind.CONFIRM, key, key, false);
        }

        /** The same of a code asked again, which a right password does not forget. */
        static Try ofCode(long personId, long session) {
            var key = Secret.hash("code again %d %d".formatted(personId, session));
            return new Try(Kind.CONFIRM, key, key, false);
        }

        /** A link asked for, which never fails; it is counted all the same. */
        public static Try ofWish(String login, String network) {
            return new Try(
                    Kind.WISH, Secret.hash("wish " + login), Secret.hash("wish " + network), true);
        }
    }

    /**
     * Until when no try like this is judged; empty when this one may be. It is counted before it is
     * judged, or else many at once would pass.
     */
    public Optional<Instant> begin(Try tried) {
        var until = until(tried);
        if (until.isEmpty()) {
            var failure = new SignInFailureEntity();
            failure.loginKey = tried.loginKey();
            failure.addressKey = tried.addressKey();
            failure.failedAt = today.now();
            failures.persist(failure);
        }
        return until;
    }

    /** Notes a try that failed, and whether tries are held from now on. */
    void failed(Try tried, @Nullable Long personId) {
        note(tried.kind().failed, personId);
        meters.count(Meter.SIGN_IN_FAILED);
        if (until(tried).isPresent()) {
            note(tried.kind().paused, personId);
        }
    }

    private void note(@Nullable Deed deed, @Nullable Long personId) {
        if (deed != null) {
            audit.note(deed, personId);
        }
    }

    private Optional<Instant> until(Try tried) {
        var since = today.now().minus(WINDOW);
        var login = failures.nthLatest("loginKey", tried.loginKey(), tried.kind().most, since);
        var address =
                tried.fromAnywhere()
                        ? failures.nthLatest(
                                "addressKey",
                                tried.addressKey(),
                                tried.kind().mostFromAddress,
                                since)
                        : Optional.<Instant>empty();
        return Stream.of(login, address)
                .flatMap(Optional::stream)
                .map(oldest -> oldest.plus(WINDOW))
                .max(Instant::compareTo);
    }

    /** Forgets the failures of whoever signed in, and of everybody those that are too old. */
    void succeeded(Try tried) {
        failures.delete(
                "loginKey = ?1 or failedAt <= ?2", tried.loginKey(), today.now().minus(WINDOW));
    }
}
