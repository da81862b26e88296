package org.ripewood.routes;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.route.Route;
import org.ripewood.core.route.TreeRoute;
import org.ripewood.course.Content;
import org.ripewood.course.Stage;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.standing.SubjectGatherer;
import org.ripewood.standing.TreeOnDay;

/**
 * Goes through a tree's years ahead.
 *
 * <p>What is known of the tree is read in a transaction of its own, so that none is held while the
 * years are gone through.
 */
@ApplicationScoped
public class RouteMaker {

    private static final int MOST_SHOWN = 40;

    private final SubjectGatherer gatherer;

    RouteMaker(SubjectGatherer gatherer) {
        this.gatherer = gatherer;
    }

    /**
     * The years from a day on to a goal stage. No transaction is held while they are gone through.
     *
     * @param goal code of the stage, 400 when there is none such; null for the one after the tree's
     *     own
     */
    public RouteView make(Actor actor, long treeId, @Nullable String goal, LocalDate on) {
        return of(
                QuarkusTransaction.requiringNew().call(() -> gatherer.one(actor, treeId, on)),
                goal);
    }

    /** The same of a tree that was just looked at, from that day on; reads nothing more. */
    public RouteView of(TreeOnDay tree, @Nullable String goal) {
        var content = tree.content();
        var stage = goal == null ? next(tree) : stage(content, goal);
        var route =
                TreeRoute.simulate(
                        content.rulebook(),
                        RouteRulesOfContent.of(content),
                        tree.subject(),
                        tree.on(),
                        stage.order(),
                        Route.USUAL_DRAWS,
                        seed(tree.tree().id(), content));
        return new RouteText(tree).tell(route, stage);
    }

    /** The same tree and content go the same way, however often they are asked. */
    private static long seed(long treeId, Content content) {
        return 31L * content.revision().hashCode() + treeId;
    }

    /** The goal nobody has asked for another: the stage after the tree's own. */
    private static Stage next(TreeOnDay tree) {
        int next = tree.stage().order() + 1;
        var stages = tree.content().stages();
        return stages.stream()
                .filter(stage -> stage.order() == next)
                .findFirst()
                .orElse(stages.get(stages.size() - 1));
    }

    private static Stage stage(Content content, String code) {
        return content.stages().stream()
                .filter(stage -> stage.code().equals(code))
                .findFirst()
                .orElseThrow(
                        () ->
                                Refused.invalid(
                                        "goal",
                                        "There is no stage “%s”.%s"
                                                .formatted(excerpt(code), maybe(content, code))));
    }

    private static String maybe(Content content, String code) {
        var known = content.stages().stream().map(Stage::code).toList();
        var maybe = Suggestion.maybe(known, code);
        return maybe.isEmpty() ? " Stages are: " + String.join(", ", known) + "." : maybe;
    }

    private static String excerpt(String code) {
        return code.length() <= MOST_SHOWN ? code : code.substring(0, MOST_SHOWN) + "…";
    }
}
