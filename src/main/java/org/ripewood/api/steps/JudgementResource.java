package org.ripewood.api.steps;

import static org.ripewood.platform.Role.INSTRUCTOR_NAME;
import static org.ripewood.platform.Role.REGISTRAR_NAME;
import static org.ripewood.platform.Role.STUDENT_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestResponse;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.Answers;
import org.ripewood.api.kit.Asked;
import org.ripewood.assess.Agreements;
import org.ripewood.assess.Judged;
import org.ripewood.assess.Judgement;
import org.ripewood.assess.Judgements;
import org.ripewood.assess.NewJudgement;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Paged;
import org.ripewood.platform.Today;
import org.ripewood.platform.http.Versions;
import org.ripewood.platform.once.Idempotent;
import org.ripewood.platform.problems.Inputs;

/** Judgements by rubric, of trees and of students, and how far their judges agree. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Judgements")
class JudgementResource {

    private final Judgements judgements;
    private final Agreements agreements;
    private final CurrentUser user;
    private final Inputs inputs;
    private final Today today;

    JudgementResource(
            Judgements judgements,
            Agreements agreements,
            CurrentUser user,
            Inputs inputs,
            Today today) {
        this.judgements = judgements;
        this.agreements = agreements;
        this.user = user;
        this.inputs = inputs;
        this.today = today;
    }

    @GET
    @Path("trees/{id}/judgements")
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "Judgements of a tree, latest first, and the caller's own drafts")
    public Paged<JudgementAnswer> ofTree(
            @PathParam("id") long id,
            @QueryParam("page") @Nullable String page,
            @QueryParam("size") @Nullable String size) {
        return list(Judged.tree(id), page, size);
    }

    @POST
    @Idempotent
    @Path("trees/{id}/judgements")
    @RolesAllowed(INSTRUCTOR_NAME)
    @Operation(summary = "Draft a judgement of a tree")
    @APIResponseSchema(
            value = JudgementAnswer.class,
            responseCode = "201",
            responseDescription = "Kept as a draft")
    public RestResponse<JudgementAnswer> draftOfTree(
            @PathParam("id") long id, @Nullable NewJudgement judgement) {
        return begin(Judged.tree(id), judgement);
    }

    @GET
    @Path("people/{id}/judgements")
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "Judgements of a student, latest first, and the caller's own drafts")
    public Paged<JudgementAnswer> ofStudent(
            @PathParam("id") long id,
            @QueryParam("page") @Nullable String page,
            @QueryParam("size") @Nullable String size) {
        return list(Judged.student(id), page, size);
    }

    @POST
    @Idempotent
    @Path("people/{id}/judgements")
    @RolesAllowed(INSTRUCTOR_NAME)
    @Operation(summary = "Draft a judgement of a student's skill")
    @APIResponseSchema(
            value = JudgementAnswer.class,
            responseCode = "201",
            responseDescription = "Kept as a draft")
    public RestResponse<JudgementAnswer> draftOfStudent(
            @PathParam("id") long id, @Nullable NewJudgement judgement) {
        return begin(Judged.student(id), judgement);
    }

    @GET
    @Path("judgements/{id}")
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "A judgement, with its version as ETag")
    public RestResponse<JudgementAnswer> get(
            @PathParam("id") long id, @HeaderParam("If-None-Match") @Nullable String known) {
        var judgement = judgements.get(user.actor(), id);
        return Answers.versioned(known, judgement.version(), JudgementAnswer.of(judgement));
    }

    @PUT
    @Path("judgements/{id}")
    @RolesAllowed(INSTRUCTOR_NAME)
    @Operation(summary = "Change a draft of one's own")
    public RestResponse<JudgementAnswer> change(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable NewJudgement judgement) {
        var version = Versions.required(ifMatch);
        return answer(judgements.change(user.actor(), id, version, inputs.check(judgement)));
    }

    @DELETE
    @Path("judgements/{id}")
    @RolesAllowed(INSTRUCTOR_NAME)
    @Operation(summary = "Throw a draft of one's own away")
    public JudgementAnswer discard(
            @PathParam("id") long id, @HeaderParam("If-Match") @Nullable String ifMatch) {
        var version = Versions.required(ifMatch);
        return JudgementAnswer.of(judgements.discard(user.actor(), id, version));
    }

    @POST
    @Path("judgements/{id}/signature")
    @RolesAllowed(INSTRUCTOR_NAME)
    @Operation(
            summary = "Sign a draft of one's own",
            description =
                    "It is never edited after that. One that wants a second judge stays hidden, and"
                            + " counts for nothing, until another instructor has signed one of the"
                            + " same within 30 days, or until it is opened.")
    public RestResponse<JudgementAnswer> sign(
            @PathParam("id") long id, @HeaderParam("If-Match") @Nullable String ifMatch) {
        return answer(judgements.sign(user.actor(), id, Versions.required(ifMatch)));
    }

    @POST
    @Path("judgements/{id}/opening")
    @RolesAllowed(INSTRUCTOR_NAME)
    @Operation(summary = "Show a signed judgement without waiting for a second judge any longer")
    public RestResponse<JudgementAnswer> open(
            @PathParam("id") long id, @HeaderParam("If-Match") @Nullable String ifMatch) {
        return answer(judgements.open(user.actor(), id, Versions.required(ifMatch)));
    }

    @GET
    @Path("agreement")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(
            summary = "How far judges agree, rubric by rubric",
            description =
                    "Of judgements from the first day to the last, the last two years unless said. unswayed=true"
                            + " compares only what somebody judged without seeing another's level.")
    public List<AgreementAnswer> agreement(
            @QueryParam("from") @Nullable String from,
            @QueryParam("until") @Nullable String until,
            @QueryParam("unswayed") @Nullable String unswayed) {
        var last = Asked.day("until", until, today.last());
        var first = Asked.day("from", from, last.minusYears(2));
        return agreements
                .between(user.actor(), first, last, Asked.yes("unswayed", unswayed))
                .stream()
                .map(AgreementAnswer::of)
                .toList();
    }

    private Paged<JudgementAnswer> list(Judged of, @Nullable String page, @Nullable String size) {
        return JudgementAnswer.of(judgements.list(user.actor(), of, Asked.page(page, size)));
    }

    private RestResponse<JudgementAnswer> begin(Judged of, @Nullable NewJudgement judgement) {
        var begun = judgements.begin(user.actor(), of, inputs.check(judgement));
        return Answers.created(
                "judgements/" + begun.id(), begun.version(), JudgementAnswer.of(begun));
    }

    private static RestResponse<JudgementAnswer> answer(Judgement judgement) {
        return Answers.versioned(judgement.version(), JudgementAnswer.of(judgement));
    }
}
