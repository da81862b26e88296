package org.ripewood.api.trees;

import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jboss.resteasy.reactive.RestResponse;
import org.jboss.resteasy.reactive.RestResponse.ResponseBuilder;
import org.ripewood.records.Question;

/** A problem (RFC 9457) of a kind of its own: values that look odd, and what is asked of them. */
@Schema(description = "Some values look odd; nothing is kept until they are confirmed (RFC 9457)")
@JsonPropertyOrder({"type", "title", "status", "detail", "instance", "questions"})
record OddValues(
        String type,
        String title,
        int status,
        String detail,
        String instance,
        @Schema(description = "send the keys as confirmed once it was measured again")
                List<Question> questions) {

    static final String MEDIA_TYPE = "application/problem+json";

    private static final int CONFLICT = 409;

    OddValues {
        questions = List.copyOf(questions);
    }

    static RestResponse<Object> answer(String instance, List<Question> questions) {
        Object body =
                new OddValues(
                        "urn:ripewood:problem:odd-values",
                        "Some values look odd",
                        CONFLICT,
                        "%d value(s) differ from what was there before; nothing was saved."
                                .formatted(questions.size()),
                        instance,
                        questions);
        return ResponseBuilder.create(RestResponse.Status.CONFLICT, body).type(MEDIA_TYPE).build();
    }
}
