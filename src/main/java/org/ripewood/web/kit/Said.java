package org.ripewood.web.kit;

import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.vertx.core.http.Cookie;
import io.vertx.core.http.CookieSameSite;
import io.vertx.core.http.HttpServerRequest;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.once.PageNote;
import org.ripewood.platform.once.PageNotes;

/**
 * Tells on the page that follows a form, in one sentence, what the form changed: call {@link #that}
 * last of what is done with the form. The layout shows it once; its cookie holds a key and no
 * words.
 */
@Named("said")
@RequestScoped
public class Said {

    private static final String COOKIE = "ripewood-said";

    /** Bound to this host, and sent by TLS only. */
    private static final String BY_TLS = "__Host-";

    private final PageNotes notes;
    private final CurrentUser user;
    private final CurrentVertxRequest request;

    Said(PageNotes notes, CurrentUser user, CurrentVertxRequest request) {
        this.notes = notes;
        this.user = user;
        this.request = request;
    }

    /** Says a sentence on the next page. */
    public void that(String sentence) {
        that(new PageNote(sentence, null, null));
    }

    /** The same with a link to what comes next. */
    public void that(String sentence, String path, String label) {
        that(new PageNote(sentence, path, label));
    }

    private void that(PageNote note) {
        write(notes.keep(user.actor().personId(), note), PageNotes.KEPT);
    }

    /** What is to be said on this page, which is not said again; null for nothing. */
    public @Nullable PageNote take() {
        var person = user.personId();
        var context = request.getCurrent();
        if (person == null || context == null) {
            return null;
        }
        var cookie = context.request().getCookie(name(context.request()));
        if (cookie == null || cookie.getValue().isEmpty()) {
            return null;
        }
        var note = notes.take(person, cookie.getValue());
        write("", Duration.ZERO);
        return note;
    }

    private void write(String key, Duration age) {
        var context = request.getCurrent();
        if (context != null) {
            context.response()
                    .addCookie(
                            Cookie.cookie(name(context.request()), key)
                                    .setPath("/")
                                    .setHttpOnly(true)
                                    .setSameSite(CookieSameSite.STRICT)
                                    .setSecure(context.request().isSSL())
                                    .setMaxAge(age.toSeconds()));
        }
    }

    private static String name(HttpServerRequest asked) {
        return asked.isSSL() ? BY_TLS + COOKIE : COOKIE;
    }
}
