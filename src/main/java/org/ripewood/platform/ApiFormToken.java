package org.ripewood.platform;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.regex.Pattern;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Spares programs that send files to the API the token of forms: the framework asks it of
 * everything in parts, whatever the address, while {@link ApiWriteGuard} asks more of them already.
 * The token's cookie is answered by a header of the same value, and made up where there is none.
 */
@ApplicationScoped
class ApiFormToken {

    private static final int EARLY = 8_500;

    /** What the framework compares the cookie with. */
    private static final String HEADER = "X-CSRF-TOKEN";

    private static final int BYTES = 16;

    private final SecureRandom random = new SecureRandom();
    private final String cookieName;
    private final Pattern cookie;

    ApiFormToken(@ConfigProperty(name = "quarkus.rest-csrf.cookie-name") String cookieName) {
        this.cookieName = cookieName;
        this.cookie = Pattern.compile("(?:^|;\\s*)" + Pattern.quote(cookieName) + "=([^;\\s]*)");
    }

    void register(@Observes Filters filters) {
        filters.register(this::filter, EARLY);
    }

    private void filter(RoutingContext context) {
        var request = context.request();
        var type = request.getHeader(HttpHeaders.CONTENT_TYPE);
        if (ProblemAnswers.isApi(AskedAddress.of(context))
                && type != null
                && type.startsWith("multipart/")) {
            spare(request);
        }
        context.next();
    }

    private void spare(HttpServerRequest request) {
        var cookies = request.getHeader(HttpHeaders.COOKIE);
        var sent = cookie.matcher(cookies == null ? "" : cookies);
        if (sent.find()) {
            request.headers().set(HEADER, sent.group(1));
            return;
        }
        var bits = new byte[BYTES];
        random.nextBytes(bits);
        var token = Base64.getUrlEncoder().withoutPadding().encodeToString(bits);
        var pair = cookieName + "=" + token;
        request.headers()
                .set(HttpHeaders.COOKIE, cookies == null ? pair : cookies + "; " + pair)
                .set(HEADER, token);
    }
}
