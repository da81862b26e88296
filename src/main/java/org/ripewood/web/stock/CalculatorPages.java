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
import org.ripewood.web.kit.FormState;

/** The calculators: volume, mix, next container, wire, feed, lifting. Nothing asked is kept. */
@Path("/stock/reckon")
@RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
class CalculatorPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance reckon(CalculatorPageModel sheet);
    }

    private static final String FORM = "reckon";

    private final CurrentUser user;
    private final CalculatorAssembler desk;

    CalculatorPages(CurrentUser user, CalculatorAssembler desk) {
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
                : Answer.page(page(what, desk.fresh(what, FormState.fresh(FORM), fields), null));
    }

    private Response answer(Calculation what, MultivaluedMap<String, String> fields) {
        try {
            var result = desk.reckon(user.actor(), what, fields);
            return Answer.page(page(what, desk.asked(FORM, fields), result));
        } catch (Refused refused) {
            var problem = refused.problem();
            var typed = FormState.refused(FORM, fields, problem);
            return Answer.page(problem.status(), page(what, typed, null));
        }
    }

    private TemplateInstance page(
            Calculation what, FormState typed, @Nullable CalculatorResult result) {
        return Templates.reckon(desk.lay(user.actor(), what, typed, result));
    }

    private static Calculation require(String word) {
        return Arrays.stream(Calculation.values())
                .filter(one -> one.word().equals(word))
                .findFirst()
                .orElseThrow(() -> Refused.notFound("calculator", word));
    }
}
