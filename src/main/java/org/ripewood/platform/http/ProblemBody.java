package org.ripewood.platform.http;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Problem;

/** A problem as RFC 9457 writes it; {@code maybe} and {@code faults} are its extension members. */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
@JsonPropertyOrder({"type", "title", "status", "detail", "instance", "maybe", "faults"})
record ProblemBody(
        String type,
        String title,
        int status,
        String detail,
        String instance,
        @Nullable String maybe,
        List<Fault> faults) {

    static final String MEDIA_TYPE = "application/problem+json";

    static ProblemBody of(Problem problem, String instance) {
        return new ProblemBody(
                "urn:ripewood:problem:" + problem.kind(),
                problem.title(),
                problem.status(),
                problem.detail(),
                instance,
                problem.maybe(),
                problem.faults());
    }
}
