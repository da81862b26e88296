package org.ripewood.api.school;

import static org.ripewood.platform.Role.INSTRUCTOR_NAME;
import static org.ripewood.platform.Role.REGISTRAR_NAME;
import static org.ripewood.platform.Role.STUDENT_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestResponse;
import org.jspecify.annotations.Nullable;
import org.ripewood.accounts.NewGuest;
import org.ripewood.accounts.NewRoles;
import org.ripewood.accounts.PasswordLinks;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.accounts.PersonRoles;
import org.ripewood.api.kit.Answers;
import org.ripewood.assess.Assessments;
import org.ripewood.assess.NewSkillJudgement;
import org.ripewood.assess.SkillJudgement;
import org.ripewood.people.NewPerson;
import org.ripewood.people.People;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.http.Versions;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.secondfactor.SecondFactors;
import org.ripewood.signin.Confirmation;
import org.ripewood.signin.Confirmations;
import org.ripewood.signin.SignIns;

/** PersonRows of the school and the skills they have shown. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "People")
class PeopleResource {

    private final People people;
    private final PersonRegistration register;
    private final PersonRoles roles;
    private final PasswordLinks links;
    private final Assessments assessments;
    private final Confirmations confirmations;
    private final SecondFactors factors;
    private final SignIns signIns;
    private final CurrentUser user;
    private final Inputs inputs;

    PeopleResource(
            People people,
            PersonRegistration register,
            PersonRoles roles,
            PasswordLinks links,
            Assessments assessments,
            Confirmations confirmations,
            SecondFactors factors,
            SignIns signIns,
            CurrentUser user,
            Inputs inputs) {
        this.people = people;
        this.register = register;
        this.roles = roles;
        this.links = links;
        this.assessments = assessments;
        this.confirmations = confirmations;
        this.factors = factors;
        this.signIns = signIns;
        this.user = user;
        this.inputs = inputs;
    }

    @GET
    @Path("people/me")
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "Who is signed in")
    public PersonAnswer me() {
        return PersonAnswer.of(people.get(user.actor(), user.actor().personId()));
    }

    @POST
    @Path("people/me/confirmation")
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(
            summary = "Confirm a session by the password, before what asks for that",
            description =
                    "Whatever answers 403 with the type confirm-first asks for it. The session goes"
                            + " on under the cookie this is answered with.")
    public ConfirmedAnswer confirm(@Nullable Confirmation given) {
        user.requireSession("confirm that it is you");
        return new ConfirmedAnswer(confirmations.confirm(inputs.check(given)));
    }

    @POST
    @Path("people")
    @RolesAllowed(REGISTRAR_NAME)
    @Operation(summary = "Enter a person, with the password for the first sign-in")
    @APIResponseSchema(
            value = PersonAnswer.class,
            responseCode = "201",
            responseDescription = "Entered")
    public RestResponse<PersonAnswer> enter(@Nullable NewPerson person) {
        user.requireSession("enter persons");
        confirmations.require();
        var entered = register.enter(user.actor(), inputs.check(person));
        return Answers.created(
                "people/" + entered.id(), entered.version(), PersonAnswer.of(entered));
    }

    @POST
    @Path("people/invitations")
    @RolesAllowed(REGISTRAR_NAME)
    @Operation(summary = "Enter a person, who chooses their password by a link told this once")
    @APIResponseSchema(
            value = PasswordLinkAnswer.class,
            responseCode = "201",
            responseDescription = "Entered")
    public RestResponse<PasswordLinkAnswer> invite(@Nullable NewGuest guest) {
        user.requireSession("invite persons");
        confirmations.require();
        var link = links.invite(user.actor(), inputs.check(guest));
        return Answers.created("people/" + link.person().id(), PasswordLinkAnswer.of(link));
    }

    @POST
    @Path("people/{id}/password-link")
    @RolesAllowed(REGISTRAR_NAME)
    @Operation(summary = "Make a person another link to choose a password by, told this once")
    @APIResponseSchema(
            value = PasswordLinkAnswer.class,
            responseCode = "201",
            responseDescription = "Made")
    public RestResponse<PasswordLinkAnswer> makeLink(@PathParam("id") long id) {
        user.requireSession("make links to choose a password");
        confirmations.require();
        var link = links.make(user.actor(), id);
        return Answers.created("people/" + id, PasswordLinkAnswer.of(link));
    }

    @POST
    @Path("people/{id}/sign-out")
    @RolesAllowed(REGISTRAR_NAME)
    @Operation(summary = "End every session of a person, who may sign in again")
    public PersonAnswer endSessions(@PathParam("id") long id) {
        user.requireSession("end the sessions of others");
        confirmations.require();
        signIns.endAllOf(user.actor(), id, user.session());
        return PersonAnswer.of(people.get(user.actor(), id));
    }

    @POST
    @Path("people/{id}/second-factor/reset")
    @RolesAllowed(REGISTRAR_NAME)
    @Operation(summary = "Take the second factor from a person who lost app and sheet")
    public PersonAnswer resetSecondFactor(@PathParam("id") long id) {
        user.requireSession("reset a second factor");
        confirmations.require();
        factors.reset(user.actor(), id);
        return PersonAnswer.of(people.get(user.actor(), id));
    }

    @GET
    @Path("people/{id}/roles")
    @RolesAllowed(REGISTRAR_NAME)
    @Operation(summary = "What a person is at the school, with the person's version as ETag")
    public RestResponse<PersonAnswer> roles(@PathParam("id") long id) {
        var person = roles.get(user.actor(), id);
        return Answers.versioned(person.version(), PersonAnswer.of(person));
    }

    @PUT
    @Path("people/{id}/roles")
    @RolesAllowed(REGISTRAR_NAME)
    @Operation(
            summary = "Give roles to a person, or take them",
            description =
                    "All roles the person is to have. 409 while they teach or attend a course in a"
                            + " role that is taken, and for the last registrar.")
    public RestResponse<PersonAnswer> setRoles(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable NewRoles wanted) {
        user.requireSession("give and take roles");
        confirmations.require();
        var version = Versions.required(ifMatch);
        var person = roles.set(user.actor(), id, version, inputs.check(wanted).roles());
        return Answers.versioned(person.version(), PersonAnswer.of(person));
    }

    @GET
    @Path("people/{id}/skills")
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "Judgements of a student's skills, latest first")
    public List<SkillJudgement> skills(@PathParam("id") long id) {
        return assessments.of(user.actor(), id);
    }

    @POST
    @Path("people/{id}/skills")
    @RolesAllowed(INSTRUCTOR_NAME)
    @Operation(summary = "Judge whether a student has shown a lesson's skill")
    @APIResponseSchema(
            value = SkillJudgement.class,
            responseCode = "201",
            responseDescription = "Judged")
    public RestResponse<SkillJudgement> judge(
            @PathParam("id") long id, @Nullable NewSkillJudgement judgement) {
        var judged = assessments.judge(user.actor(), id, inputs.check(judgement));
        return Answers.created("people/" + id + "/skills", judged);
    }
}
