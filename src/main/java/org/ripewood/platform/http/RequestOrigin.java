package org.ripewood.platform.http;

import io.quarkus.arc.Arc;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.quarkus.vertx.http.runtime.security.QuarkusHttpUser;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.CurrentUser;

/** By which door, and by whom, something is being done at this moment. */
@ApplicationScoped
public class RequestOrigin {

    /** What is done without anybody asking: an import, or something at start. */
    static final String IMPORT = "import";

    /** A request that came to no door of ours. */
    private static final String UNKNOWN = "unknown";

    /** Of an address in a log. */
    private static final int LONGEST = 200;

    private final CurrentVertxRequest request;

    RequestOrigin(CurrentVertxRequest request) {
        this.request = request;
    }

    /**
     * Whoever does something, and by which door.
     *
     * @param personId null when nobody is known
     * @param door method and address with its variables' names, never their values
     */
    public record Doing(@Nullable Long personId, String door) {}

    /** Whether a door is one that a request came by, and was told. */
    public static boolean isTold(String door) {
        return !door.equals(UNKNOWN) && !door.equals(IMPORT);
    }

    public Doing now() {
        var context = context();
        return context == null ? new Doing(null, IMPORT) : of(context);
    }

    private static Doing of(RoutingContext context) {
        String door = context.get(RequestOriginFilter.KEY);
        return new Doing(personId(context), door == null ? UNKNOWN : door);
    }

    /**
     * The same for a log: where a request was refused before it came to a door its address stands
     * for it, without secrets and in plain letters.
     */
    static Doing loggable(RoutingContext context) {
        var doing = of(context);
        if (!doing.door().equals(UNKNOWN)) {
            return doing;
        }
        var path = SecretAddress.hidden(AskedAddress.of(context));
        var plain = path.replaceAll("[^\\x21-\\x7E…]", "?");
        var start = plain.substring(0, Math.min(plain.length(), LONGEST));
        return new Doing(doing.personId(), context.request().method() + " " + start);
    }

    /** Whoever is known by now; asking here would sign somebody in. */
    private static @Nullable Long personId(RoutingContext context) {
        return context.user() instanceof QuarkusHttpUser user
                ? user.getSecurityIdentity().getAttribute(CurrentUser.PERSON_ID)
                : null;
    }

    private @Nullable RoutingContext context() {
        return Arc.container().requestContext().isActive() ? request.getCurrent() : null;
    }
}
