package org.ripewood.print;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.CourseContent;
import org.ripewood.people.Course;
import org.ripewood.people.Courses;
import org.ripewood.people.Person;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.guards.RateLimited;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;

/**
 * The cards of a course's trees, several on a sheet, to be cut apart: of all, or of those named by
 * {@code tree}.
 */
@Path("/courses/{id: \\d{1,18}}")
@RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
class CourseCardPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance cards(Course course, List<TreeCard> cards, String chosen);
    }

    private final CurrentUser user;
    private final Courses schoolCourses;
    private final Trees trees;
    private final CourseContent content;
    private final UriInfo uris;

    CourseCardPages(
            CurrentUser user,
            Courses schoolCourses,
            Trees trees,
            CourseContent content,
            UriInfo uris) {
        this.user = user;
        this.schoolCourses = schoolCourses;
        this.trees = trees;
        this.content = content;
        this.uris = uris;
    }

    @GET
    @Path("cards")
    @Produces(MediaType.TEXT_HTML)
    public String cards(long id, @QueryParam("tree") @Nullable List<Long> tree) {
        var actor = user.actor();
        var course = schoolCourses.get(actor, id);
        schoolCourses.requireRuns(actor, id, "the cards of its trees");
        var students =
                schoolCourses.members(actor, id, Role.STUDENT).stream().map(Person::id).toList();
        var inForce = content.inForce();
        var chosen = tree == null ? List.<Long>of() : tree;
        var cards =
                trees.ofKeepers(actor, students).stream()
                        .filter(one -> chosen.isEmpty() || chosen.contains(one.id()))
                        .sorted(Comparator.comparing(Tree::label).thenComparing(Tree::id))
                        .map(one -> TreeCard.of(one, inForce, uris.getBaseUri()))
                        .toList();
        var query = chosen.stream().map(one -> "tree=" + one + "&").collect(Collectors.joining());
        return Templates.cards(course, cards, query).render();
    }

    @GET
    @Path("cards.pdf")
    @RateLimited
    @Produces(PdfAnswer.TYPE)
    public Response cardsOnPaper(
            long id,
            @QueryParam("tree") @Nullable List<Long> tree,
            @QueryParam("size") @Nullable String size) {
        return PdfAnswer.of(cards(id, tree), size);
    }
}
