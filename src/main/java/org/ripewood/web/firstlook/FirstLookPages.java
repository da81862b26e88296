package org.ripewood.web.firstlook;

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
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.firstlook.FirstLooks;
import org.ripewood.firstlook.LookQuestion;
import org.ripewood.firstlook.NewLook;
import org.ripewood.firstlook.OddLook;
import org.ripewood.firstlook.Recorded;
import org.ripewood.firstlook.Walk;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.Question;
import org.ripewood.standing.TreeOnDay;
import org.ripewood.standing.WhatChanged;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.OnceForms;

/**
 * The first look at a tree: one question a screen, each answer recorded at once, and what it
 * changed said on the next screen. What was skipped is kept in the address, for this walk only.
 */
@Path("/trees/{id: \\d{1,18}}/first-look")
@Authenticated
class FirstLookPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance look(FirstLookPageModel sheet);
    }

    private static final String FORM = "look";

    /** Keys of the questions the form comes back with. */
    private static final String ASKED_KEYS = "askedKeys";

    private static final int ASKED = 409;

    private final CurrentUser user;
    private final Trees trees;
    private final FirstLooks firstLooks;
    private final WhatChanged whatChanged;
    private final Inputs inputs;
    private final OnceForms onceForms;

    FirstLookPages(
            CurrentUser user,
            Trees trees,
            FirstLooks firstLooks,
            WhatChanged whatChanged,
            Inputs inputs,
            OnceForms onceForms) {
        this.user = user;
        this.trees = trees;
        this.firstLooks = firstLooks;
        this.whatChanged = whatChanged;
        this.inputs = inputs;
        this.onceForms = onceForms;
    }

    @GET
    public Response look(
            long id,
            @QueryParam("answered") @DefaultValue("") String answered,
            @QueryParam("skipped") @DefaultValue("") String skipped,
            @QueryParam("at") @DefaultValue("") String at,
            @QueryParam("told") @DefaultValue("") String told,
            @QueryParam("before") @DefaultValue("") String before) {
        var look = firstLooks.look(user.actor(), id, Walk.of(answered, skipped));
        var open = look.first().open();
        var question = LookQuestion.find(at).orElse(open.isEmpty() ? null : open.get(0));
        return Answer.page(
                Templates.look(
                        new FirstLookPageModel(
                                look.tree().tree(),
                                look.first(),
                                question,
                                told(told, before, look.tree().day()),
                                FormState.fresh(FORM))));
    }

    private static String told(String code, String before, TreeOnDay day) {
        return LookQuestion.find(code)
                .map(
                        question ->
                                Stream.of(
                                                Recorded.today(question, day),
                                                WhatChanged.since(before, day).news())
                                        .filter(sentence -> !sentence.isEmpty())
                                        .collect(Collectors.joining(" ")))
                .orElse("");
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response answer(long id, MultivaluedMap<String, String> form) {
        form.remove(ASKED_KEYS);
        trees.get(user.actor(), id);
        try {
            return Answer.seeOther(onceForms.path(form, () -> recorded(id, form)));
        } catch (OddLook odd) {
            return again(id, form, asked(form, odd.questions()));
        } catch (Refused refused) {
            return again(id, form, refused.problem());
        }
    }

    private String recorded(long id, MultivaluedMap<String, String> form) {
        var sent = inputs.read(form, NewLook.class);
        var question = FirstLooks.question(sent.question());
        var before = whatChanged.before(user.actor(), id);
        firstLooks.answer(user.actor(), id, sent);
        return "%s&told=%s&before=%s#verdict"
                .formatted(
                        FirstLookPageModel.address(id, walk(form).with(question)),
                        question.code(),
                        before);
    }

    private static Walk walk(MultivaluedMap<String, String> form) {
        return Walk.of(
                Objects.requireNonNullElse(form.getFirst("answered"), ""),
                Objects.requireNonNullElse(form.getFirst("skipped"), ""));
    }

    /** The form comes back with what is odd beside the field, and a box to say that it is so. */
    private static Problem asked(MultivaluedMap<String, String> form, List<Question> questions) {
        form.put(ASKED_KEYS, questions.stream().map(Question::key).toList());
        return new Problem(
                ASKED,
                "odd-values",
                "Look once more",
                "This looks odd. Nothing is saved yet: correct it, or tick that it is so.",
                null,
                questions.stream().map(odd -> new Fault(odd.field(), odd.question())).toList());
    }

    /** A question nobody asks leads on to the next one that is. */
    private Response again(long id, MultivaluedMap<String, String> form, Problem problem) {
        if (problem.status() == 404) {
            throw new Refused(problem);
        }
        var look = firstLooks.look(user.actor(), id, walk(form));
        var open = look.first().open();
        @Nullable LookQuestion question =
                LookQuestion.find(Objects.requireNonNullElse(form.getFirst("question"), ""))
                        .orElse(open.isEmpty() ? null : open.get(0));
        return Answer.page(
                problem.status(),
                Templates.look(
                        new FirstLookPageModel(
                                look.tree().tree(),
                                look.first(),
                                question,
                                "",
                                FormState.refused(FORM, form, problem))));
    }
}
