package org.ripewood.platform.http;

import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** Has every answer of a door looked at for what was refused. */
class RefusalsNoted {

    private final RefusalLog log;

    RefusalsNoted(RefusalLog log) {
        this.log = log;
    }

    @ServerResponseFilter
    void note(ContainerResponseContext response, RoutingContext context) {
        log.answered(context, response.getStatus());
    }
}
