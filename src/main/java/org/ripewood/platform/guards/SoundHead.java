package org.ripewood.platform.guards;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.http.HttpVersion;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.http.AskedAddress;
import org.ripewood.platform.http.HealthAnswers;
import org.ripewood.platform.http.ProblemAnswers;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Problems;
import org.ripewood.platform.problems.Refused;

/**
 * Refuses a head that says nothing sound of its host, its version or the type of its body: the
 * framework makes addresses of the first and fails at some of the last.
 */
@ApplicationScoped
class SoundHead {

    /** After the address. */
    private static final int EARLY = 9_800;

    /**
     * A name, an address or one in brackets, and a port (RFC 3986, 3.2.2); _ is common in names.
     */
    private static final Pattern HOST =
            Pattern.compile("(?:[A-Za-z0-9._-]{1,253}|\\[[0-9A-Fa-f:.]{2,45}\\])(?::\\d{1,5})?");

    /** Of two the framework would take the first, and the other may be the one meant. */
    private static final String IF_MATCH = "If-Match";

    private static final Set<String> SCHEMES = Set.of("http", "https");

    private final ProblemAnswers answers;

    SoundHead(ProblemAnswers answers) {
        this.answers = answers;
    }

    void register(@Observes Filters filters) {
        filters.register(this::filter, EARLY);
    }

    private void filter(RoutingContext context) {
        var problem = problem(context);
        if (problem == null) {
            context.next();
        } else {
            answers.refuse(context, problem);
        }
    }

    private static @Nullable Problem problem(RoutingContext context) {
        var request = context.request();
        if (isOfAnotherVersion(request)) {
            return Problems.plain(505, "Maybe send it by HTTP/1.1.");
        }
        if (!hasSoundHost(context)) {
            return noHost();
        }
        int versions = request.headers().getAll(IF_MATCH).size();
        return versions > 1
                ? Refused.invalid(
                                IF_MATCH,
                                "expected one version, found the header %d times"
                                        .formatted(versions))
                        .problem()
                : ContentTypes.settle(request);
    }

    static Problem noHost() {
        return new Problem(
                400,
                "host",
                "The host is missing",
                "The header Host has to say once by which name this service was asked; a proxy that"
                        + " speaks for it has to say the same, and whether by http or https.",
                "Maybe a proxy on the way changed it.",
                List.of());
    }

    /** A number of its own choice in the first line of HTTP/1. */
    private static boolean isOfAnotherVersion(HttpServerRequest request) {
        return request.streamId() < 0
                && request.version() != HttpVersion.HTTP_1_1
                && request.version() != HttpVersion.HTTP_1_0;
    }

    /** What a proxy says stands in the authority when it is believed. */
    private static boolean hasSoundHost(RoutingContext context) {
        var request = context.request();
        var sent = request.headers().getAll("Host");
        if (sent.isEmpty() && request.version() == HttpVersion.HTTP_1_0) {
            // machines that watch the service may be that old, and are told no address
            return HealthAnswers.isHealth(AskedAddress.of(context));
        }
        var authority = request.authority();
        return sent.size() < 2
                && SCHEMES.contains(String.valueOf(request.scheme()))
                && authority != null
                && HOST.matcher(authority.toString()).matches();
    }
}
