package org.ripewood.web.steps;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.function.Function;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jboss.resteasy.reactive.server.multipart.MultipartFormDataInput;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.CourseContent;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.steps.NewReport;
import org.ripewood.steps.Reports;
import org.ripewood.steps.SignOffs;
import org.ripewood.steps.Step;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.OnceForms;
import org.ripewood.web.kit.Said;
import org.ripewood.web.kit.Versioned;

/** A step: what was said and done about it, the report, and the instructor's answer. */
@Path("/steps/{id: \\d{1,18}}")
@Authenticated
class StepPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance step(StepPageModel sheet);
    }

    private final CurrentUser user;
    private final StepPageAssembler desk;
    private final Reports reports;
    private final SignOffs signOffs;
    private final Inputs inputs;
    private final OnceForms onceForms;
    private final ReportParts evidence;
    private final CourseContent content;
    private final Said said;

    StepPages(
            CurrentUser user,
            StepPageAssembler desk,
            Reports reports,
            SignOffs signOffs,
            Inputs inputs,
            OnceForms onceForms,
            ReportParts evidence,
            CourseContent content,
            Said said) {
        this.user = user;
        this.desk = desk;
        this.reports = reports;
        this.signOffs = signOffs;
        this.inputs = inputs;
        this.onceForms = onceForms;
        this.evidence = evidence;
        this.content = content;
        this.said = said;
    }

    @GET
    public Response step(long id) {
        return Answer.page(page(id, FormState.fresh("none")));
    }

    @POST
    @Path("report")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response report(long id, MultivaluedMap<String, String> form) {
        return onceForms.to(
                form,
                () -> {
                    var version = inputs.read(form, Versioned.class).version();
                    var report = inputs.read(form, NewReport.class);
                    var step = reports.report(user.actor(), id, version, report);
                    sayReported(step, 0);
                    return "/trees/" + step.treeId() + "/checklist";
                },
                problem -> page(id, FormState.refused("report", form, problem)));
    }

    /** The same with photos that show it: report and photos are kept together or not at all. */
    @POST
    @Path("report-with-photos")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response reportWithPhotos(
            long id,
            @RestForm("photo") @Nullable List<FileUpload> photos,
            MultipartFormDataInput parts) {
        var form = ReportParts.fields(parts);
        return onceForms.to(
                form,
                () -> {
                    var version = inputs.read(form, Versioned.class).version();
                    var report = inputs.read(form, NewReport.class);
                    var reported = evidence.report(user.actor(), id, version, report, photos);
                    var step = reported.step();
                    sayReported(step, reported.photos());
                    return "/trees/" + step.treeId() + "/checklist";
                },
                problem -> page(id, FormState.refused("report", form, problem)));
    }

    private void sayReported(Step step, int photos) {
        said.that(
                ReportTeller.reported(
                        content.inForce().titleOf(step.technique()),
                        photos,
                        user.actor().is(Role.INSTRUCTOR)));
    }

    @POST
    @Path("sign-off")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed(Role.INSTRUCTOR_NAME)
    public Response signOff(long id, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var answer = inputs.read(form, Versioned.class);
                    said.ofTree(
                            desk.treeOf(user.actor(), id),
                            () ->
                                    sentence(
                                            "Signed off “%s”.",
                                            signOffs.signOff(
                                                    user.actor(),
                                                    id,
                                                    answer.version(),
                                                    answer.note())));
                    return "/steps/" + id;
                },
                problem -> page(id, FormState.refused("sign-off", form, problem)));
    }

    private String sentence(String words, Step step) {
        return words.formatted(content.inForce().titleOf(step.technique()));
    }

    @POST
    @Path("send-back")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed(Role.INSTRUCTOR_NAME)
    public Response sendBack(long id, MultivaluedMap<String, String> form) {
        return answer(
                id,
                "send-back",
                form,
                answer -> signOffs.sendBack(user.actor(), id, answer.version(), answer.words()),
                "Sent back “%s” with your note.");
    }

    @POST
    @Path("withdraw")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed(Role.INSTRUCTOR_NAME)
    public Response withdraw(long id, MultivaluedMap<String, String> form) {
        return answer(
                id,
                "withdraw",
                form,
                answer -> signOffs.withdraw(user.actor(), id, answer.version(), answer.words()),
                "Withdrew “%s”.");
    }

    private Response answer(
            long id,
            String name,
            MultivaluedMap<String, String> form,
            Function<Versioned, Step> act,
            String sentence) {
        return Answer.to(
                () -> {
                    var step = act.apply(inputs.read(form, Versioned.class));
                    said.that(sentence(sentence, step));
                    return "/steps/" + id;
                },
                problem -> page(id, FormState.refused(name, form, problem)));
    }

    private TemplateInstance page(long id, FormState typed) {
        var model = desk.lay(user.actor(), id, typed);
        said.about(model.tree().id());
        return Templates.step(model);
    }
}
