package org.ripewood.platform;

import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.quarkus.vertx.http.runtime.security.HttpAuthenticator;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.net.URI;

/** Sends a person who is not signed in to the sign-in page, and afterwards to where they went. */
@ApplicationScoped
class SignInFirst {

    private static final URI PAGE = URI.create("/sign-in");

    private final CurrentVertxRequest request;

    SignInFirst(CurrentVertxRequest request) {
        this.request = request;
    }

    Response redirect() {
        var context = request.getCurrent();
        if (context != null && HttpMethod.GET.equals(context.request().method())) {
            rememberWhereTo(context);
        }
        return Response.seeOther(PAGE).header(HttpHeaders.CACHE_CONTROL, "no-store").build();
    }

    /** The form mechanism's challenge leaves the address in a cookie; its answer is not needed. */
    private static void rememberWhereTo(RoutingContext context) {
        HttpAuthenticator authenticator = context.get(HttpAuthenticator.class.getName());
        if (authenticator != null) {
            authenticator.getChallenge(context).subscribe().with(ignored -> {}, ignored -> {});
        }
    }
}
