package org.ripewood.platform.guards;

import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.vertx.http.runtime.security.QuarkusHttpUser;
import io.smallrye.mutiny.Uni;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.function.BiConsumer;
import org.ripewood.platform.Role;
import org.ripewood.platform.http.ProblemAnswers;
import org.ripewood.platform.problems.Problems;

/**
 * Tells the meters to a registrar, by session or token. Machines read them, so nobody is led on to
 * a page: the framework would keep the address in a cookie for that, and fails at some addresses
 * without any answer.
 */
@ApplicationScoped
class MetricsGuard {

    private static final String PATHS = "/q/metrics(?:/.*)?";

    /** After the framework has looked for a way to sign in, before the meters. */
    private static final int BEFORE_METERS = -100;

    private final ProblemAnswers answers;

    MetricsGuard(ProblemAnswers answers) {
        this.answers = answers;
    }

    void register(@Observes Router router) {
        router.routeWithRegex(PATHS).order(BEFORE_METERS).handler(this::guard);
    }

    private void guard(RoutingContext context) {
        Uni<SecurityIdentity> identity = context.get(QuarkusHttpUser.DEFERRED_IDENTITY_KEY);
        // a sign-in that is no longer good would otherwise be answered by the framework
        BiConsumer<RoutingContext, Throwable> nothing = (asked, failure) -> {};
        context.put(QuarkusHttpUser.AUTH_FAILURE_HANDLER, nothing);
        identity.subscribe().with(who -> letIn(context, who), noneGood -> askForAToken(context));
    }

    private void letIn(RoutingContext context, SecurityIdentity who) {
        if (who.isAnonymous()) {
            askForAToken(context);
        } else if (who.hasRole(Role.REGISTRAR_NAME)) {
            context.next();
        } else {
            answers.refuse(context, Problems.plain(403, null));
        }
    }

    private void askForAToken(RoutingContext context) {
        context.response().putHeader("WWW-Authenticate", "Bearer");
        answers.refuse(context, Problems.plain(401, "Maybe the token has ended."));
    }
}
