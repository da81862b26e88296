package org.ripewood.web.trees;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.util.Map;
import java.util.stream.Collectors;
import org.ripewood.course.CourseContent;
import org.ripewood.people.People;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.SpeciesNames;

/** Trees within reach that left the school. */
@Path("/trees/left")
@Authenticated
class LeftTreesPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance left(
                Paged<Tree> trees, Map<Long, String> keepers, Map<String, String> species);
    }

    private static final int ON_A_PAGE = 50;

    private final CurrentUser user;
    private final Trees trees;
    private final People people;
    private final CourseContent content;

    LeftTreesPages(CurrentUser user, Trees trees, People people, CourseContent content) {
        this.user = user;
        this.people = people;
        this.trees = trees;
        this.content = content;
    }

    @GET
    public Response left(@QueryParam("page") @DefaultValue("0") int page) {
        var left = trees.left(user.actor(), null, null, new PageRequest(page, ON_A_PAGE));
        var keepers = left.items().stream().map(Tree::keeperId).collect(Collectors.toSet());
        return Answer.page(
                Templates.left(left, people.names(keepers), SpeciesNames.of(content.inForce())));
    }
}
