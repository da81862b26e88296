package org.ripewood.people;

import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.IdentityProvider;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.request.UsernamePasswordAuthenticationRequest;
import io.quarkus.vertx.http.runtime.security.HttpSecurityUtils;
import io.smallrye.mutiny.Uni;
import jakarta.enterprise.context.ApplicationScoped;
import org.jboss.logging.Logger;

/** Signs a person in by login and password. */
@ApplicationScoped
class PasswordSignIn implements IdentityProvider<UsernamePasswordAuthenticationRequest> {

    private static final Logger LOG = Logger.getLogger(PasswordSignIn.class);

    private final Accounts accounts;
    private final SignIns signIns;
    private final SignInPause pause;

    PasswordSignIn(Accounts accounts, SignIns signIns, SignInPause pause) {
        this.accounts = accounts;
        this.signIns = signIns;
        this.pause = pause;
    }

    @Override
    public Class<UsernamePasswordAuthenticationRequest> getRequestType() {
        return UsernamePasswordAuthenticationRequest.class;
    }

    @Override
    public Uni<SecurityIdentity> authenticate(
            UsernamePasswordAuthenticationRequest request, AuthenticationRequestContext context) {
        return context.runBlocking(() -> signIn(request));
    }

    private SecurityIdentity signIn(UsernamePasswordAuthenticationRequest request) {
        var login = Persons.normal(request.getUsername());
        if (pause.isOn(login)) {
            LOG.infof("Sign-in paused after too many failures");
            SignInPage.showPause(HttpSecurityUtils.getRoutingContextAttribute(request));
            throw new AuthenticationFailedException("too many failures for this login");
        }
        var account = accounts.find(login).filter(found -> found.person().active()).orElse(null);
        var password = new String(request.getPassword().getPassword());
        if (!Passwords.matches(account == null ? null : account.passwordHash(), password)
                || account == null) {
            pause.countFailure(login);
            throw new AuthenticationFailedException("login or password is wrong");
        }
        pause.forget(login);
        var opened = signIns.open(account.person().id());
        return Identity.inSession(account.person(), opened.secret(), opened.sessionId());
    }
}
