package org.ripewood.platform.http;

/** Which addresses are the API's; all others are for people. */
public final class ApiAddress {

    private ApiAddress() {}

    public static boolean is(String path) {
        return path.equals("/api") || path.startsWith("/api/");
    }
}
