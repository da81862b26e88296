package org.ripewood.people;

import io.vertx.core.http.Cookie;
import io.vertx.core.http.CookieSameSite;
import io.vertx.ext.web.RoutingContext;
import org.jspecify.annotations.Nullable;

/** The cookie by which a browser is known again, sent with a try to sign in and nothing else. */
final class BrowserCookie {

    static final String NAME = "ripewood-browser";

    /** Bound to TLS by its name (RFC 6265bis, 4.1.3.1) where a proxy speaks it. */
    static final String NAME_BY_TLS = "__Secure-" + NAME;

    private static final String ONLY_TO_SIGN_IN = "/j_security_check";

    private BrowserCookie() {}

    static @Nullable String read(@Nullable RoutingContext context) {
        var cookie = context == null ? null : context.request().getCookie(name(context));
        return cookie == null ? null : cookie.getValue();
    }

    static void write(@Nullable RoutingContext context, String secret) {
        if (context != null) {
            context.response()
                    .addCookie(
                            Cookie.cookie(name(context), secret)
                                    .setPath(ONLY_TO_SIGN_IN)
                                    .setHttpOnly(true)
                                    .setSameSite(CookieSameSite.STRICT)
                                    .setSecure(context.request().isSSL())
                                    .setMaxAge(KnownBrowsers.REMEMBERED.toSeconds()));
        }
    }

    private static String name(RoutingContext context) {
        return context.request().isSSL() ? NAME_BY_TLS : NAME;
    }
}
