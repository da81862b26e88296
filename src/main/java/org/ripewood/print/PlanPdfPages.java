package org.ripewood.print;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Role;
import org.ripewood.platform.guards.RateLimited;

/** The plan of a class day as PDF, the same as its page. */
@Path("/sessions/{id: \\d{1,18}}/plan.pdf")
@RateLimited
@RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
class PlanPdfPages {

    private final PlanPages plans;

    PlanPdfPages(PlanPages plans) {
        this.plans = plans;
    }

    @GET
    @Produces(PdfAnswer.TYPE)
    public Response plan(long id, @QueryParam("size") @Nullable String size) {
        return PdfAnswer.of(plans.plan(id), size);
    }
}
