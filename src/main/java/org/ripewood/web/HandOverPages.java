package org.ripewood.web;

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
import java.util.List;
import org.ripewood.people.People;
import org.ripewood.people.Person;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Inputs;
import org.ripewood.platform.Today;
import org.ripewood.trees.HandOver;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;

/** A tree goes to another keeper. */
@Path("/trees/{id: \\d{1,18}}/hand-over")
@Authenticated
class HandOverPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance handOver(
                Tree tree, String keeper, List<Person> receivers, Typed typed);
    }

    private static final String FORM = "hand-over";

    private final CurrentUser user;
    private final Trees trees;
    private final People people;
    private final Today today;
    private final Inputs inputs;

    HandOverPages(CurrentUser user, Trees trees, People people, Today today, Inputs inputs) {
        this.user = user;
        this.trees = trees;
        this.people = people;
        this.today = today;
        this.inputs = inputs;
    }

    @GET
    public Response page(long id) {
        return Answer.page(page(id, Typed.fresh(FORM).with("since", today.date())));
    }

    /** Who hands a tree over may not see it afterwards, so the way goes home. */
    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response handOver(long id, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var version = inputs.read(form, Versioned.class).version();
                    trees.handOver(user.actor(), id, version, inputs.read(form, HandOver.class));
                    return "/home";
                },
                problem -> page(id, Typed.refused(FORM, form, problem)));
    }

    private TemplateInstance page(long id, Typed typed) {
        var actor = user.actor();
        var tree = trees.get(actor, id);
        return Templates.handOver(
                tree, people.get(tree.keeperId()).name(), trees.receivers(actor, id), typed);
    }
}
