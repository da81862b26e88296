package org.ripewood.platform.guards;

import io.quarkus.security.AuthenticationException;
import io.quarkus.security.ForbiddenException;
import io.quarkus.security.UnauthorizedException;
import io.vertx.core.VertxException;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.concurrent.RejectedExecutionException;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.http.ProblemAnswers;
import org.ripewood.platform.http.ProblemMappers;
import org.ripewood.platform.http.SecurityHeaders;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Problems;

/**
 * Failures that came to no door, told like those of doors. The framework writes each of them into
 * the log as a fault, though most are a stranger's bad request.
 */
@ApplicationScoped
class RouterFailures {

    private static final int FIRST = -20_000;

    private final ProblemAnswers answers;

    RouterFailures(ProblemAnswers answers) {
        this.answers = answers;
    }

    void register(@Observes Router router) {
        router.route().order(FIRST).failureHandler(this::tell);
    }

    private void tell(RoutingContext context) {
        if (context.response().headWritten()) {
            context.next();
            return;
        }
        var failure = context.failure();
        int status = context.statusCode();
        if (failure instanceof ForbiddenException) {
            say(context, Problems.plain(403, null));
        } else if (failure instanceof VertxException && status == 400) {
            // the router's own: it looks for a host before anything else
            say(context, SoundHead.noHost());
        } else if (failure == null && status >= 400 && status < 500) {
            say(context, Problems.plain(status, null));
        } else if (isOfSignIn(failure) || isOfHaste(failure) || failure == null) {
            context.next();
        } else {
            say(
                    context,
                    Problems.of(failure).orElseGet(() -> ProblemMappers.fault(failure, context)));
        }
    }

    private void say(RoutingContext context, Problem problem) {
        SecurityHeaders.on(context);
        answers.refuse(context, problem);
    }

    /** What the framework asks for a sign-in at. */
    private static boolean isOfSignIn(@Nullable Throwable failure) {
        return failure instanceof UnauthorizedException
                || failure instanceof AuthenticationException;
    }

    /** More at once than there are threads; the framework says so in its own way. */
    private static boolean isOfHaste(@Nullable Throwable failure) {
        return failure instanceof RejectedExecutionException;
    }
}
