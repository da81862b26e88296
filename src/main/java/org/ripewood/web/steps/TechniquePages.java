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
import java.util.List;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Lesson;
import org.ripewood.course.Technique;
import org.ripewood.platform.Actor;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.platform.problems.Refused;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.NewAssignment;
import org.ripewood.standing.ReasonView;
import org.ripewood.standing.Standings;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeDays;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.Said;

/** One technique for one tree: how it stands and why, and how it is assigned. */
@Path("/trees/{id: \\d{1,18}}")
@Authenticated
class TechniquePages {

    /**
     * @param teaches whether the reader may assign
     * @param never reasons against it that nobody may waive
     */
    record TechniqueSheet(
            Tree tree,
            Technique technique,
            TechniqueStanding standing,
            List<Lesson> lessons,
            boolean teaches,
            List<ReasonView> never,
            AskPageModel asked,
            FormState assignment,
            FormState foundDone) {

        public boolean waives() {
            return !standing.against().isEmpty();
        }
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance technique(TechniqueSheet sheet);
    }

    private final CurrentUser user;
    private final Trees trees;
    private final AskPageAssembler askDesk;
    private final Standings standings;
    private final Assigner assigner;
    private final CourseContent content;
    private final Inputs inputs;
    private final TreeDays treeDays;
    private final Said said;

    TechniquePages(
            CurrentUser user,
            Trees trees,
            AskPageAssembler askDesk,
            Standings standings,
            Assigner assigner,
            CourseContent content,
            Inputs inputs,
            TreeDays treeDays,
            Said said) {
        this.user = user;
        this.trees = trees;
        this.askDesk = askDesk;
        this.standings = standings;
        this.assigner = assigner;
        this.content = content;
        this.inputs = inputs;
        this.treeDays = treeDays;
        this.said = said;
    }

    @GET
    @Path("techniques/{code}")
    public Response technique(long id, String code) {
        return Answer.page(page(user.actor(), id, code, FormState.fresh("none")));
    }

    @POST
    @Path("steps")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed(Role.INSTRUCTOR_NAME)
    public Response assign(long id, MultivaluedMap<String, String> form) {
        var actor = user.actor();
        return Answer.to(
                () -> {
                    var assignment = inputs.read(form, NewAssignment.class);
                    var step = assigner.assign(actor, id, assignment);
                    said.that(
                            "Assigned “%s”; it stands on the student's home page."
                                    .formatted(content.inForce().titleOf(step.technique())));
                    return "/steps/" + step.id();
                },
                problem ->
                        page(
                                actor,
                                id,
                                named(form),
                                FormState.refused("assignment", form, problem)));
    }

    @POST
    @Path("found-done")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed(Role.INSTRUCTOR_NAME)
    public Response foundDone(long id, MultivaluedMap<String, String> form) {
        var actor = user.actor();
        return Answer.to(
                () -> {
                    var found = inputs.read(form, FoundDone.class);
                    said.ofTree(
                            id,
                            () -> {
                                assigner.noteFoundDone(
                                        actor, id, found.technique(), found.doneOn(), found.note());
                                return "Noted “%s” as done."
                                        .formatted(content.inForce().titleOf(found.technique()));
                            });
                    return "/trees/" + id + "/techniques/" + found.technique();
                },
                problem -> page(actor, id, named(form), FormState.refused("found", form, problem)));
    }

    /** The technique meant; empty when the form names none. */
    private static String named(MultivaluedMap<String, String> form) {
        var code = form.getFirst("technique");
        return code == null ? "" : code;
    }

    private TemplateInstance page(Actor actor, long id, String code, FormState typed) {
        var inForce = content.inForce();
        var technique = inForce.technique(code);
        var look = standings.look(actor, id, treeDays.at(id));
        said.now(look.day());
        var standing =
                look.standing().techniques().stream()
                        .filter(found -> found.technique().equals(code))
                        .findFirst()
                        .orElseThrow(() -> Refused.notFound("technique for this tree", code));
        return Templates.technique(
                new TechniqueSheet(
                        trees.get(actor, id),
                        technique,
                        standing,
                        technique.lessons().stream().map(inForce::lesson).toList(),
                        actor.is(Role.INSTRUCTOR),
                        standing.against().stream().filter(reason -> !reason.waivable()).toList(),
                        askDesk.lay(actor, id, FormState.fresh("none")).at(code),
                        typed.orFresh("assignment", FormState.fresh("assignment")),
                        typed.orFresh(
                                "found",
                                FormState.fresh("found").with("doneOn", treeDays.at(id)))));
    }
}
