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
import java.util.HashMap;
import java.util.List;
import java.util.Objects;
import org.ripewood.people.Person;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.Sessions;
import org.ripewood.trees.HandOver;
import org.ripewood.trees.HandOvers;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeDays;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.Label;
import org.ripewood.web.kit.Versioned;

/** A tree goes to another keeper. */
@Path("/trees/{id: \\d{1,18}}/hand-over")
@Authenticated
class HandOverPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance handOver(
                Tree tree,
                String keeper,
                List<Person> receivers,
                List<Session> ahead,
                FormState typed);
    }

    private static final String FORM = "hand-over";
    private static final String SINCE = "since";

    private final CurrentUser user;
    private final Trees trees;
    private final HandOvers handOvers;
    private final Sessions sessions;
    private final TreeClashes clashes;
    private final Inputs inputs;
    private final TreeDays treeDays;

    HandOverPages(
            CurrentUser user,
            Trees trees,
            HandOvers handOvers,
            Sessions sessions,
            TreeClashes clashes,
            Inputs inputs,
            TreeDays treeDays) {
        this.user = user;
        this.sessions = sessions;
        this.trees = trees;
        this.handOvers = handOvers;
        this.clashes = clashes;
        this.inputs = inputs;
        this.treeDays = treeDays;
    }

    @GET
    public Response page(long id) {
        return Answer.page(page(id, FormState.fresh(FORM).with(SINCE, treeDays.at(id))));
    }

    /** Who hands a tree over may not see it afterwards, so the way goes home. */
    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response handOver(long id, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var version = inputs.read(form, Versioned.class).version();
                    handOvers.handOver(
                            user.actor(), id, version, inputs.read(form, HandOver.class));
                    return "/home";
                },
                problem -> page(id, FormState.refused(FORM, form, problem)));
    }

    private TemplateInstance page(long id, FormState typed) {
        var actor = user.actor();
        var tree = trees.get(actor, id);
        var receivers = handOvers.receivers(actor, id);
        var keeper = trees.names(actor, id, List.of(tree.keeperId())).get(tree.keeperId());
        var name = Objects.requireNonNull(keeper);
        return Templates.handOver(
                tree,
                name,
                receivers,
                sessions.aheadOf(actor, id),
                clashes.mend(actor, tree, typed, labels(tree, name, receivers)));
    }

    private static List<Label> labels(Tree tree, String keeper, List<Person> receivers) {
        var names = new HashMap<String, String>();
        receivers.forEach(to -> names.put(String.valueOf(to.id()), to.name()));
        names.put(String.valueOf(tree.keeperId()), keeper);
        return List.of(
                new Label("keeperId", "Keeper", id -> names.getOrDefault(id, id)),
                Label.of(SINCE, "First day with the new keeper"));
    }
}
