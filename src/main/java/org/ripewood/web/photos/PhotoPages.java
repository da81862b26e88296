package org.ripewood.web.photos;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jspecify.annotations.Nullable;
import org.ripewood.photos.NewPhoto;
import org.ripewood.photos.Viewpoint;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;

/** A tree's photos: two side by side, all of them, and the form for more. */
@Path("/trees/{id: \\d{1,18}}/photos")
@Authenticated
class PhotoPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance photos(PhotosPageModel sheet);
    }

    private static final String FORM = "upload";

    private final CurrentUser user;
    private final PhotoPageAssembler desk;
    private final PhotosSent sent;
    private final Inputs inputs;

    PhotoPages(CurrentUser user, PhotoPageAssembler desk, PhotosSent sent, Inputs inputs) {
        this.user = user;
        this.desk = desk;
        this.sent = sent;
        this.inputs = inputs;
    }

    /** Wound and step are those that a photo yet to be sent is about. */
    @GET
    public Response photos(
            long id,
            @QueryParam("before") @Nullable Long before,
            @QueryParam("after") @Nullable Long after,
            @QueryParam("page") @DefaultValue("0") int page,
            @QueryParam("wound") @Nullable Long wound,
            @QueryParam("step") @Nullable Long step) {
        var detail = wound != null || step != null;
        var fresh =
                FormState.fresh(FORM)
                        .with("view", detail ? Viewpoint.DETAIL : Viewpoint.FRONT)
                        .withIfKnown("woundId", wound)
                        .withIfKnown("stepId", step);
        return Answer.page(
                Templates.photos(desk.lay(user.actor(), id, before, after, page, fresh)));
    }

    @POST
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response send(
            long id,
            @RestForm("photo") @Nullable List<FileUpload> photos,
            @RestForm("takenOn") @Nullable String takenOn,
            @RestForm("view") @Nullable String view,
            @RestForm("caption") @Nullable String caption,
            @RestForm("woundId") @Nullable String woundId,
            @RestForm("stepId") @Nullable String stepId) {
        var form = new MultivaluedHashMap<String, String>();
        keep(form, "takenOn", takenOn);
        keep(form, "view", view);
        keep(form, "caption", caption);
        keep(form, "woundId", woundId);
        keep(form, "stepId", stepId);
        return Answer.to(
                () -> {
                    var said = inputs.read(form, NewPhoto.class);
                    sent.keep(user.actor(), id, said, photos == null ? List.of() : photos);
                    return "/trees/" + id + "/photos#all";
                },
                problem ->
                        Templates.photos(
                                desk.lay(
                                        user.actor(),
                                        id,
                                        null,
                                        null,
                                        0,
                                        FormState.refused(FORM, form, problem))));
    }

    private static void keep(
            MultivaluedHashMap<String, String> form, String field, @Nullable String text) {
        if (text != null) {
            form.putSingle(field, text);
        }
    }
}
