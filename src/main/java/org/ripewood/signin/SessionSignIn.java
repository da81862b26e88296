package org.ripewood.signin;

import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.IdentityProvider;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.request.TrustedAuthenticationRequest;
import io.smallrye.mutiny.Uni;
import jakarta.enterprise.context.ApplicationScoped;
import org.ripewood.secondfactor.SecondFactors;

/**
 * Knows a person again by their session cookie. A session that was ended, or whose person is no
 * longer there, is nobody's and not an error, or else the sign-in page itself could not be shown.
 */
@ApplicationScoped
class SessionSignIn implements IdentityProvider<TrustedAuthenticationRequest> {

    private final SignIns signIns;
    private final SecondFactors secondFactors;

    SessionSignIn(SignIns signIns, SecondFactors secondFactors) {
        this.secondFactors = secondFactors;
        this.signIns = signIns;
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

    private SecurityIdentity resume(String secret) {
        return signIns.find(secret)
                .map(
                        found ->
                                Identity.inSession(
                                        found.person(),
                                        secret,
                                        found.sessionId(),
                                        secondFactors.isMissing(found.person())))
                .orElseGet(Identity::nobody);
    }
}
