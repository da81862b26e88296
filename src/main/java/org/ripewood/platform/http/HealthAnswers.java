package org.ripewood.platform.http;

import io.smallrye.health.SmallRyeHealth;
import io.smallrye.health.SmallRyeHealthReporter;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Says whether the service is up, and nothing more: those who ask are machines, and what stands
 * behind the service is no stranger's business. Answered before the framework's own pages, which
 * tell every check by name.
 */
@ApplicationScoped
public class HealthAnswers {

    private static final int FIRST = -1_000;
    private static final int UP = 200;
    private static final int DOWN = 503;

    private final SmallRyeHealthReporter reporter;

    HealthAnswers(SmallRyeHealthReporter reporter) {
        this.reporter = reporter;
    }

    public static boolean isHealth(String path) {
        return path.equals("/q/health") || path.startsWith("/q/health/");
    }

    void register(@Observes Router router) {
        Map<String, Supplier<SmallRyeHealth>> asked =
                Map.of(
                        "/q/health", reporter::getHealth,
                        "/q/health/live", reporter::getLiveness,
                        "/q/health/ready", reporter::getReadiness,
                        "/q/health/started", reporter::getStartup);
        asked.forEach(
                (path, health) ->
                        router.get(path)
                                .order(FIRST)
                                .blockingHandler(context -> answer(context, health.get()), false));
        // nothing else is told below: no groups, no checks by name
        router.routeWithRegex("/q/health/?.*").order(FIRST + 1).handler(HealthAnswers::refuse);
    }

    private static void answer(RoutingContext context, SmallRyeHealth health) {
        boolean up = !health.isDown();
        context.response()
                .setStatusCode(up ? UP : DOWN)
                .putHeader("Content-Type", "application/json")
                .end(up ? "{\"status\":\"UP\"}" : "{\"status\":\"DOWN\"}");
    }

    private static void refuse(RoutingContext context) {
        context.fail(404);
    }
}
