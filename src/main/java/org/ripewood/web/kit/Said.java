package org.ripewood.web.kit;

import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.vertx.core.http.Cookie;
import io.vertx.core.http.CookieSameSite;
import io.vertx.core.http.HttpServerRequest;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import java.time.Duration;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.once.PageNote;
import org.ripewood.platform.once.PageNotes;
import org.ripewood.standing.Changes;
import org.ripewood.standing.TreeOnDay;
import org.ripewood.standing.WhatChanged;

/**
 * Tells on the page that follows a form, in one sentence, what the form changed: call {@link #that}
 * last of what is done with the form. The layout shows it once; its cookie holds a key and no
 * words.
 *
 * <p>A form that records something of a tree does so in {@link #ofTree}. How the tree stood before
 * goes along in the cookie, and the next page, which has read the tree as it is now, calls {@link
 * #now}: so the tree is not read once more to tell what the entry freed or held. A page about the
 * tree that has not judged it calls {@link #about}.
 */
@Named("said")
@RequestScoped
public class Said {

    private static final String COOKIE = "ripewood-said";

    /** Bound to this host, and sent by TLS only. */
    private static final String BY_TLS = "__Host-";

    /** Stands between the key, the tree's number and its marks. */
    private static final String BETWEEN = "~";

    private static final Pattern WITH_MARKS = Pattern.compile("([^~]*)~(\\d{1,18})~([^~]*)");

    private final PageNotes notes;
    private final CurrentUser user;
    private final CurrentVertxRequest request;
    private final WhatChanged whatChanged;

    /** The tree this page has read; null for none. */
    private @Nullable TreeOnDay tree;

    /** The tree this page is about without having judged it; null for none. */
    private @Nullable Long about;

    Said(PageNotes notes, CurrentUser user, CurrentVertxRequest request, WhatChanged whatChanged) {
        this.notes = notes;
        this.user = user;
        this.request = request;
        this.whatChanged = whatChanged;
    }

    /**
     * Records something of a tree, and says on the next page what, and what it freed or held.
     *
     * @param act records it, and answers the sentence for what was recorded
     */
    public void ofTree(long treeId, Supplier<String> act) {
        var marks = whatChanged.before(user.actor(), treeId);
        var key = keep(new PageNote(act.get(), null, null));
        write(String.join(BETWEEN, key, Long.toString(treeId), marks), PageNotes.KEPT);
    }

    /** Hands over the tree this page shows, as it stands now. */
    public void now(TreeOnDay shown) {
        tree = shown;
    }

    /** Names the tree this page is about; it is judged only where there is something to tell. */
    public void about(long treeId) {
        about = treeId;
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
        write(keep(note), PageNotes.KEPT);
    }

    private String keep(PageNote note) {
        return notes.keep(user.actor().personId(), note);
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
        var kept = WITH_MARKS.matcher(cookie.getValue());
        var ofTree = kept.matches();
        var note = notes.take(person, ofTree ? kept.group(1) : cookie.getValue());
        write("", Duration.ZERO);
        return note == null || !ofTree
                ? note
                : completed(note, Long.parseLong(kept.group(2)), kept.group(3));
    }

    /** With what has changed since, where this page is about the tree. */
    private PageNote completed(PageNote note, long treeId, String marks) {
        var judged = tree;
        if (judged == null && about != null && about == treeId) {
            judged = whatChanged.today(user.actor(), treeId);
        }
        if (judged == null || judged.tree().id() != treeId) {
            return note;
        }
        var changes = WhatChanged.since(marks, judged);
        var sentence = (note.sentence() + " " + changes.sentence()).strip();
        return changes.ready().stream()
                .findFirst()
                .map(step -> new PageNote(sentence, path(treeId, step), label(step)))
                .orElseGet(() -> new PageNote(sentence, null, null));
    }

    private static String path(long treeId, Changes.Step step) {
        return "/trees/%d/techniques/%s".formatted(treeId, step.technique());
    }

    private String label(Changes.Step step) {
        return (user.actor().is(Role.INSTRUCTOR) ? "Assign “%s”" : "About “%s”")
                .formatted(step.title());
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
