package org.ripewood.platform.http;

import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.MediaType;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;
import org.ripewood.platform.problems.Problems;

/** Puts words to the failures that the framework answers with a bare status. */
public class EmptyErrorFilter {

    public static final String MAYBE_STALE_FORM =
            "Maybe the page was open too long: go back, load it again and send the form once more.";

    private final ProblemAnswers answers;

    EmptyErrorFilter(ProblemAnswers answers) {
        this.answers = answers;
    }

    @ServerResponseFilter
    void speak(ContainerResponseContext response, RoutingContext context) {
        if (response.getStatus() < 400 || response.hasEntity()) {
            return;
        }
        var path = AskedAddress.of(context);
        var api = ProblemAnswers.isApi(path);
        var maybe = !api && response.getStatus() == 400 ? MAYBE_STALE_FORM : null;
        var problem = Problems.plain(response.getStatus(), maybe);
        response.setEntity(
                api ? answers.body(problem, path) : answers.page(problem),
                null,
                MediaType.valueOf(api ? ProblemBody.MEDIA_TYPE : ProblemAnswers.HTML));
    }
}
