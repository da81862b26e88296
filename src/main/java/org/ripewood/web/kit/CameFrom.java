package org.ripewood.web.kit;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.ripewood.people.Courses;
import org.ripewood.people.People;
import org.ripewood.platform.CurrentUser;

/**
 * The page somebody came from, as the address says by {@code ?from=/courses/3}. Only pages of this
 * service that are listed here are believed, and only those the reader may open by themselves;
 * anything else is as if nothing were said.
 */
@Named("from")
@RequestScoped
public class CameFrom {

    /**
     * A page to go back to.
     *
     * @param href a path of this service
     */
    public record Page(String href, String title) {}

    /** Digits few enough for a number of the database, so that nothing else is looked up. */
    private static final Pattern OWN = Pattern.compile("/(courses|sessions|people)/(\\d{1,18})");

    private final UriInfo asked;
    private final CurrentUser user;
    private final Courses courses;
    private final People people;

    private boolean read;
    private @Nullable Page page;

    CameFrom(UriInfo asked, CurrentUser user, Courses courses, People people) {
        this.asked = asked;
        this.user = user;
        this.courses = courses;
        this.people = people;
    }

    /** Where to lead back to; null when the address does not say, or says what is not believed. */
    public @Nullable Page getPage() {
        if (!read) {
            page = told();
            read = true;
        }
        return page;
    }

    private @Nullable Page told() {
        var said = asked.getQueryParameters().getOrDefault("from", List.of());
        if (said.size() != 1 || !user.signedIn()) {
            return null;
        }
        var own = OWN.matcher(said.get(0));
        return own.matches() ? page(own.group(), own.group(1), Long.parseLong(own.group(2))) : null;
    }

    private @Nullable Page page(String path, String kind, long id) {
        if (kind.equals("sessions")) {
            return new Page(path, "Session");
        }
        var one = List.of(id);
        if (kind.equals("people")) {
            var person = people.mayLookUp(user.actor(), id) ? people.names(one).get(id) : null;
            return person == null ? null : new Page(path, person);
        }
        var name = courses.inReach(user.actor(), one).isEmpty() ? null : courses.names(one).get(id);
        return name == null ? null : new Page(path, name);
    }
}
