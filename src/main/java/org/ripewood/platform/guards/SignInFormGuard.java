package org.ripewood.platform.guards;

import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.quarkus.vertx.http.runtime.security.QuarkusHttpUser;
import io.smallrye.mutiny.Uni;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.ripewood.platform.http.AskedAddress;
import org.ripewood.platform.http.LoginRedirect;
import org.ripewood.platform.http.ProblemAnswers;
import org.ripewood.platform.problems.Problems;

/**
 * Only a form with a name and a password signs in: the framework fails at whatever else is sent to
 * that address, or answers nothing.
 */
@ApplicationScoped
class SignInFormGuard {

    private static final int EARLY = 8_000;

    /** Just before the framework's own, which ends what it has not answered. */
    private static final int BEFORE_THE_END = -151;

    private static final int SEE_OTHER = 303;

    private final ProblemAnswers answers;
    private final String errorPage;
    private final String cameFrom;

    SignInFormGuard(
            ProblemAnswers answers,
            @ConfigProperty(name = "quarkus.http.auth.form.error-page") String errorPage,
            @ConfigProperty(name = "quarkus.http.auth.form.location-cookie") String cameFrom) {
        this.answers = answers;
        this.errorPage = errorPage;
        this.cameFrom = cameFrom;
    }

    void register(@Observes Filters filters) {
        filters.register(this::filter, EARLY);
    }

    void register(@Observes Router router) {
        router.post(LoginRedirect.FORM_TARGET).order(BEFORE_THE_END).handler(this::answer);
    }

    private void filter(RoutingContext context) {
        var path = AskedAddress.of(context);
        boolean post = HttpMethod.POST.equals(context.request().method());
        if (!post || !path.contains(LoginRedirect.FORM_TARGET)) {
            context.next();
        } else if (!path.equals(LoginRedirect.FORM_TARGET)) {
            // the framework signs in by every address that ends like this one
            answers.refuse(context, Problems.plain(404, null));
        } else if (!isForm(context)) {
            answers.refuse(
                    context,
                    Problems.plain(
                            415, "Maybe send j_username and j_password as a form's fields."));
        } else {
            forgetWhereNobodyCameFrom(context);
            context.next();
        }
    }

    private static boolean isForm(RoutingContext context) {
        var type = context.request().getHeader("Content-Type");
        return type != null && type.startsWith("application/x-www-form-urlencoded");
    }

    /** An address of another site in that cookie would end a good sign-in without a word. */
    private void forgetWhereNobodyCameFrom(RoutingContext context) {
        var cookie = context.request().getCookie(cameFrom);
        var here = context.request().scheme() + "://" + context.request().authority() + "/";
        if (cookie != null && !cookie.getValue().startsWith(here)) {
            context.response().removeCookie(cameFrom, false);
        }
    }

    /** Who sent no name or no password is told as if they were wrong. */
    private void answer(RoutingContext context) {
        Uni<SecurityIdentity> identity = context.get(QuarkusHttpUser.DEFERRED_IDENTITY_KEY);
        identity.subscribe()
                .with(
                        who -> {
                            if (!context.response().ended()) {
                                context.response()
                                        .setStatusCode(SEE_OTHER)
                                        .putHeader("Location", errorPage)
                                        .end();
                            }
                        },
                        failure -> {
                            if (!context.response().ended() && !context.failed()) {
                                context.fail(failure);
                            }
                        });
    }
}
