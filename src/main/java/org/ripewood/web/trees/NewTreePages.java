package org.ripewood.web.trees;

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
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Species;
import org.ripewood.people.Courses;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.sites.SiteLine;
import org.ripewood.trees.NewTree;
import org.ripewood.trees.TreeSites;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;

/** Entering a tree. */
@Path("/trees")
@Authenticated
class NewTreePages {

    /** What the forms may choose from. */
    record Choices(
            List<Species> species,
            List<SiteLine> sites,
            Map<Long, String> keepers,
            boolean mayEnterSites) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance enter(Choices choices, FormState tree);
    }

    private final CurrentUser user;
    private final People people;
    private final Courses schoolCourses;
    private final Trees trees;
    private final TreeSites treeSites;
    private final CourseContent content;
    private final Inputs inputs;
    private final Today today;

    NewTreePages(
            CurrentUser user,
            People people,
            Courses schoolCourses,
            Trees trees,
            TreeSites treeSites,
            CourseContent content,
            Inputs inputs,
            Today today) {
        this.user = user;
        this.people = people;
        this.schoolCourses = schoolCourses;
        this.trees = trees;
        this.treeSites = treeSites;
        this.content = content;
        this.inputs = inputs;
        this.today = today;
    }

    @GET
    @Path("new")
    public Response blank() {
        return Answer.page(page(FormState.fresh("none")));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response enter(MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var tree = trees.enter(user.actor(), inputs.read(form, NewTree.class));
                    return "/trees/" + tree.id() + "/first-look";
                },
                problem -> page(FormState.refused("tree", form, problem)));
    }

    private TemplateInstance page(FormState typed) {
        var actor = user.actor();
        var species =
                content.inForce().species().values().stream()
                        .sorted(Comparator.comparing(Species::common))
                        .toList();
        var choices =
                new Choices(
                        species,
                        treeSites.list(actor).stream()
                                .filter(site -> site.place() != null)
                                .toList(),
                        keepers(actor),
                        actor.is(Role.INSTRUCTOR) || actor.is(Role.REGISTRAR));
        var freshTree =
                FormState.fresh("tree")
                        .with("cameOn", today.date())
                        .with("keeperId", actor.personId());
        return Templates.enter(choices, typed.orFresh("tree", freshTree));
    }

    /** The actor first, then the students of the courses in reach. */
    private Map<Long, String> keepers(Actor actor) {
        var keepers = new LinkedHashMap<Long, String>();
        keepers.put(actor.personId(), people.name(actor.personId()));
        if (actor.is(Role.INSTRUCTOR) || actor.is(Role.REGISTRAR)) {
            schoolCourses.list(actor).stream()
                    .flatMap(
                            course ->
                                    schoolCourses
                                            .members(actor, course.id(), Role.STUDENT)
                                            .stream())
                    .forEach(student -> keepers.putIfAbsent(student.id(), student.name()));
        }
        return keepers;
    }
}
