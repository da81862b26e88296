package org.ripewood.platform.guards;

import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.container.ContainerRequestContext;
import java.util.List;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.http.AskedAddress;
import org.ripewood.platform.http.ProblemAnswers;
import org.ripewood.platform.http.ProgramHeader;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;

/**
 * Writes to the API by a browser's session need a header that no form and no other site's page can
 * send: JSON bodies carry no form token. A token needs none, since no other site's page knows it;
 * but one made for reading does not write, by whatever address.
 */
class ApiWriteGuard {

    private static final Set<String> READS = Set.of("GET", "HEAD", "OPTIONS");

    private final CurrentUser user;

    ApiWriteGuard(CurrentUser user) {
        this.user = user;
    }

    @ServerRequestFilter
    void check(ContainerRequestContext request, RoutingContext context) {
        if (READS.contains(request.getMethod())) {
            return;
        }
        if (user.readsOnly()) {
            throw new Refused(
                    new Problem(
                            403,
                            "token-reads",
                            "This token only reads",
                            "The token was made for reading; this request writes.",
                            "Maybe make a token for reading and writing on the account page.",
                            List.of()));
        }
        if (ProblemAnswers.isApi(AskedAddress.of(context))
                && bySession()
                && !"1".equals(request.getHeaderString(ProgramHeader.NAME))) {
            throw new Refused(
                    new Problem(
                            403,
                            "header-missing",
                            "A header is missing",
                            "A write by a signed-in session needs the header X-Ripewood: 1.",
                            "Maybe add it; it shows that the write comes from a program of yours"
                                    + " and not from another site's page.",
                            List.of()));
        }
    }

    private boolean bySession() {
        return user.signedIn() && !user.byToken();
    }
}
