package org.ripewood.platform.http;

/** What a file is served with that somebody may open by itself. */
public final class Sandbox {

    /**
     * It loads nothing, runs nothing and stands in nobody's frame. Doors may ask for this policy
     * and for no other: every other one gives way to that of pages.
     */
    public static final String POLICY = "default-src 'none'; frame-ancestors 'none'; sandbox";

    private Sandbox() {}
}
