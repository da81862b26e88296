package org.ripewood.signin;

import io.vertx.ext.web.RoutingContext;
import java.time.Duration;
import org.jspecify.annotations.Nullable;

/**
 * Where a sign-in that was not let in goes on to: the form mechanism knows one error page only, and
 * these are the others.
 */
final class SignInPage {

    private static final String PAUSED = "/sign-in?wrong=paused&minutes=";
    private static final String CODE = "/sign-in/code";

    private SignInPage() {}

    static void showPause(@Nullable RoutingContext context, Duration pause) {
        show(context, PAUSED + TooManyTries.minutes(pause));
    }

    static void askForCode(@Nullable RoutingContext context) {
        show(context, CODE);
    }

    static void askForCodeAgain(@Nullable RoutingContext context) {
        show(context, CODE + "?wrong=yes");
    }

    static void beginAnew(@Nullable RoutingContext context) {
        show(context, "/sign-in?late=yes");
    }

    private static void show(@Nullable RoutingContext context, String page) {
        if (context != null) {
            context.addHeadersEndHandler(
                    done -> context.response().headers().set("Location", page));
        }
    }
}
