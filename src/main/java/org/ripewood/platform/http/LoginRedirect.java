package org.ripewood.platform.http;

import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.quarkus.vertx.http.runtime.security.ChallengeData;
import io.quarkus.vertx.http.runtime.security.HttpAuthenticator;
import io.smallrye.mutiny.Uni;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.regex.Pattern;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.ripewood.platform.ClearSiteData;

/** Sends a person who is not signed in to the sign-in page, and afterwards to where they went. */
@ApplicationScoped
public class LoginRedirect {

    /**
     * What a cookie can hold (RFC 6265, 4.1.1): an address with anything else is not come back to.
     */
    private static final Pattern COOKIE_VALUE =
            Pattern.compile("[\\x21\\x23-\\x2B\\x2D-\\x3A\\x3C-\\x5B\\x5D-\\x7E]{1,2000}");

    public static final String FORM_TARGET = "/j_security_check";

    private final CurrentVertxRequest request;
    private final URI page;
    private final String sessionCookie;

    LoginRedirect(
            CurrentVertxRequest request,
            @ConfigProperty(name = "quarkus.http.auth.form.login-page") String page,
            @ConfigProperty(name = "quarkus.http.auth.form.cookie-name") String sessionCookie) {
        this.request = request;
        this.page = URI.create(page);
        this.sessionCookie = sessionCookie;
    }

    /**
     * The form mechanism knows its error page and leaves the address to come back to in a cookie.
     * It is not asked for a write: one would come back to its address without what was sent.
     */
    Uni<Response> redirect() {
        var context = request.getCurrent();
        HttpAuthenticator authenticator =
                context == null ? null : context.get(HttpAuthenticator.class.getName());
        if (context != null && hadASession(context)) {
            ClearSiteData.on(context);
        }
        if (context == null || authenticator == null || !mayComeBack(context)) {
            return Uni.createFrom().item(to(page));
        }
        return authenticator.getChallenge(context).map(this::to);
    }

    /** Which has ended since. */
    private boolean hadASession(RoutingContext context) {
        var session = context.request().getCookie(sessionCookie);
        return session != null && !session.getValue().isEmpty();
    }

    private static boolean mayComeBack(RoutingContext context) {
        var address = context.request().absoluteURI();
        return (HttpMethod.GET.equals(context.request().method())
                        || AskedAddress.of(context).equals(FORM_TARGET))
                && address != null
                && COOKIE_VALUE.matcher(address).matches();
    }

    private Response to(ChallengeData challenge) {
        var location =
                challenge.getHeaders().entrySet().stream()
                        .filter(header -> HttpHeaders.LOCATION.contentEquals(header.getKey()))
                        .findFirst();
        return to(location.isPresent() ? URI.create(location.get().getValue()) : page);
    }

    private static Response to(URI page) {
        return Response.seeOther(page).build();
    }
}
