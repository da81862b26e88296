package org.ripewood.secondfactor;

import com.eatthepath.otp.TimeBasedOneTimePasswordGenerator;
import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import javax.crypto.spec.SecretKeySpec;

/**
 * Codes by time (TOTP, RFC 6238) as every app makes them: six digits, HMAC-SHA-1, another each 30
 * seconds.
 */
final class AppCodes {

    static final Duration STEP = TimeBasedOneTimePasswordGenerator.DEFAULT_TIME_STEP;

    static final int DIGITS = 6;

    /** As long as the hash, which RFC 4226 advises (4, R6). */
    private static final int SECRET_BYTES = 20;

    /** A clock that goes half a minute wrong, and a code typed slowly (RFC 6238, 5.2). */
    private static final int STEPS_ASIDE = 1;

    private static final String KEY_KIND = "HmacSHA1";
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final TimeBasedOneTimePasswordGenerator CODES =
            new TimeBasedOneTimePasswordGenerator(STEP, DIGITS);

    private AppCodes() {}

    static byte[] freshSecret() {
        var secret = new byte[SECRET_BYTES];
        RANDOM.nextBytes(secret);
        return secret;
    }

    static String code(byte[] secret, Instant at) {
        try {
            var key = new SecretKeySpec(secret, KEY_KIND);
            return CODES.generateOneTimePasswordString(key, at, Locale.ROOT);
        } catch (InvalidKeyException e) {
            throw new IllegalStateException("every key is one for " + KEY_KIND, e);
        }
    }

    static long step(Instant at) {
        return Math.floorDiv(at.getEpochSecond(), STEP.toSeconds());
    }

    /**
     * The step of time whose code it is, around now; empty when it is none of them, or of one that
     * is not after the last that counted.
     */
    static OptionalLong stepOf(byte[] secret, String code, Instant now, long last) {
        long middle = step(now);
        return LongStream.rangeClosed(middle - STEPS_ASIDE, middle + STEPS_ASIDE)
                .filter(step -> step > last)
                .filter(step -> isSame(code, code(secret, begin(step))))
                .findFirst();
    }

    private static Instant begin(long step) {
        return Instant.ofEpochSecond(step * STEP.toSeconds());
    }

    private static boolean isSame(String one, String other) {
        return MessageDigest.isEqual(
                one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }
}
