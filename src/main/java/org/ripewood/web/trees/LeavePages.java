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
import java.util.List;
import java.util.stream.Stream;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.Sessions;
import org.ripewood.trees.Departure;
import org.ripewood.trees.Departures;
import org.ripewood.trees.NewDeparture;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeDays;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.Label;
import org.ripewood.web.kit.Versioned;

/** A tree leaves the school. */
@Path("/trees/{id: \\d{1,18}}/leave")
@Authenticated
class LeavePages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance leave(
                Tree tree, Departure.How[] ways, List<Session> ahead, FormState typed);
    }

    private static final String FORM = "leave";
    private static final String LEFT_ON = "leftOn";

    private final CurrentUser user;
    private final Trees trees;
    private final Departures departures;
    private final Sessions sessions;
    private final TreeClashes clashes;
    private final Inputs inputs;
    private final TreeDays treeDays;

    LeavePages(
            CurrentUser user,
            Trees trees,
            Departures departures,
            Sessions sessions,
            TreeClashes clashes,
            Inputs inputs,
            TreeDays treeDays) {
        this.user = user;
        this.trees = trees;
        this.departures = departures;
        this.sessions = sessions;
        this.clashes = clashes;
        this.inputs = inputs;
        this.treeDays = treeDays;
    }

    @GET
    public Response page(long id) {
        return Answer.page(page(id, FormState.fresh(FORM).with(LEFT_ON, treeDays.at(id))));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response leave(long id, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var version = inputs.read(form, Versioned.class).version();
                    departures.leave(
                            user.actor(), id, version, inputs.read(form, NewDeparture.class));
                    return "/trees/" + id;
                },
                problem -> page(id, FormState.refused(FORM, form, problem)));
    }

    private TemplateInstance page(long id, FormState typed) {
        var actor = user.actor();
        var tree = trees.get(actor, id);
        var labels =
                List.of(
                        Label.of(LEFT_ON, "Last day at the school"),
                        new Label("how", "How it leaves", LeavePages::way),
                        Label.of("note", "Note"));
        return Templates.leave(
                tree,
                Departure.How.values(),
                sessions.aheadOf(actor, id),
                clashes.mend(actor, tree, typed, labels));
    }

    private static String way(String typed) {
        return Stream.of(Departure.How.values())
                .filter(how -> how.name().equalsIgnoreCase(typed))
                .map(Departure.How::words)
                .findFirst()
                .orElse(typed);
    }
}
