package org.ripewood.api;

import org.jboss.resteasy.reactive.RestResponse;
import org.jboss.resteasy.reactive.RestResponse.ResponseBuilder;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Versions;

/** Answers with the headers that belong to them (RFC 9110: Location 10.2.2, ETag 8.8.3). */
final class Answers {

    static final String ROOT = "/api/v1/";

    private Answers() {}

    static <T> RestResponse<T> versioned(long version, T body) {
        return ResponseBuilder.ok(body).header("ETag", Versions.etag(version)).build();
    }

    /** The like, of what its version tells all of: nothing more for a reader who has it. */
    static <T> RestResponse<T> versioned(@Nullable String ifNoneMatch, long version, T body) {
        return Versions.known(ifNoneMatch, version)
                ? ResponseBuilder.<T>create(RestResponse.Status.NOT_MODIFIED)
                        .header("ETag", Versions.etag(version))
                        .build()
                : versioned(version, body);
    }

    /**
     * @param path of what was made, below {@link #ROOT}
     */
    static <T> RestResponse<T> created(String path, T body) {
        return ResponseBuilder.create(RestResponse.Status.CREATED, body)
                .header("Location", ROOT + path)
                .build();
    }

    static <T> RestResponse<T> created(String path, long version, T body) {
        return ResponseBuilder.create(RestResponse.Status.CREATED, body)
                .header("Location", ROOT + path)
                .header("ETag", Versions.etag(version))
                .build();
    }
}
