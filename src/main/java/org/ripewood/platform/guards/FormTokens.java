package org.ripewood.platform.guards;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.http.SessionKeySource;

/**
 * Tokens of forms that only this service makes, each for one person or for nobody: random bytes,
 * and HMAC-SHA256 (RFC 2104) over them and the person. So nobody makes a pair of form and cookie
 * for somebody else's browser, and none made before a sign-in is good after it.
 */
@ApplicationScoped
class FormTokens {

    private static final int RANDOM_BYTES = 16;
    private static final int MAC_BYTES = 32;
    private static final String MAC = "HmacSHA256";

    /** What keeps this key apart from the one that seals sessions. */
    private static final String USE = "ripewood form token 1";

    private final SecureRandom random = new SecureRandom();
    private final SecretKeySpec key;

    FormTokens(@ConfigProperty(name = SessionKeySource.PROPERTY) Optional<String> sessionKey) {
        var secret =
                sessionKey
                        .map(text -> text.getBytes(StandardCharsets.UTF_8))
                        .orElseGet(() -> random(MAC_BYTES));
        this.key =
                new SecretKeySpec(
                        mac(new SecretKeySpec(secret, MAC), USE.getBytes(StandardCharsets.UTF_8)),
                        MAC);
    }

    /** A fresh one. */
    String make(@Nullable Long personId) {
        var nonce = random(RANDOM_BYTES);
        var token = ByteBuffer.allocate(RANDOM_BYTES + MAC_BYTES);
        token.put(nonce).put(mac(key, bound(nonce, personId)));
        return Base64.getUrlEncoder().withoutPadding().encodeToString(token.array());
    }

    /** Whether it was made here, for that person. */
    boolean isFor(@Nullable Long personId, String token) {
        byte[] sent;
        try {
            sent = Base64.getUrlDecoder().decode(token);
        } catch (IllegalArgumentException noToken) {
            return false;
        }
        if (sent.length != RANDOM_BYTES + MAC_BYTES) {
            return false;
        }
        var nonce = Arrays.copyOf(sent, RANDOM_BYTES);
        var mac = Arrays.copyOfRange(sent, RANDOM_BYTES, sent.length);
        return MessageDigest.isEqual(mac, mac(key, bound(nonce, personId)));
    }

    private static byte[] bound(byte[] nonce, @Nullable Long personId) {
        var who = String.valueOf(personId).getBytes(StandardCharsets.UTF_8);
        return ByteBuffer.allocate(nonce.length + who.length).put(nonce).put(who).array();
    }

    private byte[] random(int bytes) {
        var made = new byte[bytes];
        random.nextBytes(made);
        return made;
    }

    private static byte[] mac(SecretKeySpec key, byte[] over) {
        try {
            var mac = Mac.getInstance(MAC);
            mac.init(key);
            return mac.doFinal(over);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has " + MAC, e);
        }
    }
}
