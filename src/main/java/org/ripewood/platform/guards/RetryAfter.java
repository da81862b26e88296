package org.ripewood.platform.guards;

import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.HttpHeaders;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** Says when to ask again with every answer that says "not now" (RFC 9110, 10.2.3). */
class RetryAfter {

    private static final Set<Integer> NOT_NOW = Set.of(RateLimit.TOO_MANY, 503);

    private static final int SECONDS = 10;

    @ServerResponseFilter
    void tell(ContainerResponseContext response) {
        if (NOT_NOW.contains(response.getStatus())) {
            response.getHeaders().putSingle(HttpHeaders.RETRY_AFTER, SECONDS);
        }
    }
}
