package org.ripewood.platform;

import io.vertx.ext.web.RoutingContext;
import org.jspecify.annotations.Nullable;

/**
 * Has a browser forget what it kept for whoever was signed in (the W3C's Clear Site Data; browsers
 * heed it over TLS and on their own computer).
 */
public final class ClearSiteData {

    private static final String HEADER = "Clear-Site-Data";

    private ClearSiteData() {}

    /** Pictures and pages, when a session has ended; what they entered waits for them. */
    public static void on(@Nullable RoutingContext context) {
        if (context != null) {
            context.response().putHeader(HEADER, "\"cache\"");
        }
    }

    /** All of it, entries that wait to be sent as well, when a person leaves. */
    public static void ofWhoLeaves(@Nullable RoutingContext context) {
        if (context != null) {
            context.response().putHeader(HEADER, "\"cache\", \"storage\"");
        }
    }
}
