package org.ripewood.signin;

import io.quarkus.security.AuthenticationFailedException;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import org.jboss.logging.Logger;
import org.jspecify.annotations.Nullable;
import org.ripewood.people.Person;
import org.ripewood.platform.Today;

/** Counts a request's try to sign in, for the name, the network or the browser it came from. */
@ApplicationScoped
class SignInTries {

    private static final Logger LOG = Logger.getLogger(SignInTries.class);

    private final SignInPause pause;
    private final KnownBrowsers browsers;
    private final ClientNetwork network;
    private final Today today;

    SignInTries(SignInPause pause, KnownBrowsers browsers, ClientNetwork network, Today today) {
        this.pause = pause;
        this.browsers = browsers;
        this.network = network;
        this.today = today;
    }

    /**
     * Counts a try before it is judged.
     *
     * @param person whose name it is; null when nobody's
     * @throws AuthenticationFailedException when tries like it are held
     */
    SignInPause.Try begin(String name, @Nullable Person person, @Nullable RoutingContext context) {
        var browser = BrowserCookie.KNOWN.read(context);
        var from = network.of(context);
        var tried =
                person != null && browser != null && browsers.knows(browser, person.id())
                        ? SignInPause.Try.ofBrowser(name, browser, from)
                        : SignInPause.Try.ofLogin(name, from);
        var until = pause.begin(tried);
        if (until.isPresent()) {
            LOG.infof("Sign-in paused after too many failures");
            SignInPage.showPause(context, Duration.between(today.now(), until.get()));
            throw new AuthenticationFailedException("too many failures");
        }
        return tried;
    }

    void failed(SignInPause.Try tried, @Nullable Person person) {
        pause.failed(tried, person == null ? null : person.id());
    }

    void succeeded(SignInPause.Try tried) {
        pause.succeeded(tried);
    }
}
