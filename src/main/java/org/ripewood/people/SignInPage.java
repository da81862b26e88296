package org.ripewood.people;

import io.vertx.ext.web.RoutingContext;
import java.time.Duration;
import org.jspecify.annotations.Nullable;

/** Which words the sign-in page shows after a failure. */
final class SignInPage {

    /** The form mechanism knows one error page only; this is the other. */
    private static final String PAUSED = "/sign-in?wrong=paused&minutes=";

    private SignInPage() {}

    static void showPause(@Nullable RoutingContext context, Duration pause) {
        if (context != null) {
            var page = PAUSED + TooManyTries.minutes(pause);
            context.addHeadersEndHandler(
                    done -> context.response().headers().set("Location", page));
        }
    }
}
