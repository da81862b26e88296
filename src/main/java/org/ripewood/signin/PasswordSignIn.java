package org.ripewood.signin;

import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.IdentityProvider;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.request.UsernamePasswordAuthenticationRequest;
import io.quarkus.vertx.http.runtime.security.HttpSecurityUtils;
import io.smallrye.mutiny.Uni;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import org.jspecify.annotations.Nullable;
import org.ripewood.passwords.Passwords;
import org.ripewood.people.Person;
import org.ripewood.people.PersonRows;
import org.ripewood.secondfactor.SecondFactors;

/**
 * Signs a person in by login and password, and those who have a second factor by a code after it.
 * Both come by the same form; a sign-in that waits for its code is no session yet.
 */
@ApplicationScoped
class PasswordSignIn implements IdentityProvider<UsernamePasswordAuthenticationRequest> {

    private final Accounts accounts;
    private final HalfSignIns halfSignIns;
    private final SecondFactors secondFactors;
    private final SignInTries tries;
    private final SessionOpening opening;

    PasswordSignIn(
            Accounts accounts,
            HalfSignIns halfSignIns,
            SecondFactors secondFactors,
            SignInTries tries,
            SessionOpening opening) {
        this.accounts = accounts;
        this.halfSignIns = halfSignIns;
        this.secondFactors = secondFactors;
        this.tries = tries;
        this.opening = opening;
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
        var context = HttpSecurityUtils.getRoutingContextAttribute(request);
        var typed = new String(request.getPassword().getPassword());
        return request.getUsername().equals(SignIns.CODE_NAME)
                ? byCode(typed, context)
                : byPassword(PersonRows.normal(request.getUsername()), typed, context);
    }

    private SecurityIdentity byPassword(
            String login, String password, @Nullable RoutingContext context) {
        var account = accounts.find(login).filter(found -> found.person().active()).orElse(null);
        var person = account == null ? null : account.person();
        var tried = tries.begin(login, person, context);
        if (!Passwords.matches(account == null ? null : account.passwordHash(), password)
                || account == null) {
            tries.failed(tried, person);
            throw new AuthenticationFailedException("login or password is wrong");
        }
        tries.succeeded(tried);
        accounts.renewHash(account, password);
        if (secondFactors.isOn(account.person().id())) {
            BrowserCookie.HALF.write(context, halfSignIns.begin(account.person().id()));
            SignInPage.askForCode(context);
            throw new AuthenticationFailedException("the second factor is waited for");
        }
        return open(account.person(), context);
    }

    private SecurityIdentity byCode(String code, @Nullable RoutingContext context) {
        var half = BrowserCookie.HALF.read(context);
        var person = halfSignIns.whose(half).orElse(null);
        if (half == null || person == null) {
            SignInPage.beginAnew(context);
            throw new AuthenticationFailedException("no sign-in waits for a code");
        }
        // counted apart from passwords, or else each right password would forget wrong codes
        var tried = tries.begin(SignIns.CODE_NAME + " " + person.login(), person, context);
        if (!secondFactors.takes(person.id(), code)) {
            tries.failed(tried, person);
            SignInPage.askForCodeAgain(context);
            throw new AuthenticationFailedException("the code is wrong");
        }
        tries.succeeded(tried);
        halfSignIns.end(half);
        BrowserCookie.HALF.remove(context);
        return open(person, context);
    }

    private SecurityIdentity open(Person person, @Nullable RoutingContext context) {
        var opened = opening.open(person, context);
        return Identity.inSession(person, opened.secret(), opened.sessionId(), false);
    }
}
