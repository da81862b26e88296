package org.ripewood.web.steps;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import org.ripewood.asks.Asks;
import org.ripewood.asks.NewAnswer;
import org.ripewood.asks.NewAsk;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.platform.problems.Problem;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.OnceForms;
import org.ripewood.web.kit.Said;

/** What was asked at a tree's techniques, and the answers. */
@Path("/trees/{id: \\d{1,18}}/asks")
@Authenticated
class AskPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance asks(AskPageModel sheet);
    }

    private final CurrentUser user;
    private final AskPageAssembler desk;
    private final Asks asks;
    private final Inputs inputs;
    private final OnceForms onceForms;
    private final Said said;

    AskPages(
            CurrentUser user,
            AskPageAssembler desk,
            Asks asks,
            Inputs inputs,
            OnceForms onceForms,
            Said said) {
        this.user = user;
        this.desk = desk;
        this.asks = asks;
        this.inputs = inputs;
        this.onceForms = onceForms;
        this.said = said;
    }

    @GET
    public Response asks(long id) {
        return Answer.page(page(id, FormState.fresh("none")));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response ask(long id, MultivaluedMap<String, String> form) {
        return onceForms.to(
                form,
                () -> {
                    var asked = asks.ask(user.actor(), id, inputs.read(form, NewAsk.class));
                    said.that(
                            "Your instructor reads what you asked about “%s”."
                                    .formatted(asked.title()));
                    return "/trees/" + id + "/asks";
                },
                problem -> refused(id, "ask", form, problem));
    }

    @POST
    @Path("{askId: \\d{1,18}}/answer")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed(Role.INSTRUCTOR_NAME)
    public Response answer(long id, long askId, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    asks.answer(user.actor(), id, askId, inputs.read(form, NewAnswer.class));
                    said.that("Your answer is kept, and stands on the student's home page.");
                    return "/trees/" + id + "/asks";
                },
                problem -> refused(id, "answer-" + askId, form, problem));
    }

    @POST
    @Path("{askId: \\d{1,18}}/take-back")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response takeBack(long id, long askId, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    asks.takeBack(user.actor(), id, askId);
                    return "/trees/" + id + "/asks";
                },
                problem -> refused(id, "back", form, problem));
    }

    private TemplateInstance refused(
            long id, String name, MultivaluedMap<String, String> form, Problem problem) {
        return page(id, FormState.refused(name, form, problem));
    }

    private TemplateInstance page(long id, FormState typed) {
        return Templates.asks(desk.lay(user.actor(), id, typed));
    }
}
