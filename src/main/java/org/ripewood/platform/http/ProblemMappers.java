package org.ripewood.platform.http;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.exc.InvalidDefinitionException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.ForbiddenException;
import io.quarkus.security.UnauthorizedException;
import io.smallrye.mutiny.Uni;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.validation.ConstraintViolationException;
import jakarta.validation.ValidationException;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.UUID;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.problems.ParameterFaults;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Problems;

/**
 * The one place where failures become HTTP. The framework prefers a mapper of its own for a more
 * special exception, so those it has are named here one by one.
 */
@ApplicationScoped
public class ProblemMappers {

    private static final Logger LOG = Logger.getLogger(ProblemMappers.class);

    private final ProblemAnswers answers;
    private final LoginRedirect signInFirst;
    private final CurrentUser user;

    ProblemMappers(ProblemAnswers answers, LoginRedirect signInFirst, CurrentUser user) {
        this.user = user;
        this.answers = answers;
        this.signInFirst = signInFirst;
    }

    @ServerExceptionMapper(NotFoundException.class)
    Response notFound(NotFoundException e, UriInfo uri, RoutingContext context) {
        var fault = ParameterFaults.of(e, uri);
        return answers.answer(fault != null ? fault : Problems.plain(404, null), context);
    }

    @ServerExceptionMapper({UnauthorizedException.class, AuthenticationFailedException.class})
    Uni<Response> unauthorized(Exception e, RoutingContext context) {
        if (!ProblemAnswers.isApi(AskedAddress.of(context))) {
            return signInFirst.redirect();
        }
        var problem = Problems.plain(401, "Maybe your session has ended.");
        var answer = Response.fromResponse(answers.answer(problem, context));
        return Uni.createFrom().item(answer.header("WWW-Authenticate", "Bearer").build());
    }

    @ServerExceptionMapper(ForbiddenException.class)
    Response forbidden(ForbiddenException e, RoutingContext context) {
        return answer(
                user.unfinished() ? SetUpRedirect.problem() : Problems.plain(403, null), context);
    }

    private Response answer(Problem problem, RoutingContext context) {
        return SetUpRedirect.is(problem) && !ProblemAnswers.isApi(AskedAddress.of(context))
                ? SetUpRedirect.page()
                : answers.answer(problem, context);
    }

    @ServerExceptionMapper({
        ConstraintViolationException.class,
        ValidationException.class,
        JsonProcessingException.class,
        MismatchedInputException.class,
        InvalidDefinitionException.class,
        WebApplicationException.class,
        Throwable.class
    })
    Response any(Throwable e, RoutingContext context) {
        if (e instanceof WebApplicationException web && web.getResponse().getStatus() < 400) {
            return web.getResponse();
        }
        return answer(Problems.of(e).orElseGet(() -> fault(e, context)), context);
    }

    /** Addresses that are secrets are not for a log, which is read by others. */
    static String loggable(String path) {
        return SecretAddress.hidden(path);
    }

    /** Told with an id to find it in the log by, and nothing of what happened inside. */
    public static Problem fault(Throwable e, RoutingContext context) {
        var id = UUID.randomUUID();
        LOG.errorf(e, "Fault %s at %s", id, loggable(AskedAddress.of(context)));
        return new Problem(
                500,
                "our-fault",
                "Something broke here",
                "It is not your doing. Nothing was saved. The log has it under %s.".formatted(id),
                "Maybe try once more; if it stays, tell the person who runs the service that id.",
                List.of());
    }
}
