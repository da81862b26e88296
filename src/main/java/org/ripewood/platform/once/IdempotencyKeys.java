package org.ripewood.platform.once;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Actor;
import org.ripewood.platform.http.AskedAddress;
import org.ripewood.platform.problems.Found;
import org.ripewood.platform.problems.Refused;

/**
 * Does what is asked once, however often it is sent: whoever sends the same again under the same
 * key gets the first answer again. The key is written down in the transaction of the work itself,
 * so there is never one without the other, whichever node was asked and wherever it stopped.
 *
 * <p>What is refused is not kept: it may be put right and sent again under its key.
 */
@ApplicationScoped
public class IdempotencyKeys {

    /** The header of the IETF's draft "The Idempotency-Key HTTP Header Field". */
    public static final String HEADER = "Idempotency-Key";

    private static final int FIRST_REFUSED = 400;
    private static final Pattern KEY = Pattern.compile("[\\x21-\\x7E]{1,64}");

    private final IdempotencyKeyRows rows;
    private final CurrentVertxRequest request;
    private final ObjectMapper json;

    IdempotencyKeys(IdempotencyKeyRows rows, CurrentVertxRequest request, ObjectMapper json) {
        this.rows = rows;
        this.request = request;
        this.json = json;
    }

    /**
     * The first answer to a request, now or as it was given before.
     *
     * @param key 1 to 64 visible characters of ASCII, chosen by the sender
     * @param sent what tells one request from another to the same address; JSON is made of it
     * @throws Refused 422 when the key was used for something else, 409 while the first is still
     *     worked on
     */
    public Answered answer(Actor actor, String key, Object sent, Supplier<Answered> work) {
        if (!KEY.matcher(key).matches()) {
            throw Refused.invalid(
                    HEADER,
                    "expected 1 to 64 visible characters of ASCII, found " + Found.text(key));
        }
        var hash = hash(sent);
        try {
            var answer =
                    QuarkusTransaction.requiringNew()
                            .call(() -> inTransaction(actor.personId(), key, hash, work));
            rows.clean();
            return answer;
        } catch (TakenBack refused) {
            return refused.answer;
        }
    }

    private Answered inTransaction(
            long personId, String key, String hash, Supplier<Answered> work) {
        if (!rows.begin(personId, key, hash)) {
            return rows.first(personId, key, hash);
        }
        var answer = work.get();
        if (answer.status() >= FIRST_REFUSED) {
            throw new TakenBack(answer);
        }
        rows.end(personId, key, answer);
        return answer;
    }

    private String hash(Object sent) {
        var context = request.getCurrent();
        var door = context.request().method() + " " + AskedAddress.of(context);
        try {
            var bytes = json.writeValueAsBytes(List.of(door, sent));
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (JsonProcessingException | NoSuchAlgorithmException e) {
            throw new IllegalStateException("what was read can be written", e);
        }
    }

    /**
     * What was answered.
     *
     * @param body null for none, and when it was too long to be kept
     */
    public record Answered(
            int status, @Nullable String location, @Nullable String tag, @Nullable String body) {

        static final int LONGEST = 60_000;

        @Nullable String kept() {
            return body == null || body.getBytes(StandardCharsets.UTF_8).length > LONGEST
                    ? null
                    : body;
        }
    }

    /** Ends the transaction of what was refused in words of its own. */
    private static final class TakenBack extends RuntimeException {

        private final transient Answered answer;

        TakenBack(Answered answer) {
            super("refused with " + answer.status(), null, false, false);
            this.answer = answer;
        }
    }
}
