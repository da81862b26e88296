package org.ripewood.platform;

import io.vertx.ext.web.RoutingContext;
import org.jspecify.annotations.Nullable;

/**
 * Has a browser forget the pictures and pages it kept for whoever was signed in (the W3C's Clear
 * Site Data; browsers heed it over TLS and on their own computer).
 */
public final class ClearSiteData {

    private ClearSiteData() {}

    public static void on(@Nullable RoutingContext context) {
        if (context != null) {
            context.response().putHeader("Clear-Site-Data", "\"cache\"");
        }
    }
}
