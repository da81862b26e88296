package org.ripewood.platform.guards;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.ripewood.platform.http.ApiAddress;
import org.ripewood.platform.http.AskedAddress;
import org.ripewood.platform.http.ProblemAnswers;
import org.ripewood.platform.problems.Problem;

/**
 * Refuses what changes something and was made by another site's page: browsers say so, by {@code
 * Sec-Fetch-Site} (Fetch Metadata) or by {@code Origin} (RFC 6454, 7), and no page can make them
 * say otherwise. Programs say neither. A sign-in counts too: it could make somebody write into
 * another's account. A token is nothing that a browser sends by itself.
 */
@ApplicationScoped
class OwnOrigin {

    private static final int EARLY = 9_500;
    private static final Set<String> READS = Set.of("GET", "HEAD", "OPTIONS");

    /** A page of ours, and whoever typed the address. */
    private static final Set<String> OWN = Set.of("same-origin", "none");

    private final ProblemAnswers answers;

    OwnOrigin(ProblemAnswers answers) {
        this.answers = answers;
    }

    void register(@Observes Filters filters) {
        filters.register(this::filter, EARLY);
    }

    private void filter(RoutingContext context) {
        var request = context.request();
        if (READS.contains(request.method().name()) || isByToken(context) || isOwn(request)) {
            context.next();
        } else {
            answers.refuse(context, problem());
        }
    }

    /** Where tokens are taken; a bad one there falls back on no session. */
    private static boolean isByToken(RoutingContext context) {
        var sent = context.request().getHeader("Authorization");
        return sent != null
                && sent.regionMatches(true, 0, "Bearer ", 0, 7)
                && ApiAddress.is(AskedAddress.of(context));
    }

    private static boolean isOwn(HttpServerRequest request) {
        var headers = request.headers();
        return headers.getAll("Sec-Fetch-Site").stream().allMatch(OWN::contains)
                && headers.getAll("Origin").stream().allMatch(origin -> isOf(request, origin));
    }

    /**
     * The same host and port. The scheme is only known where a proxy that speaks TLS says so, and
     * must then be the same.
     */
    static boolean isOf(HttpServerRequest request, String origin) {
        int end = origin.indexOf("://");
        if (end < 0) {
            return false;
        }
        var scheme = origin.substring(0, end).toLowerCase(Locale.ROOT);
        return (scheme.equals("https") || (scheme.equals("http") && !request.isSSL()))
                && place(origin.substring(end + 3), scheme)
                        .equals(place(String.valueOf(request.authority()), scheme));
    }

    private static String place(String authority, String scheme) {
        var place = authority.toLowerCase(Locale.ROOT);
        return place.replaceFirst(scheme.equals("https") ? ":443$" : ":80$", "");
    }

    private static Problem problem() {
        return new Problem(
                403,
                "foreign-origin",
                "From another site",
                "Another site's page asked for this, and it changes something here.",
                "Maybe open the page here and do it once more; a proxy has to pass on under which"
                        + " name and port it was asked.",
                List.of());
    }
}
