package org.ripewood.print;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import org.jspecify.annotations.Nullable;
import org.ripewood.people.People;
import org.ripewood.pictures.Picture;
import org.ripewood.pictures.RouteDrawing;
import org.ripewood.pictures.RoutePicture;
import org.ripewood.pictures.Sheet;
import org.ripewood.platform.CurrentUser;
import org.ripewood.routes.RouteMaker;
import org.ripewood.routes.RouteView;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeDays;
import org.ripewood.trees.Trees;

/** A tree's years ahead on paper, to be kept with the tree and looked at again next year. */
@Path("/trees/{id: \\d{1,18}}/route/print")
@Authenticated
class RoutePaperPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance route(
                Tree tree, String keeper, RouteView route, Picture picture);
    }

    private final CurrentUser user;
    private final People people;
    private final Trees trees;
    private final RouteMaker routeMaker;
    private final TreeDays treeDays;

    RoutePaperPages(
            CurrentUser user,
            People people,
            Trees trees,
            RouteMaker routeMaker,
            TreeDays treeDays) {
        this.user = user;
        this.people = people;
        this.trees = trees;
        this.routeMaker = routeMaker;
        this.treeDays = treeDays;
    }

    @GET
    @Produces(MediaType.TEXT_HTML)
    public String route(long id, @QueryParam("goal") @Nullable String goal) {
        var actor = user.actor();
        var tree = trees.get(actor, id);
        var route = routeMaker.make(actor, id, goal, treeDays.at(id));
        return Templates.route(
                        tree,
                        people.name(tree.keeperId()),
                        route,
                        RoutePicture.of(drawing(tree, route), Sheet.PAPER))
                .render();
    }

    static RouteDrawing drawing(Tree tree, RouteView route) {
        return new RouteDrawing(
                tree.label(),
                route.goalTitle(),
                route.latitudeDegrees(),
                route.on(),
                route.reached().outlook(),
                route.stages().stream().map(RoutePaperPages::drawn).toList(),
                route.longest(),
                route.reached().assumed());
    }

    private static RouteDrawing.Stage drawn(RouteView.Stage stage) {
        return new RouteDrawing.Stage(
                stage.title(),
                stage.steps().stream()
                        .map(
                                step ->
                                        new RouteDrawing.Step(
                                                step.title(),
                                                step.when().outlook(),
                                                step.onChain(),
                                                step.waitsFor(),
                                                step.assumed()))
                        .toList());
    }
}
