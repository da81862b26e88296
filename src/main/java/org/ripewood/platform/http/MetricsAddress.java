package org.ripewood.platform.http;

/** Where the meters are read; the one page beside the API that takes a token. */
public final class MetricsAddress {

    private MetricsAddress() {}

    public static boolean is(String path) {
        return path.equals("/q/metrics") || path.startsWith("/q/metrics/");
    }
}
