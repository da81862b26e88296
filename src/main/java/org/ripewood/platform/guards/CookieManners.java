package org.ripewood.platform.guards;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.CookieSameSite;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.ripewood.platform.http.AskedAddress;
import org.ripewood.platform.http.LoginRedirect;

/**
 * What the framework leaves out of its cookies: the form token's goes to our own pages' requests
 * only and comes with pages only, where forms are; that of the address to come back to is read by
 * no script, and is taken away under the path it was made with.
 */
@ApplicationScoped
class CookieManners {

    private static final int EARLY = 9_950;

    private final String formToken;
    private final String cameFrom;

    CookieManners(
            @ConfigProperty(name = "quarkus.rest-csrf.cookie-name") String formToken,
            @ConfigProperty(name = "quarkus.http.auth.form.location-cookie") String cameFrom) {
        this.formToken = formToken;
        this.cameFrom = cameFrom;
    }

    void register(@Observes Filters filters) {
        filters.register(this::filter, EARLY);
    }

    private void filter(RoutingContext context) {
        context.addHeadersEndHandler(done -> settle(context));
        context.next();
    }

    private void settle(RoutingContext context) {
        var response = context.response();
        var type = response.headers().get("Content-Type");
        var token = context.request().getCookie(formToken);
        if (type == null || !type.startsWith("text/html")) {
            response.removeCookie(formToken, false);
        } else if (token != null && token.getPath() != null) {
            // one that came with the request has no path
            token.setSameSite(CookieSameSite.STRICT);
        }
        var address = context.request().getCookie(cameFrom);
        boolean signsIn = AskedAddress.of(context).equals(LoginRedirect.FORM_TARGET);
        if (address != null && (signsIn || address.getPath() != null)) {
            address.setHttpOnly(true).setPath("/");
        }
    }
}
