package org.ripewood.platform.guards;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import org.ripewood.platform.http.AskedAddress;
import org.ripewood.platform.http.LoginRedirect;
import org.ripewood.platform.http.ProblemAnswers;
import org.ripewood.platform.problems.Problems;

/**
 * Turns a body away by the length it announces, with words; the framework would do so in silence. A
 * body that announces none is taken by those doors only that never have it whole in memory. What
 * comes unannounced all the same is counted as it comes ({@link CountedBodies}).
 */
@ApplicationScoped
class BodyLimit {

    /** Before the framework's own check, after the safety headers. */
    private static final int EARLY = 9_000;

    private final ProblemAnswers answers;
    private final BodyMost most;

    BodyLimit(ProblemAnswers answers, BodyMost most) {
        this.answers = answers;
        this.most = most;
    }

    void register(@Observes Filters filters) {
        filters.register(this::filter, EARLY);
    }

    private void filter(RoutingContext context) {
        var request = context.request();
        var path = AskedAddress.of(context);
        long bytes = most.at(path);
        if (announced(request) > bytes) {
            answers.refuse(context, BodyMost.tooLarge(bytes));
        } else if (mustAnnounce(request, path)) {
            answers.refuse(context, Problems.plain(411, "Maybe send the header Content-Length."));
        } else {
            if (mayComeUnannounced(request)) {
                CountedBodies.count(context, bytes);
            }
            context.next();
        }
    }

    /** What signs in is read by the framework, past every count of ours. */
    private boolean mustAnnounce(HttpServerRequest request, String path) {
        return (comesInChunks(request) && !most.mayComeUnannounced(path))
                || (mayComeUnannounced(request) && path.equals(LoginRedirect.FORM_TARGET));
    }

    /**
     * Over HTTP/1 a body without a length comes in chunks and says so (RFC 9112, 6.3). Over HTTP/2
     * nobody can tell beforehand whether one comes.
     */
    private static boolean mayComeUnannounced(HttpServerRequest request) {
        return comesInChunks(request)
                || (request.streamId() >= 0 && !request.headers().contains("Content-Length"));
    }

    private static boolean comesInChunks(HttpServerRequest request) {
        return request.headers().contains("Transfer-Encoding");
    }

    private static long announced(HttpServerRequest request) {
        var length = request.getHeader("Content-Length");
        return length != null && length.matches("\\d{1,18}") ? Long.parseLong(length) : 0;
    }
}
