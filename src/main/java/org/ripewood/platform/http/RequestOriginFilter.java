package org.ripewood.platform.http;

import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ResourceInfo;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.Method;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jspecify.annotations.Nullable;

/** Notes on each request which door it came to, for the record of who did what. */
class RequestOriginFilter {

    static final String KEY = "ripewood.door";

    private static final Map<Method, String> ADDRESSES = new ConcurrentHashMap<>();

    @ServerRequestFilter
    void note(ContainerRequestContext request, ResourceInfo resource, RoutingContext context) {
        var method = resource.getResourceMethod();
        if (method != null) {
            var address = ADDRESSES.computeIfAbsent(method, RequestOriginFilter::address);
            context.put(KEY, request.getMethod() + " " + address);
        }
    }

    /** One slash at most, none at the end, variables without their patterns. */
    static String address(Method method) {
        var whole = "/" + path(method.getDeclaringClass()) + "/" + path(method);
        var plain = whole.replaceAll("\\{\\s*(\\w+)\\s*:[^/]*\\}(?=/|$)", "{$1}");
        var slashed = plain.replaceAll("/+", "/");
        return slashed.length() > 1 ? slashed.replaceAll("/$", "") : slashed;
    }

    private static String path(AnnotatedElement place) {
        @Nullable Path path = place.getAnnotation(Path.class);
        return path == null ? "" : path.value();
    }
}
