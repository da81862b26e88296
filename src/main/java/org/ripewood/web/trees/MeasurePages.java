package org.ripewood.web.trees;

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
import java.util.ArrayList;
import java.util.List;
import org.ripewood.course.CourseContent;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.MeasurementSeries;
import org.ripewood.records.NewSeries;
import org.ripewood.records.Question;
import org.ripewood.records.SeriesOutcome;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.OnceForms;
import org.ripewood.web.kit.Said;

/** Measuring a tree at the bench: one form for all that is measured in one go. */
@Path("/trees/{id: \\d{1,18}}/measure")
@Authenticated
class MeasurePages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance measure(MeasurePageModel sheet);
    }

    private static final int ASKED = 409;
    private static final int NOT_FOUND = 404;

    private final CurrentUser user;
    private final MeasurePageAssembler desk;
    private final Trees trees;
    private final MeasurementSeries measurementSeries;
    private final Inputs inputs;
    private final OnceForms onceForms;
    private final CourseContent content;
    private final Said said;

    /** Nothing was stored, and so the form's key is free still. */
    private static final class AskedBack extends RuntimeException {

        private final transient List<Question> questions;

        AskedBack(List<Question> questions) {
            super("some values look odd", null, false, false);
            this.questions = List.copyOf(questions);
        }
    }

    MeasurePages(
            CurrentUser user,
            MeasurePageAssembler desk,
            Trees trees,
            MeasurementSeries measurementSeries,
            Inputs inputs,
            OnceForms onceForms,
            CourseContent content,
            Said said) {
        this.user = user;
        this.desk = desk;
        this.trees = trees;
        this.measurementSeries = measurementSeries;
        this.inputs = inputs;
        this.onceForms = onceForms;
        this.content = content;
        this.said = said;
    }

    @GET
    public Response measure(long id) {
        return Answer.page(page(id, desk.fresh(id), List.of()));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response record(long id, MultivaluedMap<String, String> form) {
        trees.get(user.actor(), id);
        try {
            return record(id, form, inputs.read(form, MeasureForm.class));
        } catch (Refused refused) {
            return again(id, form, refused.problem());
        }
    }

    private Response record(long id, MultivaluedMap<String, String> form, MeasureForm typed) {
        var rows = new BenchSeries(typed);
        try {
            return Answer.seeOther(onceForms.path(form, () -> stored(id, typed, readable(rows))));
        } catch (AskedBack odd) {
            return ask(id, form, odd.questions.stream().map(rows::atRow).toList());
        } catch (Refused refused) {
            return again(id, form, rows.atRows(refused.problem()));
        }
    }

    private String stored(long id, MeasureForm typed, NewSeries series) {
        said.ofTree(
                id,
                () -> {
                    if (measurementSeries.record(user.actor(), id, series)
                            instanceof SeriesOutcome.Asked asked) {
                        throw new AskedBack(asked.questions());
                    }
                    return new RecordTeller(content.inForce()).series(typed);
                });
        return "/trees/" + id + "/record#facts";
    }

    /** The series, when every row could be read; all that is wrong with it otherwise. */
    private NewSeries readable(BenchSeries rows) {
        var faults = new ArrayList<>(rows.faults());
        try {
            inputs.check(rows.series());
        } catch (Refused refused) {
            faults.addAll(refused.problem().faults());
        }
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults);
        }
        return rows.series();
    }

    private Response ask(long id, MultivaluedMap<String, String> form, List<Question> questions) {
        var problem =
                new Problem(
                        ASKED,
                        "odd-values",
                        "Look once more",
                        "Some values differ from what was there before. Nothing is saved yet:"
                                + " correct each, or tick that it is so.",
                        null,
                        List.of());
        var typed = FormState.refused(MeasurePageAssembler.FORM, form, problem);
        return Answer.page(ASKED, page(id, typed, questions));
    }

    private Response again(long id, MultivaluedMap<String, String> form, Problem problem) {
        if (problem.status() == NOT_FOUND) {
            throw new Refused(problem);
        }
        var typed = FormState.refused(MeasurePageAssembler.FORM, form, problem);
        return Answer.page(problem.status(), page(id, typed, List.of()));
    }

    private TemplateInstance page(long id, FormState typed, List<Question> questions) {
        return Templates.measure(desk.lay(user.actor(), id, typed, questions));
    }
}
