package org.ripewood.web.photos;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.jspecify.annotations.Nullable;
import org.ripewood.photos.NewPhoto;
import org.ripewood.photos.PhotoSize;
import org.ripewood.photos.Photos;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.Versioned;

/** One photo: its pictures, what is said of it, and the forms to change that or take it away. */
@Path("/photos/{id: \\d{1,18}}")
@Authenticated
class PhotoFilePages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance about(PhotoPageModel sheet);
    }

    private static final String JPEG = "image/jpeg";

    /**
     * Pictures never change, but one may be taken away, and its tree handed over: only in this
     * browser, which asks each time whether it may still show it (RFC 9111, 5.2.2.4).
     */
    private static final String KEEP = "private, no-cache";

    private final CurrentUser user;
    private final Photos photos;
    private final PhotoPageAssembler desk;
    private final Inputs inputs;

    PhotoFilePages(CurrentUser user, Photos photos, PhotoPageAssembler desk, Inputs inputs) {
        this.user = user;
        this.photos = photos;
        this.desk = desk;
        this.inputs = inputs;
    }

    @GET
    public Response whole(long id, @HeaderParam("If-None-Match") @Nullable String known) {
        return picture(id, PhotoSize.WHOLE, known);
    }

    @GET
    @Path("thumbnail")
    public Response thumbnail(long id, @HeaderParam("If-None-Match") @Nullable String known) {
        return picture(id, PhotoSize.THUMBNAIL, known);
    }

    @GET
    @Path("about")
    public Response about(long id) {
        return Answer.page(page(id, FormState.fresh("none")));
    }

    @POST
    @Path("about")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response change(long id, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var version = inputs.read(form, Versioned.class).version();
                    photos.change(user.actor(), id, version, inputs.read(form, NewPhoto.class));
                    return "/photos/" + id + "/about";
                },
                problem -> page(id, FormState.refused("change", form, problem)));
    }

    @POST
    @Path("remove")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response remove(long id, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var version = inputs.read(form, Versioned.class).version();
                    var mark = photos.remove(user.actor(), id, version);
                    return "/trees/" + mark.treeId() + "/photos";
                },
                problem -> page(id, FormState.refused("remove", form, problem)));
    }

    private Response picture(long id, PhotoSize size, @Nullable String known) {
        var file = photos.open(user.actor(), id, size);
        var tag = '"' + file.tag() + '"';
        if (known == null || !known.contains(tag)) {
            return Response.ok(file.stream(), JPEG)
                    .header("ETag", tag)
                    .header("Cache-Control", KEEP)
                    .build();
        }
        try {
            file.stream().close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Response.notModified().header("ETag", tag).header("Cache-Control", KEEP).build();
    }

    private TemplateInstance page(long id, FormState typed) {
        return Templates.about(desk.layOne(user.actor(), id, typed));
    }
}
