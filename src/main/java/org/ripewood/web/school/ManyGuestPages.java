package org.ripewood.web.school;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import org.ripewood.accounts.GuestLine;
import org.ripewood.accounts.ManyGuests;
import org.ripewood.people.Course;
import org.ripewood.people.Courses;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.ConfirmForms;
import org.ripewood.web.kit.FormState;

/** A whole class invited at once: pasted, looked through, and answered with a sheet of links. */
@Path("/people/many")
@RolesAllowed(Role.REGISTRAR_NAME)
class ManyGuestPages {

    /**
     * @param lines what the list would do; none before it was looked through
     * @param written the list with everything said; empty while something is wrong
     * @param courses that can be named
     */
    record ManySheet(FormState typed, List<GuestLine> lines, String written, List<Course> courses) {

        public long faulty() {
            return lines.stream().filter(line -> !line.faults().isEmpty()).count();
        }
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance many(ManySheet sheet);

        static native TemplateInstance links(List<GuestCard> cards);
    }

    private static final String FORM = "many";

    private final CurrentUser user;
    private final ManyGuests guests;
    private final Courses courses;
    private final Today today;
    private final ConfirmForms confirming;

    ManyGuestPages(
            CurrentUser user,
            ManyGuests guests,
            Courses courses,
            Today today,
            ConfirmForms confirming) {
        this.user = user;
        this.guests = guests;
        this.courses = courses;
        this.today = today;
        this.confirming = confirming;
    }

    @GET
    public Response ask() {
        return Answer.page(page(FormState.fresh(FORM), List.of()));
    }

    /** Tells what a list would do; nothing is entered. */
    @POST
    @Path("look")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response look(MultivaluedMap<String, String> form) {
        return Answer.orAgain(
                () -> page(FormState.of(FORM, form), guests.look(user.actor(), lines(form))),
                problem -> page(FormState.refused(FORM, form, problem), List.of()));
    }

    /** Invites everybody on it and shows, this once, the sheet of their links. */
    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response invite(MultivaluedMap<String, String> form, @Context UriInfo uri) {
        return confirming.first(
                form,
                () ->
                        Answer.orAgain(
                                () ->
                                        Templates.links(
                                                guests.invite(user.actor(), lines(form)).stream()
                                                        .map(one -> GuestCard.of(one, uri))
                                                        .toList()),
                                problem ->
                                        page(FormState.refused(FORM, form, problem), List.of())));
    }

    private static String lines(MultivaluedMap<String, String> form) {
        var lines = form.getFirst("lines");
        return lines == null ? "" : lines;
    }

    private TemplateInstance page(FormState typed, List<GuestLine> lines) {
        var open =
                courses.list(user.actor()).stream()
                        .filter(course -> !course.over(today.date()))
                        .toList();
        var right = lines.stream().allMatch(line -> line.faults().isEmpty());
        var written = right ? ManyGuests.written(lines) : "";
        return Templates.many(new ManySheet(typed, lines, written, open));
    }
}
