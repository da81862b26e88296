package org.ripewood.web.school;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.ripewood.cases.CaseOutcome;
import org.ripewood.cases.Cases;
import org.ripewood.course.Content;
import org.ripewood.course.ContentFault;
import org.ripewood.course.CourseContent;
import org.ripewood.platform.Role;
import org.ripewood.web.kit.Answer;

/** The course content in force, how its judgement cases come out, and reading its files again. */
@Path("/content")
@RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
class ContentPages {

    /**
     * The page.
     *
     * @param justRead whether the files have been read again for it
     * @param faults what stood in the way of them then
     */
    record Sheet(
            Content content,
            List<CaseOutcome> disagreeing,
            boolean justRead,
            List<ContentFault> faults) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance content(Sheet sheet);
    }

    private final CourseContent content;
    private final Cases cases;

    ContentPages(CourseContent content, Cases cases) {
        this.content = content;
        this.cases = cases;
    }

    @GET
    public Response content() {
        return page(false, List.of());
    }

    @POST
    @Path("renew")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response renew() {
        return page(true, content.renew());
    }

    private Response page(boolean justRead, List<ContentFault> faults) {
        var disagreeing = cases.disagreeing();
        return Answer.page(
                Templates.content(new Sheet(content.inForce(), disagreeing, justRead, faults)));
    }
}
