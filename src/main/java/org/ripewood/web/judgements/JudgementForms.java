package org.ripewood.web.judgements;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import org.jspecify.annotations.Nullable;
import org.ripewood.assess.Judged;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.OnceForms;

/** The list of judgements and the form for one, the same for trees and for students. */
@ApplicationScoped
class JudgementForms {

    static final String RUBRIC = "{rubric: [a-z-]{1,60}}";

    private final JudgementPageAssembler desk;
    private final OnceForms onceForms;

    JudgementForms(JudgementPageAssembler desk, OnceForms onceForms) {
        this.desk = desk;
        this.onceForms = onceForms;
    }

    Response judgements(Judged of, int page) {
        var sheet = desk.lay(of, page, FormState.fresh("none"));
        return Answer.page(JudgementPages.Templates.judgements(sheet));
    }

    Response form(Judged of, String rubric, @Nullable Long corrects) {
        return Answer.page(JudgementPages.Templates.judge(desk.form(of, rubric, corrects)));
    }

    Response judge(Judged of, String rubric, MultivaluedMap<String, String> form) {
        return onceForms.to(
                form,
                () -> desk.take(of, rubric, form),
                problem -> {
                    var typed = FormState.refused(JudgementPageAssembler.FORM, form, problem);
                    return JudgementPages.Templates.judge(desk.form(of, rubric, typed));
                });
    }
}
