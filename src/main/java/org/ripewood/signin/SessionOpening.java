package org.ripewood.signin;

import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import org.jspecify.annotations.Nullable;
import org.ripewood.people.Person;
import org.ripewood.platform.http.ProgramHeader;

/** Opens the session of somebody who has shown who they are, in place of the browser's last one. */
@ApplicationScoped
class SessionOpening {

    private final SignIns signIns;
    private final KnownBrowsers browsers;
    private final SessionCookie cookie;

    SessionOpening(SignIns signIns, KnownBrowsers browsers, SessionCookie cookie) {
        this.signIns = signIns;
        this.browsers = browsers;
        this.cookie = cookie;
    }

    SignIns.Opened open(Person person, @Nullable RoutingContext context) {
        browsers.remember(BrowserCookie.KNOWN.read(context), person.id())
                .ifPresent(secret -> BrowserCookie.KNOWN.write(context, secret));
        var replaced = cookie.read(context);
        if (replaced != null) {
            // nobody could end it from this browser any more, once its cookie is overwritten
            signIns.endReplaced(replaced);
        }
        return signIns.open(person.id(), ProgramHeader.isOn(context));
    }
}
