package org.ripewood.platform.guards;

import io.vertx.core.http.Cookie;
import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.Priorities;
import jakarta.ws.rs.container.ContainerRequestContext;
import java.util.List;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.http.AskedAddress;
import org.ripewood.platform.http.EmptyErrorFilter;
import org.ripewood.platform.http.ProblemAnswers;
import org.ripewood.platform.http.RefusalLog;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;

/**
 * Sees to it that the form token's cookie is one of {@link FormTokens}, made for whoever asks. That
 * the form has the same is asked by the framework, which takes any cookie for good: its own
 * signature would give each answer another token, and a page beside it, or a picture on it, would
 * spoil the form.
 */
class FormTokenGuard {

    private static final Set<String> READS = Set.of("GET", "HEAD", "OPTIONS");
    private static final int BEFORE_THE_FRAMEWORK = Priorities.USER - 1_000;

    private final FormTokens tokens;
    private final CurrentUser user;
    private final RefusalLog log;
    private final String cookie;

    FormTokenGuard(
            FormTokens tokens,
            CurrentUser user,
            RefusalLog log,
            @ConfigProperty(name = "quarkus.rest-csrf.cookie-name") String cookie) {
        this.tokens = tokens;
        this.user = user;
        this.log = log;
        this.cookie = cookie;
    }

    @ServerRequestFilter(priority = BEFORE_THE_FRAMEWORK)
    void check(ContainerRequestContext request, RoutingContext context) {
        if (ProblemAnswers.isApi(AskedAddress.of(context))) {
            return;
        }
        var sent = context.request().getCookie(cookie);
        var personId = user.personId();
        if (sent != null && tokens.isFor(personId, sent.getValue())) {
            return;
        }
        if (!READS.contains(request.getMethod())) {
            log.refused(context, 400);
            throw new Refused(
                    new Problem(
                            400,
                            "form-token",
                            "This form is no longer good",
                            "The form was made for somebody else, or before the sign-in.",
                            EmptyErrorFilter.MAYBE_STALE_FORM,
                            List.of()));
        }
        context.response().addCookie(Cookie.cookie(cookie, tokens.make(personId)).setPath("/"));
    }
}
