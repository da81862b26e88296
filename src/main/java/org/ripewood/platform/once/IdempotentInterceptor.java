package org.ripewood.platform.once;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import jakarta.annotation.Priority;
import jakarta.interceptor.AroundInvoke;
import jakarta.interceptor.Interceptor;
import jakarta.interceptor.InvocationContext;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.jboss.resteasy.reactive.RestResponse;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.StillReached;
import org.ripewood.platform.http.AskedAddress;
import org.ripewood.platform.problems.Refused;

/** Looks for the key of a write of the API, and has it done once. */
@Idempotent
@Interceptor
@Priority(Interceptor.Priority.APPLICATION)
class IdempotentInterceptor {

    private final IdempotencyKeys once;
    private final StillReached reach;
    private final CurrentUser user;
    private final CurrentVertxRequest request;
    private final ObjectMapper json;

    IdempotentInterceptor(
            IdempotencyKeys once,
            StillReached reach,
            CurrentUser user,
            CurrentVertxRequest request,
            ObjectMapper json) {
        this.once = once;
        this.reach = reach;
        this.user = user;
        this.request = request;
        this.json = json;
    }

    @AroundInvoke
    @Nullable Object answer(InvocationContext call) throws Exception {
        var key = key();
        if (key == null) {
            return call.proceed();
        }
        var fresh = new ArrayList<Object>();
        var answered = once.answer(user.actor(), key, sent(call), () -> work(call, fresh));
        if (!fresh.isEmpty()) {
            return fresh.get(0);
        }
        // what was within reach at first may be somebody else's by now
        var path = AskedAddress.of(request.getCurrent());
        reach.require(user.actor(), path, answered.location());
        throw new WebApplicationException(again(answered));
    }

    private IdempotencyKeys.Answered work(InvocationContext call, List<Object> fresh) {
        try {
            var made = call.proceed();
            fresh.add(made);
            return answered(made);
        } catch (RuntimeException e) {
            throw e;
        } catch (Exception e) {
            throw new IllegalStateException("no door throws a checked exception", e);
        }
    }

    /** The draft writes keys as texts in quotes; they are taken without as well. */
    private @Nullable String key() {
        var sent = request.getCurrent().request().headers().getAll(IdempotencyKeys.HEADER);
        if (sent.isEmpty()) {
            return null;
        }
        if (sent.size() > 1) {
            throw Refused.invalid(IdempotencyKeys.HEADER, "expected one key, found " + sent.size());
        }
        var key = sent.get(0).strip();
        boolean quoted = key.length() > 1 && key.startsWith("\"") && key.endsWith("\"");
        return quoted ? key.substring(1, key.length() - 1) : key;
    }

    /** What the address and its headers do not tell. */
    private static List<@Nullable Object> sent(InvocationContext call) {
        var sent = new ArrayList<@Nullable Object>();
        var declared = call.getMethod().getParameters();
        for (int i = 0; i < declared.length; i++) {
            if (!declared[i].isAnnotationPresent(HeaderParam.class)) {
                var value = call.getParameters()[i];
                sent.add(value instanceof FileUpload file ? hash(file) : value);
            }
        }
        return sent;
    }

    private static String hash(FileUpload file) {
        try {
            var bytes = Files.readAllBytes(file.uploadedFile());
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private IdempotencyKeys.Answered answered(@Nullable Object made) {
        if (!(made instanceof RestResponse<?> response)) {
            return new IdempotencyKeys.Answered(200, null, null, text(made));
        }
        return new IdempotencyKeys.Answered(
                response.getStatus(),
                response.getHeaderString("Location"),
                response.getHeaderString("ETag"),
                text(response.getEntity()));
    }

    private @Nullable String text(@Nullable Object entity) {
        try {
            return entity == null ? null : json.writeValueAsString(entity);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("what is answered is JSON", e);
        }
    }

    private static Response again(IdempotencyKeys.Answered first) {
        var answer = Response.status(first.status());
        if (first.location() != null) {
            answer.header("Location", first.location());
        }
        if (first.tag() != null) {
            answer.header("ETag", first.tag());
        }
        if (first.body() != null) {
            answer.type(MediaType.APPLICATION_JSON).entity(first.body());
        }
        return answer.build();
    }
}
