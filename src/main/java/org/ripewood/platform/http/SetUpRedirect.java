package org.ripewood.platform.http;

import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.regex.Pattern;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;

/**
 * Leads whoever has to set up a second factor there before anything else. No role is theirs until
 * then; this tells them why, and keeps what asks for no role from them as well.
 */
class SetUpRedirect {

    private static final String PAGE = "/account/second-factor";

    private static final Pattern OPEN = Pattern.compile("/(account/second-factor(/.*)?|sign-out)");

    private final CurrentUser user;

    SetUpRedirect(CurrentUser user) {
        this.user = user;
    }

    @ServerRequestFilter
    void check(RoutingContext context) {
        if (user.unfinished() && !OPEN.matcher(AskedAddress.of(context)).matches()) {
            throw new Refused(problem());
        }
    }

    static boolean is(Problem problem) {
        return problem.kind().equals(problem().kind());
    }

    static Response page() {
        return Response.seeOther(URI.create(PAGE)).build();
    }

    static Problem problem() {
        return new Problem(
                403,
                "second-factor-first",
                "Set up a second factor first",
                "The school wants you to have a second factor before you go on.",
                "Maybe open %s in a browser.".formatted(PAGE),
                List.of());
    }
}
