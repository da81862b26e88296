package org.ripewood.web.judgements;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import org.ripewood.assess.Judged;
import org.ripewood.assess.Judgements;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;

/** What a judge does with a judgement of their own: throw a draft away, sign it, open it. */
@Path("/judgements/{id: \\d{1,18}}")
@RolesAllowed(Role.INSTRUCTOR_NAME)
@Consumes(MediaType.APPLICATION_FORM_URLENCODED)
class JudgementPages {

    /** The version of the judgement that the page showed. */
    record Seen(@NotNull Long version) {}

    /** What is done to a judgement of that version. */
    private interface Deed {
        void to(long version);
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance judgements(JudgementPageModel sheet);

        static native TemplateInstance judge(JudgePageModel sheet);
    }

    private final CurrentUser user;
    private final Judgements judgements;
    private final JudgementPageAssembler desk;
    private final Inputs inputs;

    JudgementPages(
            CurrentUser user, Judgements judgements, JudgementPageAssembler desk, Inputs inputs) {
        this.user = user;
        this.judgements = judgements;
        this.desk = desk;
        this.inputs = inputs;
    }

    @POST
    @Path("discard")
    public Response discard(long id, MultivaluedMap<String, String> form) {
        return act(id, form, version -> judgements.discard(user.actor(), id, version));
    }

    @POST
    @Path("sign")
    public Response sign(long id, MultivaluedMap<String, String> form) {
        return act(id, form, version -> judgements.sign(user.actor(), id, version));
    }

    @POST
    @Path("open")
    public Response open(long id, MultivaluedMap<String, String> form) {
        return act(id, form, version -> judgements.open(user.actor(), id, version));
    }

    private Response act(long id, MultivaluedMap<String, String> form, Deed deed) {
        Judged of = judgements.get(user.actor(), id).of();
        return Answer.to(
                () -> {
                    deed.to(inputs.read(form, Seen.class).version());
                    return JudgementPageAssembler.address(of);
                },
                problem ->
                        Templates.judgements(
                                desk.lay(of, 0, FormState.refused("own", form, problem))));
    }
}
