package org.ripewood.calendar;

import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.CacheControl;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.ripewood.accounts.CalendarLinks;

/**
 * A person's calendar for programs that cannot sign in: whoever has the link may read it, and a
 * link that is unknown or revoked is not there.
 */
@Path("/calendar/{file: [A-Za-z0-9_-]{43}\\.ics}")
@PermitAll
class CalendarPages {

    private static final String ENDING = ".ics";
    private static final String TYPE = "text/calendar;charset=UTF-8";

    private final CalendarLinks links;
    private final DateGatherer dates;

    CalendarPages(CalendarLinks links, DateGatherer dates) {
        this.links = links;
        this.dates = dates;
    }

    @GET
    public Response calendar(String file, @Context UriInfo uri, @Context Request request) {
        var secret = file.substring(0, file.length() - ENDING.length());
        var owner = links.findBySecret(secret).orElseThrow(NotFoundException::new);
        var text = CalendarText.text(dates.of(owner, site(uri)));
        var tag = new EntityTag(fingerprint(text));
        var unchanged = request.evaluatePreconditions(tag);
        return (unchanged == null ? Response.ok(text).type(TYPE) : unchanged)
                .tag(tag)
                .cacheControl(onlyTheirs())
                .build();
    }

    private static String site(UriInfo uri) {
        return uri.getBaseUri().toString().replaceFirst("/+$", "");
    }

    private static String fingerprint(String text) {
        return UUID.nameUUIDFromBytes(text.getBytes(StandardCharsets.UTF_8)).toString();
    }

    /** Kept by the program that asked, and asked again each time whether it still holds. */
    private static CacheControl onlyTheirs() {
        var control = new CacheControl();
        control.setPrivate(true);
        control.setNoCache(true);
        control.setNoTransform(false);
        return control;
    }
}
