package org.ripewood.people;

import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.IdentityProvider;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.request.TrustedAuthenticationRequest;
import io.smallrye.mutiny.Uni;
import jakarta.enterprise.context.ApplicationScoped;

/**
 * Knows a person again by their session cookie. Roles are read afresh at each request, so that what
 * a registrar takes away is gone at once; a person no longer there is nobody, not an error, or else
 * the sign-in page itself could not be shown.
 */
@ApplicationScoped
class SessionSignIn implements IdentityProvider<TrustedAuthenticationRequest> {

    private final Accounts accounts;

    SessionSignIn(Accounts accounts) {
        this.accounts = accounts;
    }

    @Override
    public Class<TrustedAuthenticationRequest> getRequestType() {
        return TrustedAuthenticationRequest.class;
    }

    @Override
    public Uni<SecurityIdentity> authenticate(
            TrustedAuthenticationRequest request, AuthenticationRequestContext context) {
        return context.runBlocking(() -> resume(request.getPrincipal()));
    }

    private SecurityIdentity resume(String login) {
        return accounts.find(login)
                .map(Accounts.Account::person)
                .filter(Person::active)
                .map(Identity::of)
                .orElseGet(Identity::nobody);
    }
}
