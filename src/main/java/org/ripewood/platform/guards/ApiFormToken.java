package org.ripewood.platform.guards;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.MultiMap;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.regex.Pattern;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.ripewood.platform.http.AskedAddress;
import org.ripewood.platform.http.ProblemAnswers;

/**
 * Spares programs that send files to the API the token of forms: the framework asks it of
 * everything in parts, whatever the address, while {@link ApiWriteGuard} asks more of them already.
 * Whatever cookie of it comes along is left aside there, and for what comes in parts one is made up
 * that is answered by a header of the same value.
 */
@ApplicationScoped
class ApiFormToken {

    private static final int EARLY = 8_500;

    /** What the framework compares the cookie with. */
    private static final String HEADER = "X-CSRF-TOKEN";

    private final FormTokens tokens;
    private final String cookieName;
    private final Pattern cookie;

    ApiFormToken(
            FormTokens tokens,
            @ConfigProperty(name = "quarkus.rest-csrf.cookie-name") String cookieName) {
        this.tokens = tokens;
        this.cookieName = cookieName;
        this.cookie = Pattern.compile("(^|;)\\s*" + Pattern.quote(cookieName) + "=[^;]*");
    }

    void register(@Observes Filters filters) {
        filters.register(this::filter, EARLY);
    }

    private void filter(RoutingContext context) {
        if (ProblemAnswers.isApi(AskedAddress.of(context))) {
            spare(context.request().headers());
        }
        context.next();
    }

    private void spare(MultiMap headers) {
        headers.remove(HEADER);
        var sent = String.join("; ", headers.getAll(HttpHeaders.COOKIE));
        var others = cookie.matcher(sent).replaceAll("").replaceFirst("^;\\s*", "");
        var type = headers.get(HttpHeaders.CONTENT_TYPE);
        if (type != null && type.startsWith("multipart/")) {
            var token = tokens.make(null);
            others = (others.isEmpty() ? "" : others + "; ") + cookieName + "=" + token;
            headers.set(HEADER, token);
        }
        if (others.isEmpty()) {
            headers.remove(HttpHeaders.COOKIE);
        } else {
            headers.set(HttpHeaders.COOKIE, others);
        }
    }
}
