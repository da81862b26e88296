package org.ripewood.people;

import io.quarkus.elytron.security.common.BcryptUtil;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Problem;
import org.ripewood.platform.Refused;

/** Passwords are kept as bcrypt hashes only. */
final class Passwords {

    /** bcrypt reads no further, so that two longer passwords could pass for each other. */
    static final int MOST_BYTES = 72;

    /** Doubling for each one more; 10 is the least advised today (from memory). */
    private static final int COST = 10;

    /** The hash of nobody's password, to be compared when there is no such person. */
    private static final String NOBODYS = BcryptUtil.bcryptHash("nobody signs in with this", COST);

    private Passwords() {}

    /**
     * The hash to be kept.
     *
     * @throws Refused 400 when it is longer than bcrypt reads
     */
    static String hash(String field, String password) {
        int bytes = bytes(password);
        if (bytes > MOST_BYTES) {
            throw Refused.invalid(
                    field,
                    "expected at most %d bytes in UTF-8, found %d".formatted(MOST_BYTES, bytes));
        }
        return BcryptUtil.bcryptHash(password, COST);
    }

    /**
     * The hash of a password that was chosen for somebody.
     *
     * @throws Refused 400 when it is too short, longer than bcrypt reads, or easy to guess
     */
    static String chosen(String field, String password, String name, String login) {
        int length = password.codePointCount(0, password.length());
        if (length < NewPerson.LEAST_PASSWORD) {
            throw Refused.invalid(
                    field,
                    "expected at least %d characters, found %d"
                            .formatted(NewPerson.LEAST_PASSWORD, length));
        }
        var hash = hash(field, password);
        Guessing.weakness(password, OwnWords.of(name, login))
                .ifPresent(
                        weakness -> {
                            throw easy(field, weakness);
                        });
        return hash;
    }

    private static Refused easy(String field, Weakness weakness) {
        var message =
                "expected a password that is hard to guess, found %s".formatted(weakness.words);
        var told = Refused.invalid(field, message).problem();
        return new Refused(
                new Problem(
                        told.status(),
                        told.kind(),
                        told.title(),
                        told.detail(),
                        "Maybe take four or five words that have nothing to do with each other, or"
                                + " let a password manager make one.",
                        told.faults()));
    }

    /** For somebody who has not chosen one yet: no guess meets it. */
    static String nobodyKnows() {
        return BcryptUtil.bcryptHash(Secret.fresh(), COST);
    }

    /** Takes as long for an unknown login as for a known one, so that nobody can ask for logins. */
    static boolean matches(@Nullable String hash, String password) {
        boolean readable = bytes(password) <= MOST_BYTES;
        boolean same =
                BcryptUtil.matches(readable ? password : "too long", hash == null ? NOBODYS : hash);
        return same && readable && hash != null;
    }

    private static int bytes(String password) {
        return password.getBytes(StandardCharsets.UTF_8).length;
    }
}
