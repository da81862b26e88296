package org.ripewood.print;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.stream.Stream;
import org.ripewood.classday.ClassDays;
import org.ripewood.people.People;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.sessions.Presence;
import org.ripewood.sessions.Roll;
import org.ripewood.sessions.Rolls;
import org.ripewood.sessions.Session;

/** A class day on paper: who does what at which bench, with what, and what to mind. */
@Path("/sessions/{id: \\d{1,18}}/plan")
@RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
class PlanPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance plan(PlanSheets sheets, List<String> came);
    }

    private final CurrentUser user;
    private final ClassDays days;
    private final Rolls rolls;
    private final People people;
    private final UriInfo uris;

    PlanPages(CurrentUser user, ClassDays days, Rolls rolls, People people, UriInfo uris) {
        this.user = user;
        this.days = days;
        this.rolls = rolls;
        this.people = people;
        this.uris = uris;
    }

    @GET
    @Produces(MediaType.TEXT_HTML)
    public String plan(long id) {
        var plan = days.plan(user.actor(), id);
        return Templates.plan(PlanSheets.of(plan, uris.getBaseUri()), came(plan.session()))
                .render();
    }

    /** Who came, once somebody has said so. */
    private List<String> came(Session session) {
        var lines = rolls.marked(user.actor(), session);
        var names = people.names(lines.stream().map(Roll.Line::personId).toList());
        return lines.stream()
                .flatMap(line -> told(line, names.getOrDefault(line.personId(), "")))
                .toList();
    }

    private static Stream<String> told(Roll.Line line, String name) {
        var mark = line.mark();
        return mark == null ? Stream.empty() : Stream.of(name + " " + word(mark.presence()));
    }

    private static String word(Presence presence) {
        return switch (presence) {
            case CAME -> "came";
            case LATE -> "came late";
            case AWAY -> "did not come";
        };
    }
}
