package org.ripewood.signin;

import io.quarkus.vertx.http.runtime.security.PersistentLoginManager;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jspecify.annotations.Nullable;

/** The session's cookie, whose secret is sealed as the framework seals it at sign-in. */
@ApplicationScoped
class SessionCookie {

    private static final String PATH = "/";
    private static final String SAME_SITE = "STRICT";
    private static final long UNTIL_THE_BROWSER_ENDS = -1;

    private final String name;
    private final PersistentLoginManager seal;

    SessionCookie(
            @ConfigProperty(name = "quarkus.http.auth.form.cookie-name") String name,
            @ConfigProperty(name = "quarkus.http.auth.session.encryption-key") String key,
            @ConfigProperty(name = "quarkus.http.auth.form.timeout") Duration timeout) {
        this.name = name;
        this.seal =
                new PersistentLoginManager(
                        key,
                        name,
                        timeout.toMillis(),
                        Duration.ofMinutes(1).toMillis(),
                        true,
                        SAME_SITE,
                        PATH,
                        UNTIL_THE_BROWSER_ENDS,
                        null);
    }

    /** The secret of the session that a request came with; null when it came with none. */
    @Nullable String read(@Nullable RoutingContext context) {
        var sealed = context == null ? null : seal.restore(context, name);
        return sealed == null ? null : sealed.getPrincipal();
    }

    void write(RoutingContext context, String secret) {
        seal.save(secret, context, name, null, context.request().isSSL());
    }
}
