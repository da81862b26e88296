package org.ripewood.api.kit;

import org.jboss.resteasy.reactive.RestResponse;
import org.jboss.resteasy.reactive.RestResponse.ResponseBuilder;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.http.Versions;

/** Answers with the headers that belong to them (RFC 9110: Location 10.2.2, ETag 8.8.3). */
public final class Answers {

    public static final String ROOT = "/api/v1/";

    private Answers() {}

    public static <T> RestResponse<T> versioned(long version, T body) {
        return ResponseBuilder.ok(body).header("ETag", Versions.etag(version)).build();
    }

    /** The like, of what its version tells all of: nothing more for a reader who has it. */
    public static <T> RestResponse<T> versioned(
            @Nullable String ifNoneMatch, long version, T body) {
        return Versions.known(ifNoneMatch, version)
                ? ResponseBuilder.<T>create(RestResponse.Status.NOT_MODIFIED)
                        .header("ETag", Versions.etag(version))
                        .build()
                : versioned(version, body);
    }

    /**
     * 201 with the address of what was made.
     *
     * @param path of what was made, below {@link #ROOT}
     */
    public static <T> RestResponse<T> created(String path, T body) {
        return ResponseBuilder.create(RestResponse.Status.CREATED, body)
                .header("Location", ROOT + path)
                .build();
    }

    public static <T> RestResponse<T> created(String path, long version, T body) {
        return ResponseBuilder.create(RestResponse.Status.CREATED, body)
                .header("Location", ROOT + path)
                .header("ETag", Versions.etag(version))
                .build();
    }
}
