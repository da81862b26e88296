package org.ripewood.platform;

import jakarta.ws.rs.container.ContainerRequestContext;
import java.util.List;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/**
 * Writes to the API by a browser's session need a header that no form and no other site's page can
 * send: JSON bodies carry no form token. A token needs none, since no other site's page knows it;
 * but one made for reading does not write.
 */
class ApiWriteGuard {

    private static final String HEADER = "X-Ripewood";
    private static final Set<String> READS = Set.of("GET", "HEAD", "OPTIONS");

    private final CurrentUser user;
    private final String sessionCookie;

    ApiWriteGuard(
            CurrentUser user,
            @ConfigProperty(name = "quarkus.http.auth.form.cookie-name") String sessionCookie) {
        this.user = user;
        this.sessionCookie = sessionCookie;
    }

    @ServerRequestFilter
    void check(ContainerRequestContext request) {
        if (!ProblemAnswers.isApi(request.getUriInfo().getRequestUri().getRawPath())
                || READS.contains(request.getMethod())) {
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
        if (!user.byToken()
                && request.getCookies().containsKey(sessionCookie)
                && !"1".equals(request.getHeaderString(HEADER))) {
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
}
