package org.ripewood.platform;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;

/** Problems as answers: JSON to programs, a page to people. */
@ApplicationScoped
class ProblemAnswers {

    private final ObjectMapper json;

    ProblemAnswers(ObjectMapper json) {
        this.json = json;
    }

    Response answer(Problem problem, UriInfo uri) {
        return answer(problem, uri.getRequestUri().getRawPath());
    }

    Response answer(Problem problem, String path) {
        var api = isApi(path);
        return Response.status(problem.status())
                .type(api ? ProblemBody.MEDIA_TYPE : MediaType.TEXT_HTML + ";charset=UTF-8")
                .entity(api ? body(problem, path) : page(problem))
                .build();
    }

    static boolean isApi(String path) {
        return path.equals("/api") || path.startsWith("/api/");
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
