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
import java.util.Objects;
import java.util.stream.Collectors;
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
    private static final String SINCE = "since";

    private final CurrentUser user;
    private final Trees trees;
    private final Today today;
    private final Clashes clashes;
    private final Inputs inputs;

    HandOverPages(CurrentUser user, Trees trees, Today today, Clashes clashes, Inputs inputs) {
        this.user = user;
        this.trees = trees;
        this.today = today;
        this.clashes = clashes;
        this.inputs = inputs;
    }

    @GET
    public Response page(long id) {
        return Answer.page(page(id, Typed.fresh(FORM).with(SINCE, today.date())));
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
        var receivers = trees.receivers(actor, id);
        var keeper = trees.names(actor, id, List.of(tree.keeperId())).get(tree.keeperId());
        var name = Objects.requireNonNull(keeper);
        var about =
                new Clashes.About(
                        "tree",
                        id,
                        labels(tree, name, receivers),
                        ids -> trees.names(actor, id, ids));
        return Templates.handOver(tree, name, receivers, clashes.mend(typed, now(tree), about));
    }

    /** What goes along with the tree, since that is what may have been changed meanwhile. */
    private static Typed now(Tree tree) {
        return Typed.fresh(FORM)
                .with("version", tree.version())
                .with("keeperId", tree.keeperId())
                .with("label", tree.label())
                .withIfKnown("origin", tree.origin())
                .withIfKnown("note", tree.note());
    }

    private static List<Label> labels(Tree tree, String keeper, List<Person> receivers) {
        var names =
                receivers.stream()
                        .collect(Collectors.toMap(to -> String.valueOf(to.id()), Person::name));
        names.put(String.valueOf(tree.keeperId()), keeper);
        return List.of(
                new Label("keeperId", "Keeper", id -> names.getOrDefault(id, id)),
                Label.of(SINCE, "First day with the new keeper"),
                Label.of("label", "What it is called"),
                Label.of("origin", "Where it came from"),
                Label.of("note", "Note"));
    }
}
