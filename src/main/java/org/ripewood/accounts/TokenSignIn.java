package org.ripewood.accounts;

import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.IdentityProvider;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.request.TokenAuthenticationRequest;
import io.smallrye.mutiny.Uni;
import jakarta.enterprise.context.ApplicationScoped;
import org.ripewood.signin.Identity;

/** Knows a person by a token of theirs; their roles are read afresh at each request. */
@ApplicationScoped
class TokenSignIn implements IdentityProvider<TokenAuthenticationRequest> {

    private final ApiTokens tokens;

    TokenSignIn(ApiTokens tokens) {
        this.tokens = tokens;
    }

    @Override
    public Class<TokenAuthenticationRequest> getRequestType() {
        return TokenAuthenticationRequest.class;
    }

    @Override
    public Uni<SecurityIdentity> authenticate(
            TokenAuthenticationRequest request, AuthenticationRequestContext context) {
        return context.runBlocking(() -> known(request.getToken().getToken()));
    }

    private SecurityIdentity known(String secret) {
        return tokens.find(secret)
                .map(bearer -> Identity.byToken(bearer.person(), bearer.writes()))
                .orElseThrow(() -> new AuthenticationFailedException("no such token"));
    }
}
