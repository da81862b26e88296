package org.ripewood.web.kit;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.function.Function;
import java.util.function.Supplier;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;

/** What a page request is answered with. */
public final class Answer {

    private static final int BAD_REQUEST = 400;
    private static final int NOT_FOUND = 404;

    private Answer() {}

    public static Response page(TemplateInstance page) {
        return page(200, page);
    }

    public static Response page(int status, TemplateInstance page) {
        var html = page.render();
        return html(status, status < BAD_REQUEST ? html : RefusedPage.of(html));
    }

    private static Response html(int status, String html) {
        return Response.status(status)
                .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
                .header("Cache-Control", "no-store")
                .entity(html)
                .build();
    }

    /** A page that could not answer what it was asked, and says why; nothing was to be saved. */
    public static Response question(TemplateInstance page) {
        return html(200, RefusedPage.labelled(page.render()));
    }

    public static Response seeOther(String path) {
        return Response.seeOther(URI.create(path)).build();
    }

    /**
     * Acts on a form and goes on to a page; when it is refused, shows the form again with what was
     * typed.
     *
     * @param act answers the path to go on to
     */
    public static Response to(Supplier<String> act, Function<Problem, TemplateInstance> again) {
        return answer(() -> seeOther(act.get()), again);
    }

    /** The like for what is shown once, and so cannot be gone on to. */
    public static Response orAgain(
            Supplier<TemplateInstance> act, Function<Problem, TemplateInstance> again) {
        return answer(() -> page(act.get()), again);
    }

    private static Response answer(
            Supplier<Response> act, Function<Problem, TemplateInstance> again) {
        try {
            return act.get();
        } catch (Refused refused) {
            var problem = refused.problem();
            if (problem.status() == NOT_FOUND) {
                throw refused;
            }
            return page(problem.status(), again.apply(problem));
        }
    }
}
