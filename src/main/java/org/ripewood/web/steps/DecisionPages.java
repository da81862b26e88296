package org.ripewood.web.steps;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.ripewood.people.People;
import org.ripewood.platform.CurrentUser;
import org.ripewood.standing.Decision;
import org.ripewood.standing.Decisions;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.Answer;

/** A decision as it was, by the criteria and the evidence of that day. */
@Path("/decisions/{id: \\d{1,18}}")
@Authenticated
class DecisionPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance decision(Decision decision, Tree tree, String by);
    }

    private final CurrentUser user;
    private final People people;
    private final Trees trees;
    private final Decisions decisions;

    DecisionPages(CurrentUser user, People people, Trees trees, Decisions decisions) {
        this.user = user;
        this.people = people;
        this.trees = trees;
        this.decisions = decisions;
    }

    @GET
    public Response decision(long id) {
        var decision = decisions.get(user.actor(), id);
        return Answer.page(
                Templates.decision(
                        decision,
                        trees.get(user.actor(), decision.treeId()),
                        people.name(decision.byId())));
    }
}
