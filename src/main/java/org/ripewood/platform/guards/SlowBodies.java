package org.ripewood.platform.guards;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Duration;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.ripewood.platform.http.AskedAddress;

/**
 * Closes a connection on which a body takes too long as a whole. Silence is noticed by the
 * framework, but a byte now and then would keep a connection, and a thread that reads from it, for
 * as long as somebody likes.
 */
@ApplicationScoped
class SlowBodies {

    /** After its length was looked at. */
    private static final int EARLY = 8_900;

    private final BodyMost most;
    private final Duration longest;
    private final Duration longestOfFiles;

    SlowBodies(
            BodyMost most,
            @ConfigProperty(name = "ripewood.body.longest") Duration longest,
            @ConfigProperty(name = "ripewood.body.longest-of-files") Duration longestOfFiles) {
        this.most = most;
        this.longest = longest;
        this.longestOfFiles = longestOfFiles;
    }

    void register(@Observes Filters filters) {
        filters.register(this::filter, EARLY);
    }

    private void filter(RoutingContext context) {
        var request = context.request();
        if (mayHaveABody(request)) {
            var wait = most.isOfFiles(AskedAddress.of(context)) ? longestOfFiles : longest;
            long timer = context.vertx().setTimer(wait.toMillis(), over -> end(request));
            context.addEndHandler(answered -> context.vertx().cancelTimer(timer));
        }
        context.next();
    }

    private static boolean mayHaveABody(HttpServerRequest request) {
        return request.headers().contains("Content-Length")
                || request.headers().contains("Transfer-Encoding")
                || request.streamId() >= 0;
    }

    private static void end(HttpServerRequest request) {
        if (!request.isEnded()) {
            request.connection().close();
        }
    }
}
