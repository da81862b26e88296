package org.ripewood.people;

import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.IdentityProvider;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.request.UsernamePasswordAuthenticationRequest;
import io.quarkus.vertx.http.runtime.security.HttpSecurityUtils;
import io.smallrye.mutiny.Uni;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import org.jboss.logging.Logger;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Today;

/** Signs a person in by login and password. */
@ApplicationScoped
class PasswordSignIn implements IdentityProvider<UsernamePasswordAuthenticationRequest> {

    private static final Logger LOG = Logger.getLogger(PasswordSignIn.class);

    private final Accounts accounts;
    private final SignIns signIns;
    private final SignInPause pause;
    private final KnownBrowsers browsers;
    private final Network network;
    private final Today today;

    PasswordSignIn(
            Accounts accounts,
            SignIns signIns,
            SignInPause pause,
            KnownBrowsers browsers,
            Network network,
            Today today) {
        this.accounts = accounts;
        this.browsers = browsers;
        this.network = network;
        this.today = today;
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
        var context = HttpSecurityUtils.getRoutingContextAttribute(request);
        var login = Persons.normal(request.getUsername());
        var account = accounts.find(login).filter(found -> found.person().active()).orElse(null);
        var browser = BrowserCookie.read(context);
        var tried = tried(login, account, browser, network.of(context));
        var until = pause.begin(tried);
        if (until.isPresent()) {
            LOG.infof("Sign-in paused after too many failures");
            SignInPage.showPause(context, Duration.between(today.now(), until.get()));
            throw new AuthenticationFailedException("too many failures");
        }
        var password = new String(request.getPassword().getPassword());
        if (!Passwords.matches(account == null ? null : account.passwordHash(), password)
                || account == null) {
            pause.failed(tried, account == null ? null : account.person().id());
            throw new AuthenticationFailedException("login or password is wrong");
        }
        pause.succeeded(tried);
        accounts.renewHash(account, password);
        browsers.remember(browser, account.person().id())
                .ifPresent(secret -> BrowserCookie.write(context, secret));
        var opened = signIns.open(account.person().id());
        return Identity.inSession(account.person(), opened.secret(), opened.sessionId());
    }

    private SignInPause.Try tried(
            String login,
            Accounts.@Nullable Account account,
            @Nullable String browser,
            String network) {
        return account != null && browser != null && browsers.knows(browser, account.person().id())
                ? SignInPause.Try.ofBrowser(login, browser, network)
                : SignInPause.Try.ofLogin(login, network);
    }
}
