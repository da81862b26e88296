package org.ripewood.platform.http;

import io.vertx.ext.web.RoutingContext;

/**
 * Ends a connection on which more of a body comes than anybody is going to read. It is let run for
 * a moment, or whoever is still sending would not hear the answer (RFC 9112, 9.6).
 */
public final class LastAnswer {

    private static final long MOMENT_MILLIS = 1_000;

    private LastAnswer() {}

    /** To be said before the answer is sent. HTTP/2 ends its streams by itself. */
    public static void on(RoutingContext context) {
        if (context.request().streamId() < 0) {
            context.response().putHeader("Connection", "close");
            context.addEndHandler(answered -> letRunOut(context));
        }
    }

    private static void letRunOut(RoutingContext context) {
        var request = context.request();
        if (!request.isEnded()) {
            request.handler(rest -> {}).resume();
        }
        context.vertx().setTimer(MOMENT_MILLIS, over -> request.connection().close());
    }
}
