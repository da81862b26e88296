package org.ripewood.passwords;

import io.quarkus.elytron.security.common.BcryptUtil;
import io.quarkus.runtime.LaunchMode;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.Base64;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.jspecify.annotations.Nullable;
import org.ripewood.people.NewPerson;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;

/**
 * Passwords are kept as bcrypt hashes only. bcrypt reads 72 bytes and no further, so it is given
 * the password's HMAC-SHA-384 in base64, which has 64 letters for every password: long ones count
 * whole, in any script. The HMAC's key, which is no secret, makes it a hash that no other service
 * has: one that leaked elsewhere cannot be tried here in place of its password.
 *
 * <p>Hashes made before that begin with bcrypt's own mark and go on working; they are replaced when
 * their owner signs in.
 */
public final class Passwords {

    /** Of the hashes made in this way. */
    private static final String MARK = "2:";

    private static final String ALGORITHM = "HmacSHA384";
    private static final SecretKeySpec KEY =
            new SecretKeySpec("ripewood password 2".getBytes(StandardCharsets.US_ASCII), ALGORITHM);

    /** What bcrypt read of a password that it was given as it was. */
    private static final int MOST_BYTES_BEFORE = 72;

    /**
     * Doubling for each one more; 10 is the least advised today (from memory). Tests make thousands
     * of people and guess at none of their passwords.
     */
    private static final int COST = LaunchMode.current() == LaunchMode.TEST ? 4 : 10;

    /** The hash of nobody's password, to be compared when there is no such person. */
    private static final String NOBODYS = hash("nobody signs in with this");

    private Passwords() {}

    public static String hash(String password) {
        return MARK + BcryptUtil.bcryptHash(digest(password), COST);
    }

    /**
     * The hash of a password that was chosen for somebody.
     *
     * @throws Refused 400 when it is too short, too long, or easy to guess
     */
    public static String chosen(String field, String password, String name, String login) {
        int length = password.codePointCount(0, password.length());
        if (length < NewPerson.LEAST_PASSWORD) {
            throw Refused.invalid(
                    field,
                    "expected at least %d characters, found %d"
                            .formatted(NewPerson.LEAST_PASSWORD, length));
        }
        if (password.length() > NewPerson.MOST_PASSWORD) {
            throw Refused.invalid(
                    field,
                    "expected at most %d characters, found %d"
                            .formatted(NewPerson.MOST_PASSWORD, password.length()));
        }
        Guessing.weakness(password, OwnWords.of(name, login))
                .ifPresent(
                        weakness -> {
                            throw easy(field, weakness);
                        });
        return hash(password);
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
    public static String nobodyKnows() {
        return hash(Secret.fresh());
    }

    /** Takes as long for an unknown login as for a known one, so that nobody can ask for logins. */
    public static boolean matches(@Nullable String hash, String password) {
        boolean old = hash != null && isOld(hash);
        boolean readable =
                old
                        ? password.getBytes(StandardCharsets.UTF_8).length <= MOST_BYTES_BEFORE
                        : password.length() <= NewPerson.MOST_PASSWORD;
        var tried = readable ? password : "too long";
        var kept = hash == null ? NOBODYS : hash;
        boolean same =
                old
                        ? BcryptUtil.matches(tried, kept)
                        : BcryptUtil.matches(digest(tried), kept.substring(MARK.length()));
        return same && readable && hash != null;
    }

    /** Whether it was made before passwords of any length counted whole. */
    public static boolean isOld(String hash) {
        return !hash.startsWith(MARK);
    }

    private static String digest(String password) {
        try {
            var mac = Mac.getInstance(ALGORITHM);
            mac.init(KEY);
            var bytes = mac.doFinal(password.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(bytes);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has " + ALGORITHM, e);
        }
    }
}
