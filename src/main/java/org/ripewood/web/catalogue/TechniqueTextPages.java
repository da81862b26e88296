package org.ripewood.web.catalogue;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.ripewood.course.CourseContent;
import org.ripewood.web.kit.Answer;

/** A technique: the work itself, what it waits for and why, cautions and aftercare. */
@Path("/techniques/{code}")
@Authenticated
class TechniqueTextPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance technique(TechniqueText sheet);
    }

    private final CourseContent content;

    TechniqueTextPages(CourseContent content) {
        this.content = content;
    }

    @GET
    public Response technique(String code) {
        var inForce = content.inForce();
        return Answer.page(Templates.technique(TechniqueText.of(inForce.technique(code), inForce)));
    }
}
