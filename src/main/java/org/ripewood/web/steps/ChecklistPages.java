package org.ripewood.web.steps;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.jspecify.annotations.Nullable;
import org.ripewood.boards.Checklist;
import org.ripewood.boards.ChecklistMaker;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.standing.AliveDoubt;
import org.ripewood.standing.Standings;
import org.ripewood.trees.Tree;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;

/**
 * A tree's checklist: care, what to do now, what can be asked for, what to measure, what waits and
 * why, what is done.
 */
@Path("/trees/{id: \\d{1,18}}/checklist")
@Authenticated
class ChecklistPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance checklist(
                Tree tree,
                @Nullable String alive,
                Checklist list,
                CarePageModel care,
                boolean teaches,
                boolean asks,
                FormState fresh);
    }

    private final CurrentUser user;
    private final Standings standings;
    private final ChecklistMaker checklistMaker;
    private final CarePageAssembler care;

    ChecklistPages(
            CurrentUser user,
            Standings standings,
            ChecklistMaker checklistMaker,
            CarePageAssembler care) {
        this.user = user;
        this.standings = standings;
        this.checklistMaker = checklistMaker;
        this.care = care;
    }

    @GET
    public Response checklist(long id) {
        var actor = user.actor();
        var look = standings.lookToday(actor, id);
        var list = checklistMaker.of(look);
        var teaches = actor.is(Role.INSTRUCTOR);
        var keeps = look.tree().keeperId() == actor.personId();
        return Answer.page(
                Templates.checklist(
                        look.tree(),
                        AliveDoubt.of(look.day()).orElse(null),
                        list,
                        care.lay(actor, look, list.care(), FormState.fresh("none")),
                        teaches,
                        keeps && !teaches,
                        FormState.fresh("report").with("doneOn", look.on())));
    }
}
