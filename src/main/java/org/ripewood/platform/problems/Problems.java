package org.ripewood.platform.problems;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamWriteException;
import com.fasterxml.jackson.databind.exc.InvalidDefinitionException;
import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.ForbiddenException;
import io.quarkus.security.UnauthorizedException;
import jakarta.persistence.OptimisticLockException;
import jakarta.validation.ConstraintViolationException;
import jakarta.ws.rs.WebApplicationException;
import java.io.IOException;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Which problem a failure is. */
public final class Problems {

    private static final int DEEPEST_CAUSE = 12;

    private static final String FORMS_READER = "org.jboss.resteasy.reactive.server.core.multipart.";

    private static final String LINE_READER =
            "org.jboss.resteasy.reactive.server.vertx.VertxInputStream";

    private static final int FRAMES_OF_A_READER = 6;

    /**
     * A lock not had: PostgreSQL's (its manual, appendix A), H2's own, and H2's for a row changed
     * meanwhile (both from memory).
     */
    private static final Set<String> OTHER_COLLISIONS = Set.of("55P03", "HYT00", "90131");

    private static final Map<Integer, String> KINDS =
            Map.of(
                    400, "invalid",
                    401, "sign-in-needed",
                    403, "forbidden",
                    404, "not-found",
                    405, "method-not-allowed",
                    406, "not-acceptable",
                    411, "length-needed",
                    413, "too-large",
                    415, "unsupported-media-type",
                    505, "version");

    private static final Map<Integer, String> TITLES =
            Map.of(
                    400, "This could not be read",
                    401, "Sign in first",
                    403, "Not yours to do",
                    404, "Not found",
                    405, "Not possible here",
                    406, "Not to be had in that form",
                    411, "Say how long it is",
                    413, "Too large",
                    415, "Not taken in that form",
                    505, "Not spoken here");

    private Problems() {}

    /** The problem behind a failure; empty when it is a fault of ours. */
    public static Optional<Problem> of(Throwable failure) {
        Throwable cause = failure;
        for (int depth = 0; cause != null && depth < DEEPEST_CAUSE; depth++) {
            var problem = known(cause);
            if (problem != null) {
                return Optional.of(problem);
            }
            cause = cause.getCause();
        }
        return failure instanceof WebApplicationException web && status(web) < 500
                ? Optional.of(plain(status(web), null))
                : Optional.empty();
    }

    private static @Nullable Problem known(Throwable cause) {
        if (cause instanceof Refused refused) {
            return refused.problem();
        }
        if (cause instanceof ConstraintViolationException violations) {
            return Refused.invalid(ConstraintFaults.of(violations.getConstraintViolations()))
                    .problem();
        }
        if (cause instanceof JsonProcessingException json) {
            return isOurs(json) ? null : JacksonFaults.problem(json);
        }
        if (cause instanceof UnauthorizedException
                || cause instanceof AuthenticationFailedException) {
            return plain(401, null);
        }
        if (cause instanceof ForbiddenException) {
            return plain(403, null);
        }
        if (cause instanceof OptimisticLockException) {
            return Refused.stale("record").problem();
        }
        if (cause instanceof SQLException sql) {
            return ofDatabase(sql);
        }
        if (isOfTheLine(cause)) {
            return plain(400, "Maybe the line broke off on the way.");
        }
        if (isOfTooManyFields(cause)) {
            return plain(413, "Maybe send less at a time: at most 1000 fields.");
        }
        return isOfAFormsReader(cause) ? plain(400, "Maybe the form broke off on its way.") : null;
    }

    /** A body that broke off, or came so slowly that it was waited for no longer. */
    private static boolean isOfTheLine(Throwable cause) {
        return cause instanceof IOException && isThrownIn(cause, LINE_READER);
    }

    private static boolean isOfTooManyFields(Throwable cause) {
        return cause.getClass() == RuntimeException.class
                && isThrownIn(cause, FORMS_READER)
                && String.valueOf(cause.getMessage()).startsWith("Param limit of ");
    }

    /**
     * What the framework could not read of a form it throws as an exception of no special kind; the
     * place tells it from a fault of ours.
     */
    private static boolean isOfAFormsReader(Throwable cause) {
        return (cause instanceof IOException || cause instanceof IllegalArgumentException)
                && isThrownIn(cause, FORMS_READER);
    }

    private static boolean isThrownIn(Throwable cause, String place) {
        return Arrays.stream(cause.getStackTrace())
                .limit(FRAMES_OF_A_READER)
                .anyMatch(frame -> frame.getClassName().startsWith(place));
    }

    /** A record that cannot be written, or read by nobody, is no sender's fault. */
    private static boolean isOurs(JsonProcessingException json) {
        return json instanceof StreamWriteException || json instanceof InvalidDefinitionException;
    }

    /** By the class of SQLSTATE (ISO/IEC 9075-2, clause 24), which every database speaks. */
    private static @Nullable Problem ofDatabase(SQLException sql) {
        var state = sql.getSQLState() == null ? "" : sql.getSQLState();
        if (IntegrityFaults.is(sql)) {
            return Refused.conflict(
                            "It contradicts something that is already recorded.",
                            "Maybe it was entered before, or what it belongs to is gone.")
                    .problem();
        }
        if (state.startsWith("22")) {
            return Refused.invalid("", "expected values that can be kept, found one too large")
                    .problem();
        }
        if (state.startsWith("40") || OTHER_COLLISIONS.contains(state)) {
            return Refused.conflict(
                            "Someone changed the same things at the same moment; nothing was"
                                    + " saved.",
                            "Maybe try once more.")
                    .problem();
        }
        return null;
    }

    public static Problem plain(int status, @Nullable String maybe) {
        return new Problem(
                status,
                KINDS.getOrDefault(status, "refused"),
                TITLES.getOrDefault(status, "Refused"),
                detail(status),
                maybe,
                List.of());
    }

    private static String detail(int status) {
        return switch (status) {
            case 401 -> "This is only for people of the school who are signed in.";
            case 403 ->
                    "You are signed in, but your roles do not include this. A registrar of the school gives roles.";
            case 404 -> "There is nothing here that you can see.";
            case 405 -> "This address does not take that method.";
            case 406 -> "This address does not answer in any form you accept.";
            case 411 -> "A body needs to announce its length here.";
            case 413 -> "What was sent is larger than this service takes.";
            case 415 -> "This address does not take what was sent in that media type.";
            case 505 -> "This service speaks HTTP/1.1.";
            default -> "The request could not be understood.";
        };
    }

    private static int status(WebApplicationException web) {
        return web.getResponse().getStatus();
    }
}
