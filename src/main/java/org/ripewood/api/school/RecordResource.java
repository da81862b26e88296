package org.ripewood.api.school;

import static org.ripewood.platform.Role.INSTRUCTOR_NAME;
import static org.ripewood.platform.Role.REGISTRAR_NAME;
import static org.ripewood.platform.Role.STUDENT_NAME;

import jakarta.annotation.security.PermitAll;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.Variant;
import java.io.InputStream;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestResponse;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.Answers;
import org.ripewood.api.kit.Asked;
import org.ripewood.archive.Archive;
import org.ripewood.archive.Backup;
import org.ripewood.archive.Backups;
import org.ripewood.archive.Forgetting;
import org.ripewood.archive.RecordForm;
import org.ripewood.archive.Taken;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.guards.RateLimited;
import org.ripewood.platform.http.Versions;
import org.ripewood.signin.Confirmations;

/** The record as a file, out and in again. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Record")
class RecordResource {

    /** How persons are told in a tree's file. */
    enum PersonRows {
        NAMED,
        UNNAMED
    }

    private static final String ZIP = "application/zip";

    private static final MediaType[] TYPES = {
        new MediaType("application", "zip"), MediaType.APPLICATION_JSON_TYPE
    };

    /** How many rows nobody may read but whoever wrote them. */
    private static final String LEFT_BEHIND = "Ripewood-Left-Behind";

    private static final String FORMS =
            " A ZIP of record.json, laid out as record-schema says, and of the photos' pictures;"
                    + " with form=JSON, or to who accepts nothing but JSON, the JSON by itself,"
                    + " without photos.";

    private final Archive archive;
    private final Backups backups;
    private final Confirmations confirmations;
    private final CurrentUser user;
    private final Request request;

    RecordResource(
            Archive archive,
            Backups backups,
            Confirmations confirmations,
            CurrentUser user,
            Request request) {
        this.confirmations = confirmations;
        this.request = request;
        this.archive = archive;
        this.backups = backups;
        this.user = user;
    }

    @GET
    @Path("record")
    @RateLimited
    @Produces({MediaType.APPLICATION_JSON, ZIP})
    @RolesAllowed(REGISTRAR_NAME)
    @Operation(
            summary = "The school's record as a file",
            description =
                    "Everything but secrets, and but for judgements nobody may read yet but their"
                            + " judges; the header Ripewood-Left-Behind says how many these are. It"
                            + " can be brought into an empty school, where nobody of it signs in"
                            + " before being invited."
                            + FORMS)
    public Response school(@QueryParam("form") @Nullable String form) {
        var asked = form(form);
        var sealed = archive.sealed(user.actor());
        return Response.fromResponse(file(archive.school(user.actor(), asked), "school", asked))
                .header(LEFT_BEHIND, sealed)
                .build();
    }

    @POST
    @Path("backups")
    @RateLimited
    @RolesAllowed(REGISTRAR_NAME)
    @Operation(
            summary = "Copy the embedded database while the service runs",
            description =
                    "The file lies in the folder backups of the service's data. A school on"
                            + " PostgreSQL is answered 409: pg_dump makes its backups.")
    @APIResponseSchema(
            value = Backup.class,
            responseCode = "201",
            responseDescription = "Backed up")
    public RestResponse<Backup> backUp() {
        return Answers.created("backups", backups.make(user.actor()));
    }

    @GET
    @Path("courses/{id}/record")
    @RateLimited
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Produces({MediaType.APPLICATION_JSON, ZIP})
    @Operation(
            summary = "A course's record as a file, with its students' trees",
            description = "For those who run it." + FORMS)
    public Response course(@PathParam("id") long id, @QueryParam("form") @Nullable String form) {
        var asked = form(form);
        return file(archive.course(user.actor(), id, asked), "course-" + id, asked);
    }

    @GET
    @Path("trees/{id}/record")
    @RateLimited
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Produces({MediaType.APPLICATION_JSON, ZIP})
    @Operation(
            summary = "A tree's record as a file",
            description =
                    "Asked for with persons=UNNAMED it tells persons by numbers, and what they"
                            + " wrote in their own words stays behind."
                            + FORMS)
    public Response tree(
            @PathParam("id") long id,
            @QueryParam("persons") @Nullable String persons,
            @QueryParam("form") @Nullable String form) {
        boolean named = Asked.oneOf("persons", persons, PersonRows.class) != PersonRows.UNNAMED;
        var asked = form(form);
        return file(archive.tree(user.actor(), id, named, asked), "tree-" + id, asked);
    }

    @GET
    @Path("people/{id}/record")
    @RateLimited
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Produces({MediaType.APPLICATION_JSON, ZIP})
    @Operation(
            summary = "All that is on record of a person",
            description =
                    "For themselves and for registrars: the trees they keep with everything, and"
                            + " what they wrote, took pictures of or is told of them elsewhere. A row"
                            + " without a writer was written by somebody else."
                            + FORMS)
    public Response person(@PathParam("id") long id, @QueryParam("form") @Nullable String form) {
        var asked = form(form);
        return file(archive.person(user.actor(), id, asked), "person-" + id, asked);
    }

    @GET
    @Path("people/{id}/forgetting")
    @RolesAllowed(REGISTRAR_NAME)
    @Operation(summary = "What forgetting a person would do")
    public RestResponse<Forgetting> forgetting(@PathParam("id") long id) {
        var told = archive.forgetting(user.actor(), id);
        return Answers.versioned(told.version(), told);
    }

    @POST
    @Path("people/{id}/forget")
    @RolesAllowed(REGISTRAR_NAME)
    @Operation(
            summary = "Forget a person",
            description =
                    "Name, login, roles, courses, links, their own words and the photos they sent"
                            + " are removed for good; what was seen of trees stays. Refused while they keep trees. Doing"
                            + " it again changes nothing. By a session only, and by no token.")
    public Forgetting forget(
            @PathParam("id") long id, @HeaderParam("If-Match") @Nullable String ifMatch) {
        confirmSession("forget persons");
        return archive.forget(user.actor(), id, Versions.required(ifMatch));
    }

    @GET
    @Path("record-schema")
    @PermitAll
    @Operation(
            summary = "The JSON Schema (2020-12) of a record's file",
            description = "Of the JSON, and of the entry record.json in a ZIP.")
    public String schema() {
        return archive.schema();
    }

    @POST
    @Path("record")
    @RateLimited
    @Consumes({MediaType.APPLICATION_JSON, ZIP})
    @RolesAllowed(REGISTRAR_NAME)
    @Operation(
            summary = "Bring a record's file in",
            description =
                    "JSON or ZIP, told by its content. All of it or nothing. A school's only into an empty school; a course's or a"
                            + " tree's into any, with its persons entered as people who cannot sign"
                            + " in, and so by a session only. Faults are told with JSON Pointers (RFC 6901), those of pictures"
                            + " with the entry's name. At most 256 MB, also unpacked, unless the"
                            + " service is set otherwise.")
    @APIResponseSchema(value = Taken.class, responseCode = "201", responseDescription = "Entered")
    public RestResponse<Taken> take(InputStream sent) {
        confirmSession("bring a record in, which enters persons");
        return RestResponse.status(RestResponse.Status.CREATED, archive.take(user.actor(), sent));
    }

    private void confirmSession(String toDoWhat) {
        user.requireSession(toDoWhat);
        confirmations.require();
    }

    /** With its pictures, unless asked for otherwise: they are part of the record. */
    private RecordForm form(@Nullable String form) {
        var asked = Asked.oneOf("form", form, RecordForm.class);
        if (asked != null) {
            return asked;
        }
        var taken = request.selectVariant(Variant.mediaTypes(TYPES).build());
        return taken != null && taken.getMediaType().equals(MediaType.APPLICATION_JSON_TYPE)
                ? RecordForm.JSON
                : RecordForm.ZIP;
    }

    private static Response file(InputStream record, String name, RecordForm form) {
        boolean zip = form == RecordForm.ZIP;
        return Response.ok(record, zip ? ZIP : MediaType.APPLICATION_JSON)
                .header(
                        "Content-Disposition",
                        "attachment; filename=\"ripewood-%s.%s\""
                                .formatted(name, zip ? "zip" : "json"))
                .header("Cache-Control", "no-store")
                .build();
    }
}
