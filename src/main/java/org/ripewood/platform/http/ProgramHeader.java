package org.ripewood.platform.http;

import io.vertx.ext.web.RoutingContext;
import org.jspecify.annotations.Nullable;

/** The header by which a program tells that it is one: no form and no other site sends it. */
public final class ProgramHeader {

    public static final String NAME = "X-Ripewood";

    private ProgramHeader() {}

    /** Whether a request comes from a program; not so where nobody knows the request. */
    public static boolean isOn(@Nullable RoutingContext context) {
        return context != null && "1".equals(context.request().getHeader(NAME));
    }
}
