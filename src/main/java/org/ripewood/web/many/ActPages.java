package org.ripewood.web.many;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.ripewood.core.progress.Fact;
import org.ripewood.course.CourseContent;
import org.ripewood.many.ManyObservations;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.standing.Assigner;
import org.ripewood.steps.ManySignOffs;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.OnceForms;
import org.ripewood.web.kit.Said;

/**
 * Something done to many trees of a course at once. What is chosen stands in the address, so that
 * other pages link here: {@code act=ASSIGN|RECORD|SIGN_OFF|CARDS}, {@code tree=} for each tree
 * (none for all), {@code technique=} with ASSIGN, {@code fact=} with RECORD.
 */
@Path("/courses/{id: \\d{1,18}}/trees")
@RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
class ActPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance act(ActPageModel sheet);
    }

    private static final int ASKED = 409;

    /** A fault at a place of the list of trees, such as {@code trees[3].waivers.season}. */
    private static final Pattern OF_TREE = Pattern.compile("trees\\[(\\d{1,4})]\\.(.+)");

    /** Trees the form was shown with, ticked or not. */
    private static final String SHOWN = "shown";

    private final CurrentUser user;
    private final ActPageAssembler desk;
    private final Assigner assigner;
    private final ManyObservations observations;
    private final ManySignOffs signOffs;
    private final CourseContent content;
    private final Inputs inputs;
    private final OnceForms onceForms;
    private final Said said;

    ActPages(
            CurrentUser user,
            ActPageAssembler desk,
            Assigner assigner,
            ManyObservations observations,
            ManySignOffs signOffs,
            CourseContent content,
            Inputs inputs,
            OnceForms onceForms,
            Said said) {
        this.user = user;
        this.desk = desk;
        this.assigner = assigner;
        this.observations = observations;
        this.signOffs = signOffs;
        this.content = content;
        this.inputs = inputs;
        this.onceForms = onceForms;
        this.said = said;
    }

    @GET
    @Path("act")
    public Response act(long id, @Context UriInfo uri) {
        var asked = uri.getQueryParameters();
        var fresh = FormState.fresh("none");
        return Answer.orAgain(
                () ->
                        page(
                                id,
                                inputs.read(asked, ActAsked.class),
                                FormState.of("choice", asked),
                                fresh,
                                List.of()),
                problem ->
                        page(
                                id,
                                new ActAsked(null, null, null, null),
                                FormState.refused("choice", asked, problem),
                                fresh,
                                List.of()));
    }

    @POST
    @Path("steps")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed(Role.INSTRUCTOR_NAME)
    public Response assign(long id, MultivaluedMap<String, String> form) {
        return onceForms.to(
                form,
                () -> {
                    var wanted = inputs.check(inputs.read(form, AssignForm.class).wanted());
                    var steps = assigner.assignAll(user.actor(), id, wanted);
                    said.that(
                            "Assigned “%s” to %s."
                                    .formatted(
                                            content.inForce().titleOf(wanted.technique()),
                                            counted(steps.size(), "tree")));
                    return "/courses/" + id;
                },
                problem -> again(id, Act.ASSIGN, "assign", form, problem, List.of()));
    }

    @POST
    @Path("facts")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response record(long id, MultivaluedMap<String, String> form) {
        var asked = new ArrayList<ManyObservations.AskedOf>();
        return onceForms.to(
                form,
                () -> {
                    var seen = inputs.check(inputs.read(form, FactForm.class).seen());
                    var outcome = observations.observe(user.actor(), id, seen);
                    if (!outcome.asked().isEmpty()) {
                        asked.addAll(outcome.asked());
                        throw askedBack(outcome.asked());
                    }
                    said.that(
                            "Recorded “%s: %s” for %s."
                                    .formatted(
                                            title(seen.fact()),
                                            seen.value(),
                                            counted(seen.trees().size(), "tree")));
                    return "/courses/" + id;
                },
                problem -> again(id, Act.RECORD, "record", form, problem, asked));
    }

    @POST
    @Path("sign-offs")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed(Role.INSTRUCTOR_NAME)
    public Response signOff(long id, MultivaluedMap<String, String> form) {
        return onceForms.to(
                form,
                () -> {
                    var wanted = inputs.check(inputs.read(form, SignOffForm.class).wanted());
                    var steps = signOffs.signOffAll(user.actor(), id, wanted);
                    said.that("Signed off %s.".formatted(counted(steps.size(), "step")));
                    return "/courses/" + id;
                },
                problem -> again(id, Act.SIGN_OFF, "sign", form, problem, List.of()));
    }

    private String title(String fact) {
        return Fact.find(fact).map(one -> content.inForce().text(one).title()).orElse(fact);
    }

    private static String counted(int number, String what) {
        return number == 1 ? "1 " + what : number + " " + what + "s";
    }

    private static Refused askedBack(List<ManyObservations.AskedOf> asked) {
        return new Refused(
                new Problem(
                        ASKED,
                        "odd-values",
                        "Look once more",
                        "This looks odd. Nothing is saved yet: correct it, untick the tree, or tick"
                                + " that it is so.",
                        null,
                        asked.stream()
                                .map(
                                        one ->
                                                new Fault(
                                                        "tree." + one.treeId(),
                                                        one.tree()
                                                                + ": "
                                                                + one.question().question()))
                                .toList()));
    }

    /** The page with the form as it was sent; faults of a tree are told at the tree. */
    private TemplateInstance again(
            long id,
            Act act,
            String name,
            MultivaluedMap<String, String> form,
            Problem problem,
            List<ManyObservations.AskedOf> questions) {
        var trees = ids(form, SHOWN);
        var asked =
                new ActAsked(
                        act,
                        trees.isEmpty() ? null : trees,
                        form.getFirst("technique"),
                        form.getFirst("fact"));
        var told = atTrees(problem, ids(form, "tree"));
        return page(
                id,
                asked,
                FormState.of("choice", form),
                FormState.refused(name, form, told),
                questions);
    }

    private static List<Long> ids(MultivaluedMap<String, String> form, String field) {
        return form.getOrDefault(field, List.of()).stream()
                .filter(text -> text.matches("\\d{1,18}"))
                .map(Long::valueOf)
                .toList();
    }

    private static Problem atTrees(Problem problem, List<Long> trees) {
        return new Problem(
                problem.status(),
                problem.kind(),
                problem.title(),
                problem.detail(),
                problem.maybe(),
                problem.faults().stream().map(fault -> atTree(fault, trees)).toList());
    }

    private static Fault atTree(Fault fault, List<Long> trees) {
        var place = OF_TREE.matcher(fault.field());
        if (!place.matches() || Integer.parseInt(place.group(1)) >= trees.size()) {
            return fault;
        }
        var tree = trees.get(Integer.parseInt(place.group(1)));
        var rest = place.group(2);
        return new Fault(
                rest.startsWith("waivers.")
                        ? "waivers." + tree + rest.substring("waivers".length())
                        : "tree." + tree,
                fault.message());
    }

    private TemplateInstance page(
            long id,
            ActAsked asked,
            FormState choice,
            FormState typed,
            List<ManyObservations.AskedOf> questions) {
        return Templates.act(desk.lay(user.actor(), id, asked, choice, typed, questions));
    }
}
