package org.ripewood.platform.http;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import org.ripewood.platform.problems.Problem;

/** Problems as answers: JSON to programs, a page to people. */
@ApplicationScoped
public class ProblemAnswers {

    static final String HTML = MediaType.TEXT_HTML + ";charset=UTF-8";

    private final ObjectMapper json;
    private final RefusalLog log;

    ProblemAnswers(ObjectMapper json, RefusalLog log) {
        this.json = json;
        this.log = log;
    }

    Response answer(Problem problem, RoutingContext context) {
        var path = AskedAddress.of(context);
        var api = isApi(path);
        return Response.status(problem.status())
                .type(api ? ProblemBody.MEDIA_TYPE : HTML)
                .entity(api ? body(problem, path) : page(problem))
                .build();
    }

    /**
     * Ends a request that has not come to any door. A body that comes along is not read, so nothing
     * else can come by that connection.
     */
    public void refuse(RoutingContext context, Problem problem) {
        log.refused(context, problem.status());
        if (comesWithABody(context.request())) {
            LastAnswer.on(context);
        }
        end(context, problem);
    }

    private static boolean comesWithABody(HttpServerRequest request) {
        return request.headers().contains("Content-Length")
                || request.headers().contains("Transfer-Encoding");
    }

    private void end(RoutingContext context, Problem problem) {
        var path = AskedAddress.of(context);
        boolean program = isApi(path) || MetricsAddress.is(path);
        context.response()
                .setStatusCode(problem.status())
                .putHeader("Content-Type", program ? ProblemBody.MEDIA_TYPE : HTML)
                .end(program ? body(problem, path) : page(problem));
    }

    public static boolean isApi(String path) {
        return ApiAddress.is(path);
    }

    String body(Problem problem, String path) {
        try {
            return json.writeValueAsString(ProblemBody.of(problem, path));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a problem is always JSON", e);
        }
    }

    String page(Problem problem) {
        return ProblemPages.problem(problem).render();
    }
}
