package org.ripewood.web.trees;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.course.CourseContent;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.MeasurementSeries;
import org.ripewood.records.NewObservation;
import org.ripewood.records.Question;
import org.ripewood.records.SeriesOutcome;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.OnceForms;
import org.ripewood.web.kit.Said;

/** What was seen and measured on a tree, how to look, and the form for what is seen now. */
@Path("/trees/{id: \\d{1,18}}/observations")
@Authenticated
class ObservationPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance observations(ObservationPageModel sheet);
    }

    /** Keys of the questions the form comes back with. */
    private static final String ASKED_KEYS = "askedKeys";

    /** The form for the stage, which stands beside the techniques. */
    private static final String STAGE = "stage";

    private static final int ASKED = 409;

    private final CurrentUser user;
    private final ObservationPageAssembler desk;
    private final TreeRecordAssembler recordDesk;
    private final TreeTechniqueAssembler techniqueDesk;
    private final MeasurementSeries measurementSeries;
    private final Inputs inputs;
    private final OnceForms onceForms;
    private final CourseContent content;
    private final Said said;

    ObservationPages(
            CurrentUser user,
            ObservationPageAssembler desk,
            TreeRecordAssembler recordDesk,
            TreeTechniqueAssembler techniqueDesk,
            MeasurementSeries measurementSeries,
            Inputs inputs,
            OnceForms onceForms,
            CourseContent content,
            Said said) {
        this.user = user;
        this.desk = desk;
        this.recordDesk = recordDesk;
        this.techniqueDesk = techniqueDesk;
        this.measurementSeries = measurementSeries;
        this.inputs = inputs;
        this.onceForms = onceForms;
        this.content = content;
        this.said = said;
    }

    @GET
    public Response observations(
            long id,
            @QueryParam("fact") @Nullable String fact,
            @QueryParam("corrects") @Nullable Long corrects,
            @QueryParam("page") @DefaultValue("0") int page) {
        return Answer.page(page(id, fact, page, blank(corrects)));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response observe(long id, MultivaluedMap<String, String> form) {
        form.remove(ASKED_KEYS);
        return onceForms.to(
                form,
                () -> {
                    var seen = inputs.read(form, NewObservation.class);
                    said.ofTree(id, () -> recorded(id, form, seen));
                    return back(id, form);
                },
                problem -> again(id, form, problem));
    }

    private String recorded(long id, MultivaluedMap<String, String> form, NewObservation seen) {
        if (measurementSeries.observe(user.actor(), id, seen)
                instanceof SeriesOutcome.Asked asked) {
            throw askedBack(form, asked.questions());
        }
        return new RecordTeller(content.inForce()).observation(seen, form.getFirst("heightMm"));
    }

    /** Where among the tree's pages a form stands, by its name. */
    private static final Map<String, String> BACK_TO =
            Map.of("reading", "/record#wounds", STAGE, "/techniques#stage");

    /** The form comes back with what is odd beside the field, and a box to say that it is so. */
    private static Refused askedBack(
            MultivaluedMap<String, String> form, List<Question> questions) {
        form.put(ASKED_KEYS, questions.stream().map(Question::key).toList());
        return new Refused(
                new Problem(
                        ASKED,
                        "odd-values",
                        "Look once more",
                        "This looks odd. Nothing is saved yet: correct it, or tick that it is so.",
                        null,
                        questions.stream()
                                .map(asked -> new Fault(asked.field(), asked.question()))
                                .toList()));
    }

    private static FormState blank(@Nullable Long corrects) {
        var blank = FormState.fresh("observation");
        return corrects == null ? blank : blank.with("supersedes", corrects);
    }

    private static String back(long id, MultivaluedMap<String, String> form) {
        return "/trees/"
                + id
                + BACK_TO.getOrDefault(
                        Objects.requireNonNullElse(form.getFirst("form"), ""), "/record#facts");
    }

    /** The page the form stood on: among the techniques, on the record, or that of one fact. */
    private TemplateInstance again(long id, MultivaluedMap<String, String> form, Problem problem) {
        var name = form.getFirst("form");
        if (name == null) {
            return page(
                    id, form.getFirst("fact"), 0, FormState.refused("observation", form, problem));
        }
        var typed = FormState.refused(name, form, problem);
        return name.equals(STAGE)
                ? TreeTechniquePages.Templates.techniques(
                        techniqueDesk.lay(user.actor(), id, typed))
                : TreeRecordPages.Templates.record(recordDesk.lay(user.actor(), id, typed));
    }

    private TemplateInstance page(long id, @Nullable String fact, int page, FormState typed) {
        var asked = fact == null ? null : Fact.find(fact).orElse(null);
        return Templates.observations(desk.lay(user.actor(), id, asked, page, typed));
    }
}
