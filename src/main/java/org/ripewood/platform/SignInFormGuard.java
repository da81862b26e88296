package org.ripewood.platform;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.RoutingContext;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;

/** Only a form signs in: the framework fails at whatever else is sent to that address. */
@ApplicationScoped
class SignInFormGuard {

    private static final int EARLY = 8_000;

    private final ProblemAnswers answers;

    SignInFormGuard(ProblemAnswers answers) {
        this.answers = answers;
    }

    void register(@Observes Filters filters) {
        filters.register(this::filter, EARLY);
    }

    private void filter(RoutingContext context) {
        if (isSignIn(context) && !isForm(context)) {
            answers.refuse(
                    context,
                    Problems.plain(
                            415, "Maybe send j_username and j_password as a form's fields."));
        } else {
            context.next();
        }
    }

    private static boolean isSignIn(RoutingContext context) {
        return HttpMethod.POST.equals(context.request().method())
                && AskedAddress.of(context).equals(SignInFirst.FORM_TARGET);
    }

    private static boolean isForm(RoutingContext context) {
        var type = context.request().getHeader("Content-Type");
        return type != null && type.startsWith("application/x-www-form-urlencoded");
    }
}
