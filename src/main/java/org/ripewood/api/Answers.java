package org.ripewood.api;

import org.jboss.resteasy.reactive.RestResponse;
import org.jboss.resteasy.reactive.RestResponse.ResponseBuilder;
import org.ripewood.platform.Versions;

/** Answers with the headers that belong to them (RFC 9110: Location 10.2.2, ETag 8.8.3). */
final class Answers {

    static final String ROOT = "/api/v1/";

    private Answers() {}

    static <T> RestResponse<T> versioned(long version, T body) {
        return ResponseBuilder.ok(body).header("ETag", Versions.etag(version)).build();
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
