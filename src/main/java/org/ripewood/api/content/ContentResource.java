package org.ripewood.api.content;

import static org.ripewood.platform.Role.INSTRUCTOR_NAME;
import static org.ripewood.platform.Role.REGISTRAR_NAME;
import static org.ripewood.platform.Role.STUDENT_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.Arrays;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.ripewood.cases.Cases;
import org.ripewood.condition.SchoolShoots;
import org.ripewood.core.progress.Fact;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Lesson;

/** What the school teaches by: techniques, species, lessons and facts, with their revision. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
@Tag(name = "Content")
class ContentResource {

    private final CourseContent content;
    private final Cases cases;
    private final SchoolShoots shoots;

    ContentResource(CourseContent content, Cases cases, SchoolShoots shoots) {
        this.shoots = shoots;
        this.content = content;
        this.cases = cases;
    }

    @GET
    @Path("content")
    @Operation(summary = "The revision in force and how much it holds")
    public ContentAnswer summary() {
        return ContentAnswer.of(content.inForce());
    }

    @GET
    @Path("content/techniques")
    @Operation(summary = "Techniques in telling order")
    public List<TechniqueLine> techniques() {
        return content.inForce().techniques().values().stream().map(TechniqueLine::of).toList();
    }

    @GET
    @Path("content/techniques/{code}")
    @Operation(summary = "A technique with its criteria")
    public TechniqueAnswer technique(@PathParam("code") String code) {
        return TechniqueAnswer.of(content.inForce().technique(code));
    }

    @GET
    @Path("content/species")
    @Operation(summary = "Species")
    public List<SpeciesLine> allSpecies() {
        return content.inForce().species().values().stream().map(SpeciesLine::of).toList();
    }

    @GET
    @Path("content/species/{code}")
    @Operation(
            summary =
                    "A species, each figure with its source; its shoots also as the school's trees grow")
    public SpeciesAnswer species(@PathParam("code") String code) {
        var species = content.inForce().species(code);
        return SpeciesAnswer.of(species, shoots.of(species));
    }

    @GET
    @Path("content/lessons")
    @Operation(summary = "Lessons, stage by stage")
    public List<LessonLine> lessons() {
        return content.inForce().lessons().values().stream().map(LessonLine::of).toList();
    }

    @GET
    @Path("content/lessons/{code}")
    @Operation(summary = "A lesson with its text")
    public Lesson lesson(@PathParam("code") String code) {
        return content.inForce().lesson(code);
    }

    @GET
    @Path("content/rubrics")
    @Operation(summary = "Rubrics with their levels in words")
    public List<RubricAnswer> rubrics() {
        return content.inForce().rubrics().values().stream().map(RubricAnswer::of).toList();
    }

    @GET
    @Path("content/facts")
    @Operation(summary = "What can be known of a tree and how it is measured")
    public List<FactAnswer> facts() {
        var inForce = content.inForce();
        return Arrays.stream(Fact.values()).map(fact -> FactAnswer.of(fact, inForce)).toList();
    }

    @POST
    @Path("content/renew")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "Read the content files again; faulty files change nothing")
    public RenewalAnswer renew() {
        var faults = content.renew();
        return new RenewalAnswer(content.inForce().revision(), faults, cases.disagreeing());
    }
}
