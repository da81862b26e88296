package org.ripewood.web.courses;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import org.ripewood.classday.ClassDays;
import org.ripewood.classday.NewDayWish;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.guards.RateLimited;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;

/** A class day at the desk: what each tree does, and when. */
@Path("/sessions/{id: \\d{1,18}}/day")
@RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
class DayPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance day(DayPageModel sheet);
    }

    private final CurrentUser user;
    private final ClassDays days;
    private final Inputs inputs;

    DayPages(CurrentUser user, ClassDays days, Inputs inputs) {
        this.user = user;
        this.days = days;
        this.inputs = inputs;
    }

    @GET
    public Response day(long id) {
        return Answer.page(page(id, FormState.fresh("day")));
    }

    @POST
    @Path("wishes")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response wish(long id, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var wish = inputs.read(form, NewDayWish.class);
                    days.wish(user.actor(), id, wish);
                    return "/sessions/%d/day#tree-%d".formatted(id, wish.treeId());
                },
                problem -> page(id, FormState.refused("wish", form, problem)));
    }

    @POST
    @Path("timetable")
    @RateLimited
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response layOut(long id, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    days.layOut(user.actor(), id, inputs.read(form, DayForm.class).asked());
                    return "/sessions/" + id + "/day#timetable";
                },
                problem -> page(id, FormState.refused("day", form, problem)));
    }

    private TemplateInstance page(long id, FormState typed) {
        return Templates.day(DayPageModel.of(days.plan(user.actor(), id), typed));
    }
}
