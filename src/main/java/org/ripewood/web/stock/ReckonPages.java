package org.ripewood.web.stock;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.Typed;

/** The calculators: volume, mix, next container, wire, feed, lifting. Nothing asked is kept. */
@Path("/stock/reckon")
@RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
class ReckonPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance reckon(ReckonSheet sheet);
    }

    private static final String FORM = "reckon";

    private final CurrentUser user;
    private final ReckonDesk desk;

    ReckonPages(CurrentUser user, ReckonDesk desk) {
        this.user = user;
        this.desk = desk;
    }

    @GET
    public Response reckon(
            @QueryParam("what") @DefaultValue("container") String word, @Context UriInfo asked) {
        var what = require(word);
        var fields = asked.getQueryParameters();
        return fields.containsKey("ask")
                ? answer(what, fields)
                : Answer.page(page(what, desk.fresh(what, Typed.fresh(FORM), fields), null));
    }

    private Response answer(Reckoning what, MultivaluedMap<String, String> fields) {
        try {
            var result = desk.reckon(user.actor(), what, fields);
            return Answer.page(page(what, desk.asked(FORM, fields), result));
        } catch (Refused refused) {
            var problem = refused.problem();
            var typed = Typed.refused(FORM, fields, problem);
            return Answer.page(problem.status(), page(what, typed, null));
        }
    }

    private TemplateInstance page(Reckoning what, Typed typed, @Nullable ReckonResult result) {
        return Templates.reckon(desk.lay(user.actor(), what, typed, result));
    }

    private static Reckoning require(String word) {
        return Arrays.stream(Reckoning.values())
                .filter(one -> one.word().equals(word))
                .findFirst()
                .orElseThrow(() -> Refused.notFound("calculator", word));
    }
}
