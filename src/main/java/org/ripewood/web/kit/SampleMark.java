package org.ripewood.web.kit;

import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.http.AskedAddress;
import org.ripewood.sample.SampleMarks;

/** Whether this page is about something made up, by its address; every page and paper says so. */
@Named("sample")
@RequestScoped
public class SampleMark {

    /** Digits few enough for a number of the database, so that nothing else is looked up. */
    private static final Pattern ABOUT = Pattern.compile("/([a-z]+)/(\\d{1,18})(?:/.*)?");

    private final CurrentVertxRequest request;
    private final CurrentUser user;
    private final SampleMarks marks;
    private @Nullable Boolean here;

    SampleMark(CurrentVertxRequest request, CurrentUser user, SampleMarks marks) {
        this.request = request;
        this.user = user;
        this.marks = marks;
    }

    public boolean isHere() {
        var known = here;
        if (known == null) {
            known = asked();
            here = known;
        }
        return known;
    }

    /** Whether the reader may throw the sample away. */
    public boolean isMine() {
        return user.signedIn() && user.actor().is(Role.REGISTRAR);
    }

    private boolean asked() {
        var context = request.getCurrent();
        if (context == null || !user.signedIn()) {
            return false;
        }
        var about = ABOUT.matcher(AskedAddress.of(context));
        return about.matches() && marks.isSample(about.group(1), Long.parseLong(about.group(2)));
    }
}
