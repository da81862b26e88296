package org.ripewood.web.steps;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import org.ripewood.aftercare.Aftercare;
import org.ripewood.aftercare.NewWord;
import org.ripewood.aftercare.Saying;
import org.ripewood.boards.ChecklistMaker;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.trees.TreeDays;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.OnceForms;

/** Care of a tree after work: all tasks, and what is said of them. */
@Path("/trees/{id: \\d{1,18}}/aftercare")
@Authenticated
class CarePages {

    private static final String TASK = "{task: [0-9a-z_-]{1,80}}/";

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance aftercare(CarePageModel sheet);
    }

    private final CurrentUser user;
    private final CarePageAssembler desk;
    private final Aftercare aftercare;
    private final ChecklistMaker checklistMaker;
    private final Inputs inputs;
    private final OnceForms onceForms;
    private final TreeDays treeDays;

    CarePages(
            CurrentUser user,
            CarePageAssembler desk,
            Aftercare aftercare,
            ChecklistMaker checklistMaker,
            Inputs inputs,
            OnceForms onceForms,
            TreeDays treeDays) {
        this.user = user;
        this.desk = desk;
        this.aftercare = aftercare;
        this.checklistMaker = checklistMaker;
        this.inputs = inputs;
        this.onceForms = onceForms;
        this.treeDays = treeDays;
    }

    @GET
    public Response aftercare(long id) {
        return Answer.page(page(id, FormState.fresh("none")));
    }

    @POST
    @Path(TASK + "done")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response done(long id, String task, MultivaluedMap<String, String> form) {
        return say(id, task, Saying.DONE, form);
    }

    @POST
    @Path(TASK + "not-needed")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response notNeeded(long id, String task, MultivaluedMap<String, String> form) {
        return say(id, task, Saying.NOT_NEEDED, form);
    }

    @POST
    @Path(TASK + "taken-back")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response takenBack(long id, String task, MultivaluedMap<String, String> form) {
        return say(id, task, Saying.TAKEN_BACK, form);
    }

    private Response say(long id, String task, Saying what, MultivaluedMap<String, String> form) {
        return onceForms.to(
                form,
                () -> {
                    aftercare.say(user.actor(), id, task, what, inputs.read(form, NewWord.class));
                    return "/trees/" + id + "/checklist#aftercare";
                },
                problem -> page(id, FormState.refused(CarePageModel.formOf(task), form, problem)));
    }

    private TemplateInstance page(long id, FormState typed) {
        var actor = user.actor();
        var list = checklistMaker.make(actor, id, treeDays.at(id)).care();
        return Templates.aftercare(desk.lay(actor, id, list, typed));
    }
}
