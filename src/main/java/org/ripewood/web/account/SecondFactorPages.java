package org.ripewood.web.account;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.pictures.QrCode;
import org.ripewood.platform.CurrentUser;
import org.ripewood.secondfactor.SecondFactor;
import org.ripewood.secondfactor.SecondFactors;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.ConfirmForms;
import org.ripewood.web.kit.FormState;

/** One's own second factor. What is secret of it is shown in the answer to a form only. */
@Path("/account/second-factor")
@Authenticated
class SecondFactorPages {

    /**
     * @param begun what the app has to be given; null unless it is being set up
     * @param sheet codes just made; empty otherwise
     */
    record Sheet(
            SecondFactor factor,
            SecondFactors.@Nullable Begun begun,
            List<String> sheet,
            FormState typed) {

        public QrCode code() {
            return QrCode.of(begun == null ? "" : begun.address());
        }
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance secondFactor(Sheet sheet);
    }

    private static final String FORM = "factor";

    private final CurrentUser user;
    private final SecondFactors factors;
    private final ConfirmForms confirming;

    SecondFactorPages(CurrentUser user, SecondFactors factors, ConfirmForms confirming) {
        this.user = user;
        this.factors = factors;
        this.confirming = confirming;
    }

    @GET
    public Response page() {
        return Answer.page(page(null, List.of(), FormState.fresh(FORM)));
    }

    /** Shows what the app has to be given, this once; begun anew it is another. */
    @POST
    @Path("begin")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response begin(MultivaluedMap<String, String> form) {
        return confirming.first(
                form,
                () ->
                        Answer.orAgain(
                                () ->
                                        page(
                                                factors.begin(user.actor()),
                                                List.of(),
                                                FormState.fresh(FORM)),
                                problem ->
                                        page(
                                                null,
                                                List.of(),
                                                FormState.refused(FORM, form, problem))));
    }

    /** Turns it on by a first code, and shows the sheet this once. */
    @POST
    @Path("on")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response turnOn(MultivaluedMap<String, String> form) {
        var code = form.getFirst("code");
        return confirming.first(
                form,
                () ->
                        Answer.orAgain(
                                () ->
                                        page(
                                                null,
                                                factors.turnOn(
                                                        user.actor(), code == null ? "" : code),
                                                FormState.fresh(FORM)),
                                problem -> {
                                    var typed =
                                            FormState.refused(FORM, form, problem).without("code");
                                    // of what is on or was never begun there is nothing to show
                                    var begun =
                                            problem.faults().isEmpty()
                                                    ? null
                                                    : factors.begun(user.actor());
                                    return page(begun, List.of(), typed);
                                }));
    }

    @POST
    @Path("sheet")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response newSheet(MultivaluedMap<String, String> form) {
        return confirming.first(
                form,
                () ->
                        Answer.orAgain(
                                () ->
                                        page(
                                                null,
                                                factors.newSheet(user.actor()),
                                                FormState.fresh(FORM)),
                                problem ->
                                        page(
                                                null,
                                                List.of(),
                                                FormState.refused(FORM, form, problem))));
    }

    @POST
    @Path("off")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response turnOff(MultivaluedMap<String, String> form) {
        return confirming.first(
                form,
                () ->
                        Answer.to(
                                () -> {
                                    factors.turnOff(user.actor());
                                    return "/account/second-factor";
                                },
                                problem ->
                                        page(
                                                null,
                                                List.of(),
                                                FormState.refused(FORM, form, problem))));
    }

    private TemplateInstance page(
            SecondFactors.@Nullable Begun begun, List<String> sheet, FormState typed) {
        return Templates.secondFactor(new Sheet(factors.of(user.actor()), begun, sheet, typed));
    }
}
