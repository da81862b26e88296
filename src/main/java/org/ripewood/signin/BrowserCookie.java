package org.ripewood.signin;

import io.vertx.core.http.Cookie;
import io.vertx.core.http.CookieSameSite;
import io.vertx.ext.web.RoutingContext;
import java.time.Duration;
import org.jspecify.annotations.Nullable;

/** Cookies sent with a try to sign in and nothing else. By TLS their names say that they are. */
enum BrowserCookie {
    /** By which a browser is known again. */
    KNOWN("ripewood-browser", KnownBrowsers.REMEMBERED),
    /** By which a sign-in goes on whose password was right. */
    HALF("ripewood-half", HalfSignIns.WAITS);

    private static final String ONLY_TO_SIGN_IN = "/j_security_check";

    /** RFC 6265bis, 4.1.3.1; the other prefix would send it everywhere. */
    private static final String BY_TLS = "__Secure-";

    private final String plainName;
    private final Duration holds;

    BrowserCookie(String plainName, Duration holds) {
        this.plainName = plainName;
        this.holds = holds;
    }

    String name(boolean byTls) {
        return byTls ? BY_TLS + plainName : plainName;
    }

    @Nullable String read(@Nullable RoutingContext context) {
        var cookie =
                context == null
                        ? null
                        : context.request().getCookie(name(context.request().isSSL()));
        return cookie == null ? null : cookie.getValue();
    }

    void write(@Nullable RoutingContext context, String secret) {
        write(context, secret, holds);
    }

    void remove(@Nullable RoutingContext context) {
        write(context, "", Duration.ZERO);
    }

    private void write(@Nullable RoutingContext context, String secret, Duration age) {
        if (context != null) {
            boolean byTls = context.request().isSSL();
            context.response()
                    .addCookie(
                            Cookie.cookie(name(byTls), secret)
                                    .setPath(ONLY_TO_SIGN_IN)
                                    .setHttpOnly(true)
                                    .setSameSite(CookieSameSite.STRICT)
                                    .setSecure(byTls)
                                    .setMaxAge(age.toSeconds()));
        }
    }
}
