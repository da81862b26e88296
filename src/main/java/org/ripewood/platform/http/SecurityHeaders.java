package org.ripewood.platform.http;

import io.quarkus.runtime.LaunchMode;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpServerResponse;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;

/** Headers on every answer that keep a browser from doing what no page of ours asks for. */
@ApplicationScoped
public class SecurityHeaders {

    private static final int BEFORE_EVERYTHING = 10_000;

    /**
     * Pictures, styles and fonts from here; no script at all, nothing inline, in nobody's frame.
     */
    static final String CONTENT_SECURITY_POLICY =
            "default-src 'none'; img-src 'self'; style-src 'self'; font-src 'self';"
                    + " manifest-src 'self'; form-action 'self'; frame-ancestors 'none';"
                    + " base-uri 'none'";

    private static final String SET = "ripewood.safety-headers";

    private static final String POLICY = "Content-Security-Policy";

    /** Without the path. With no referrer at all a form would not say which site it is of. */
    private static final String NO_ADDRESS = "strict-origin";

    /** What no page of ours asks a browser for. */
    static final String PERMISSIONS_POLICY =
            "camera=(), microphone=(), geolocation=(), usb=(), serial=(), bluetooth=(), midi=(),"
                    + " payment=(), display-capture=(), fullscreen=(), publickey-credentials-get=()";

    /** A year, with everything below the host's name. */
    private static final String ONLY_HTTPS = "max-age=31536000; includeSubDomains";

    void register(@Observes Filters filters) {
        filters.register(SecurityHeaders::filter, BEFORE_EVERYTHING);
    }

    private static void filter(RoutingContext context) {
        on(context);
        context.next();
    }

    /** Once, however often it is asked for. */
    public static void on(RoutingContext context) {
        if (context.get(SET) == null) {
            context.put(SET, true);
            context.addHeadersEndHandler(done -> put(context.response(), context));
        }
    }

    private static void put(HttpServerResponse response, RoutingContext context) {
        var path = AskedAddress.of(context);
        var headers = response.headers();
        headers.set("Permissions-Policy", PERMISSIONS_POLICY);
        headers.set("Cross-Origin-Opener-Policy", "same-origin");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
        if (context.request().isSSL()) {
            headers.set("Strict-Transport-Security", ONLY_HTTPS);
        }
        if (!Sandbox.POLICY.equals(headers.get(POLICY)) && !isToolOfDevelopment(path)) {
            headers.set(POLICY, CONTENT_SECURITY_POLICY);
        }
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("Referrer-Policy", SecretAddress.is(path) ? NO_ADDRESS : "same-origin");
        if (!isAsset(path) && !headers.contains("Cache-Control")) {
            headers.set("Cache-Control", "no-store");
        }
    }

    /** The framework's own pages, which are there in development alone, are made of scripts. */
    private static boolean isToolOfDevelopment(String path) {
        return LaunchMode.current() == LaunchMode.DEVELOPMENT && path.startsWith("/q/");
    }

    /** Only files have an ending; pages and the API may hold what is for one person. */
    private static boolean isAsset(String path) {
        return !ProblemAnswers.isApi(path)
                && path.matches(".*\\.(css|js|svg|png|ico|woff2?|ttf|txt|webmanifest)");
    }
}
