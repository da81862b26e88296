package org.ripewood.api.trees;

import static org.ripewood.platform.Role.INSTRUCTOR_NAME;
import static org.ripewood.platform.Role.REGISTRAR_NAME;
import static org.ripewood.platform.Role.STUDENT_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestResponse;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.Answers;
import org.ripewood.api.kit.Asked;
import org.ripewood.photos.NewPhoto;
import org.ripewood.photos.Photo;
import org.ripewood.photos.Photos;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Paged;
import org.ripewood.platform.http.FileParts;
import org.ripewood.platform.http.Versions;
import org.ripewood.platform.once.Idempotent;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.platform.problems.Refused;

/** Photos of trees. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
@Tag(name = "Photos")
class PhotoResource {

    private final Photos photos;
    private final CurrentUser user;
    private final Inputs inputs;

    PhotoResource(Photos photos, CurrentUser user, Inputs inputs) {
        this.photos = photos;
        this.user = user;
        this.inputs = inputs;
    }

    @GET
    @Path("trees/{id}/photos")
    @Operation(
            summary = "Photos of a tree, those taken last first",
            description = "The pictures are at /photos/{id} and /photos/{id}/thumbnail, as JPEG.")
    public Paged<Photo> list(
            @PathParam("id") long id,
            @QueryParam("page") @Nullable String page,
            @QueryParam("size") @Nullable String size) {
        return photos.list(user.actor(), id, Asked.page(page, size));
    }

    @POST
    @Idempotent
    @Path("trees/{id}/photos")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @Operation(
            summary = "Send a photo of a tree",
            description =
                    "JPEG or PNG by content, at most 12 MB and 60 megapixels; its name and media type"
                            + " are not looked at. Kept are its pixels alone, upright, the longest edge"
                            + " at most 2560 px. Without takenOn the camera's day counts, or today.")
    @APIResponseSchema(value = Photo.class, responseCode = "201", responseDescription = "Kept")
    public RestResponse<Photo> add(
            @PathParam("id") long id,
            @RestForm("photo") @Nullable FileUpload photo,
            @RestForm("takenOn") @Nullable String takenOn,
            @RestForm("view") @Nullable String view,
            @RestForm("caption") @Nullable String caption,
            @RestForm("woundId") @Nullable String woundId,
            @RestForm("stepId") @Nullable String stepId) {
        FileParts.requireAtMostOne("photo");
        var form = new MultivaluedHashMap<String, String>();
        form.putSingle("takenOn", takenOn);
        form.putSingle("view", view);
        form.putSingle("caption", caption);
        form.putSingle("woundId", woundId);
        form.putSingle("stepId", stepId);
        var said = inputs.read(form, NewPhoto.class);
        if (photo == null) {
            throw Refused.invalid("photo", "expected a file, found none");
        }
        try (var sent = Files.newInputStream(photo.uploadedFile())) {
            var kept = photos.add(user.actor(), id, said, sent);
            return Answers.created("photos/" + kept.id(), kept.version(), kept);
        } catch (IOException e) {
            throw new UncheckedIOException("what was sent cannot be read again", e);
        }
    }

    @GET
    @Path("photos/{id}")
    @Operation(summary = "What is said of a photo, with its version as ETag")
    public RestResponse<Photo> get(
            @PathParam("id") long id, @HeaderParam("If-None-Match") @Nullable String known) {
        var photo = photos.get(user.actor(), id);
        return Answers.versioned(known, photo.version(), photo);
    }

    @PUT
    @Path("photos/{id}")
    @Operation(summary = "Change what is said of a photo; without takenOn its day stays")
    public RestResponse<Photo> change(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable NewPhoto said) {
        var version = Versions.required(ifMatch);
        var changed = photos.change(user.actor(), id, version, inputs.check(said));
        return Answers.versioned(changed.version(), changed);
    }

    @DELETE
    @Path("photos/{id}")
    @Operation(
            summary = "Take a photo away",
            description =
                    "Its pictures are gone for good; who took it away and when stays written down.")
    public Photo remove(
            @PathParam("id") long id, @HeaderParam("If-Match") @Nullable String ifMatch) {
        return photos.remove(user.actor(), id, Versions.required(ifMatch));
    }
}
