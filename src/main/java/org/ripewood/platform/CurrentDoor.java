package org.ripewood.platform;

import io.quarkus.arc.Arc;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.quarkus.vertx.http.runtime.security.QuarkusHttpUser;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import org.jspecify.annotations.Nullable;

/** By which door, and by whom, something is being done at this moment. */
@ApplicationScoped
public class CurrentDoor {

    /** What is done without anybody asking: an import, or something at start. */
    static final String IMPORT = "import";

    /** A request that came to no door of ours. */
    private static final String UNKNOWN = "unknown";

    /** Of an address in a log. */
    private static final int LONGEST = 200;

    private final CurrentVertxRequest request;

    CurrentDoor(CurrentVertxRequest request) {
        this.request = request;
    }

    /**
     * Whoever does something, and by which door.
     *
     * @param personId null when nobody is known
     * @param door method and address with its variables' names, never their values
     */
    public record Doing(@Nullable Long personId, String door) {}

    public Doing now() {
        var context = context();
        if (context == null) {
            return new Doing(null, IMPORT);
        }
        String door = context.get(DoorNote.KEY);
        return new Doing(personId(context), door == null ? UNKNOWN : door);
    }

    /**
     * The door, or the address where the request was refused before it came to one: fit for a log,
     * without secrets and in plain letters.
     */
    String loggable() {
        var doing = now();
        var context = context();
        if (context == null || !doing.door().equals(UNKNOWN)) {
            return doing.door();
        }
        var path = SecretAddress.hidden(context.normalizedPath());
        var plain = path.replaceAll("[^\\x21-\\x7E…]", "?");
        return context.request().method()
                + " "
                + plain.substring(0, Math.min(plain.length(), LONGEST));
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
