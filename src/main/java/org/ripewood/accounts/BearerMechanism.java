package org.ripewood.accounts;

import io.quarkus.security.credential.TokenCredential;
import io.quarkus.security.identity.IdentityProviderManager;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.request.AuthenticationRequest;
import io.quarkus.security.identity.request.TokenAuthenticationRequest;
import io.quarkus.vertx.http.runtime.security.ChallengeData;
import io.quarkus.vertx.http.runtime.security.HttpAuthenticationMechanism;
import io.smallrye.mutiny.Uni;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.http.ApiAddress;
import org.ripewood.platform.http.AskedAddress;
import org.ripewood.platform.http.MetricsAddress;

/**
 * Takes a token from the header Authorization (RFC 6750, 2.1) of requests to the API. It is asked
 * before the session's cookie: whoever sends a token means it.
 */
@ApplicationScoped
class BearerMechanism implements HttpAuthenticationMechanism {

    private static final String SCHEME = "Bearer ";
    private static final int BEFORE_SESSIONS = 5_000;

    @Override
    public Uni<SecurityIdentity> authenticate(
            RoutingContext context, IdentityProviderManager identityProviders) {
        var secret = secret(context);
        return secret == null
                ? Uni.createFrom().nullItem()
                : identityProviders.authenticate(
                        new TokenAuthenticationRequest(new TokenCredential(secret, "bearer")));
    }

    private static @Nullable String secret(RoutingContext context) {
        var header = context.request().getHeader("Authorization");
        return header != null
                        && header.regionMatches(true, 0, SCHEME, 0, SCHEME.length())
                        && takesTokens(AskedAddress.of(context))
                ? header.substring(SCHEME.length()).strip()
                : null;
    }

    /** The API, and what a program that watches the service reads. */
    private static boolean takesTokens(String path) {
        return ApiAddress.is(path) || MetricsAddress.is(path);
    }

    /** What to do about a missing sign-in is told elsewhere. */
    @Override
    public Uni<ChallengeData> getChallenge(RoutingContext context) {
        return Uni.createFrom().nullItem();
    }

    @Override
    public Set<Class<? extends AuthenticationRequest>> getCredentialTypes() {
        return Set.of(TokenAuthenticationRequest.class);
    }

    @Override
    public int getPriority() {
        return BEFORE_SESSIONS;
    }
}
