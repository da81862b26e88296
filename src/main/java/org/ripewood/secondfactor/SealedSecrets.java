package org.ripewood.secondfactor;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Optional;
import javax.crypto.Cipher;
import javax.crypto.Mac;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Seals secrets that have to be read again, so that a copy of the database alone does not tell
 * them. The key follows from the one that seals sessions, which lies in the data folder: whoever
 * has both reads them, and when that key is lost they are lost too.
 */
@ApplicationScoped
class SealedSecrets {

    private static final String CIPHER = "AES/GCM/NoPadding";
    private static final int NONCE_BYTES = 12;
    private static final int TAG_BITS = 128;
    private static final SecureRandom RANDOM = new SecureRandom();

    private final SecretKeySpec key;

    SealedSecrets(
            @ConfigProperty(name = "quarkus.http.auth.session.encryption-key") String sessionKey) {
        this.key = derived(sessionKey);
    }

    /** HKDF with SHA-256 for one block of 32 bytes (RFC 5869, 2). */
    private static SecretKeySpec derived(String sessionKey) {
        var extracted = hmac(new byte[NONCE_BYTES], sessionKey.getBytes(StandardCharsets.UTF_8));
        var info = "ripewood second factor\u0001".getBytes(StandardCharsets.US_ASCII);
        return new SecretKeySpec(hmac(extracted, info), "AES");
    }

    private static byte[] hmac(byte[] key, byte[] text) {
        try {
            var mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(key, "HmacSHA256"));
            return mac.doFinal(text);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has HMAC with SHA-256", e);
        }
    }

    /**
     * @param whose a sealed secret cannot be put under another's name
     */
    String seal(long whose, byte[] secret) {
        var nonce = new byte[NONCE_BYTES];
        RANDOM.nextBytes(nonce);
        try {
            var sealed = cipher(Cipher.ENCRYPT_MODE, nonce, whose).doFinal(secret);
            var all = ByteBuffer.allocate(nonce.length + sealed.length).put(nonce).put(sealed);
            return Base64.getEncoder().encodeToString(all.array());
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has " + CIPHER, e);
        }
    }

    /** Empty when it was sealed with another key, for somebody else, or not by us. */
    Optional<byte[]> open(long whose, String sealed) {
        try {
            var all = ByteBuffer.wrap(Base64.getDecoder().decode(sealed));
            var nonce = new byte[NONCE_BYTES];
            all.get(nonce);
            var rest = new byte[all.remaining()];
            all.get(rest);
            return Optional.of(cipher(Cipher.DECRYPT_MODE, nonce, whose).doFinal(rest));
        } catch (GeneralSecurityException | RuntimeException e) {
            return Optional.empty();
        }
    }

    private Cipher cipher(int mode, byte[] nonce, long whose) throws GeneralSecurityException {
        var cipher = Cipher.getInstance(CIPHER);
        cipher.init(mode, key, new GCMParameterSpec(TAG_BITS, nonce));
        cipher.updateAAD(ByteBuffer.allocate(Long.BYTES).putLong(whose).array());
        return cipher;
    }
}
