package org.ripewood.web.trees;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Stage;
import org.ripewood.pictures.RouteDrawing;
import org.ripewood.pictures.RoutePicture;
import org.ripewood.platform.CurrentUser;
import org.ripewood.routes.RouteMaker;
import org.ripewood.routes.RouteView;
import org.ripewood.standing.Standings;
import org.ripewood.trees.Tree;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.PictureFormat;

/** A tree's years ahead: when each step to a stage is likely to be done, and what decides it. */
@Path("/trees/{id: \\d{1,18}}/route")
@Authenticated
class RoutePages {

    /** What takes the most time; more of it tells a reader less. */
    private static final int MOST_WAITINGS = 4;

    record RouteSheet(Tree tree, RouteView route, List<Stage> stages, PictureFormat picture) {

        public List<RouteView.Waiting> longest() {
            return route.waitings().stream().limit(MOST_WAITINGS).toList();
        }

        /** What is taken to turn out well once somebody looks. */
        public List<RouteView.Assumed> toLookAt() {
            return route.assumed().stream().filter(RouteView.Assumed::onceLookedAt).toList();
        }

        /** What is taken to be so next season. */
        public List<RouteView.Assumed> nextSeason() {
            return route.assumed().stream().filter(assumed -> !assumed.onceLookedAt()).toList();
        }
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance route(RouteSheet sheet);
    }

    private final CurrentUser user;
    private final Standings standings;
    private final RouteMaker routeMaker;
    private final CourseContent content;

    RoutePages(
            CurrentUser user, Standings standings, RouteMaker routeMaker, CourseContent content) {
        this.user = user;
        this.standings = standings;
        this.routeMaker = routeMaker;
        this.content = content;
    }

    @GET
    public Response route(long id, @QueryParam("goal") @Nullable String goal) {
        var actor = user.actor();
        var look = standings.lookToday(actor, id);
        var tree = look.tree();
        var route = routeMaker.of(look.day(), goal);
        var drawing = drawing(tree, route);
        return Answer.page(
                Templates.route(
                        new RouteSheet(
                                tree,
                                route,
                                content.inForce().stages(),
                                PictureFormat.of(sheet -> RoutePicture.of(drawing, sheet)))));
    }

    private static RouteDrawing drawing(Tree tree, RouteView route) {
        return new RouteDrawing(
                tree.label(),
                route.goalTitle(),
                route.latitudeDegrees(),
                route.on(),
                route.reached().outlook(),
                route.stages().stream().map(RoutePages::drawn).toList(),
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
