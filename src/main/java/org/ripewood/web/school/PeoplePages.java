package org.ripewood.web.school;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.accounts.NewGuest;
import org.ripewood.accounts.PasswordLink;
import org.ripewood.accounts.PasswordLinks;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.people.Course;
import org.ripewood.people.Courses;
import org.ripewood.people.NewCourse;
import org.ripewood.people.NewPerson;
import org.ripewood.people.NewRun;
import org.ripewood.people.People;
import org.ripewood.people.Person;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.secondfactor.SecondFactors;
import org.ripewood.signin.SignIns;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.ConfirmForms;
import org.ripewood.web.kit.EditConflicts;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.Label;
import org.ripewood.web.kit.LinkFormat;
import org.ripewood.web.kit.Said;
import org.ripewood.web.kit.TextFormat;

/** The registrar's page: who is at the school, which courses there are, who belongs to them. */
@Path("/people")
@RolesAllowed(Role.REGISTRAR_NAME)
class PeoplePages {

    /**
     * @param words by which people were looked for
     * @param secured those who have a second factor
     */
    record PeopleSheet(
            Paged<Person> people,
            String words,
            Set<Long> invited,
            Set<Long> secured,
            List<Person> wishing,
            List<CourseMembers> courses,
            List<CourseMembers> past,
            List<Role> roles,
            FormState typed,
            @Nullable LinkFormat link) {

        public FormState guest() {
            return typed.orFresh("guest", FormState.fresh("guest"));
        }

        public boolean isInvited(Person person) {
            return invited.contains(person.id());
        }

        public boolean isSecured(Person person) {
            return secured.contains(person.id());
        }

        public FormState person() {
            return typed.orFresh("person", FormState.fresh("person"));
        }

        public FormState course() {
            return typed.orFresh("course", FormState.fresh("course"));
        }

        /** Those that go on, and those that are over. */
        public List<CourseMembers> all() {
            return Stream.concat(courses.stream(), past.stream()).toList();
        }

        /** What stands in the form that holds a course again: it is there once a course. */
        public FormState run(CourseMembers entry) {
            var name = "run-" + entry.course().id();
            return typed.orFresh(name, FormState.fresh(name).with("students", true));
        }

        public boolean isRunRefused() {
            return typed.refused() && typed.form().startsWith("run-");
        }

        public FormState leaving() {
            return typed.orFresh("leaving", FormState.fresh("leaving"));
        }

        public FormState find() {
            return FormState.fresh("find").with("words", words);
        }

        public String query() {
            return find().query(List.of("words"));
        }

        /** Of more people than a page has, one is chosen once the list shows them. */
        public String whoIsOffered() {
            return people.total() == people.items().size() && words.isBlank()
                    ? ""
                    : "Those of the list on this page; find others by name there.";
        }

        public FormState member() {
            return typed.orFresh("member", FormState.fresh("member"));
        }
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance people(PeopleSheet sheet);
    }

    private static final int ROWS = 100;

    private static final String NOBODY_YET =
            "Nobody belongs to it yet: add its instructors and students.";

    private static final String NOBODY_YET_NOT_EVEN_YOU =
            "Nobody belongs to it yet, not even you: add yourself if you teach it, other instructors"
                    + " and the students.";

    private static final MultivaluedMap<String, String> NOTHING = new MultivaluedHashMap<>();

    private final CurrentUser user;
    private final People people;
    private final PersonRegistration register;
    private final Courses schoolCourses;
    private final PasswordLinks links;
    private final Inputs inputs;
    private final Today today;
    private final EditConflicts clashes;
    private final ConfirmForms confirming;
    private final SecondFactors factors;
    private final SignIns signIns;
    private final Said said;

    PeoplePages(
            CurrentUser user,
            People people,
            PersonRegistration register,
            Courses schoolCourses,
            PasswordLinks links,
            Inputs inputs,
            Today today,
            EditConflicts clashes,
            ConfirmForms confirming,
            SecondFactors factors,
            SignIns signIns,
            Said said) {
        this.said = said;
        this.signIns = signIns;
        this.factors = factors;
        this.confirming = confirming;
        this.user = user;
        this.people = people;
        this.register = register;
        this.schoolCourses = schoolCourses;
        this.links = links;
        this.inputs = inputs;
        this.today = today;
        this.clashes = clashes;
    }

    @GET
    public Response people(
            @QueryParam("page") @DefaultValue("0") int page,
            @QueryParam("words") @DefaultValue("") String words) {
        return Answer.page(page(new Asked(page, words), FormState.fresh("none"), null));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response enter(MultivaluedMap<String, String> form) {
        return confirming.first(
                form,
                () ->
                        Answer.to(
                                () -> {
                                    register.enter(
                                            user.actor(), inputs.read(form, NewPerson.class));
                                    return "/people#everybody";
                                },
                                problem -> page(FormState.refused("person", form, problem))));
    }

    /** Enters a person and shows, this once, the link by which they choose their password. */
    @POST
    @Path("invitations")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response invite(MultivaluedMap<String, String> form, @Context UriInfo uri) {
        return confirming.first(
                form,
                () ->
                        Answer.orAgain(
                                () -> shown(links.invite(user.actor(), guest(form)), uri),
                                problem -> page(FormState.refused("guest", form, problem))));
    }

    /** Makes a person another link, and shows it this once. */
    @POST
    @Path("{id: \\d{1,18}}/password-link")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response makeLink(long id, MultivaluedMap<String, String> form, @Context UriInfo uri) {
        return confirming.first(
                form,
                () ->
                        Answer.orAgain(
                                () -> shown(links.make(user.actor(), id), uri),
                                problem -> page(FormState.refused("link", NOTHING, problem))));
    }

    @POST
    @Path("{id: \\d{1,18}}/sign-out")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response endSessions(long id, MultivaluedMap<String, String> form) {
        return confirming.first(
                form,
                () -> {
                    signIns.endAllOf(user.actor(), id, user.session());
                    return Answer.seeOther("/people#everybody");
                });
    }

    @POST
    @Path("sign-out")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response endEverySession(MultivaluedMap<String, String> form) {
        return confirming.first(
                form,
                () -> {
                    signIns.endEverybodys(user.actor(), user.session());
                    return Answer.seeOther("/people#everybody");
                });
    }

    /** For who lost the phone and the sheet: makes the password enough again. */
    @POST
    @Path("{id: \\d{1,18}}/second-factor/reset")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response resetSecondFactor(long id, MultivaluedMap<String, String> form) {
        return confirming.first(
                form,
                () ->
                        Answer.to(
                                () -> {
                                    factors.reset(user.actor(), id);
                                    return "/people#everybody";
                                },
                                problem -> page(FormState.refused("factor", NOTHING, problem))));
    }

    private NewGuest guest(MultivaluedMap<String, String> form) {
        return inputs.read(form, NewGuest.class);
    }

    private TemplateInstance shown(PasswordLink link, UriInfo uri) {
        return page(Asked.ALL, FormState.fresh("none"), LinkFormat.of(link, uri));
    }

    @POST
    @Path("courses")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response openCourse(MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var opened =
                            schoolCourses.open(user.actor(), inputs.read(form, NewCourse.class));
                    said.that(
                            "“%s” is open. %s"
                                    .formatted(
                                            opened.name(),
                                            user.actor().is(Role.INSTRUCTOR)
                                                    ? NOBODY_YET_NOT_EVEN_YOU
                                                    : NOBODY_YET),
                            "/courses/" + opened.id(),
                            "To the course");
                    return "/people";
                },
                problem -> page(FormState.refused("course", form, problem)));
    }

    @POST
    @Path("members")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response join(MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var joining = inputs.read(form, Joining.class);
                    var isNew =
                            schoolCourses.join(
                                    user.actor(),
                                    joining.courseId(),
                                    joining.personId(),
                                    joining.as());
                    said.that(
                            "%s %s %s of “%s”."
                                    .formatted(
                                            people.name(joining.personId()),
                                            isNew ? "is now" : "was already",
                                            TextFormat.small(joining.as()),
                                            courseName(joining.courseId())));
                    return "/people";
                },
                problem -> page(FormState.refused("member", form, problem)));
    }

    @POST
    @Path("members/end")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response leave(MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var leaving = inputs.read(form, Leaving.class);
                    var on = leaving.on() == null ? today.date() : leaving.on();
                    schoolCourses.leave(user.actor(), leaving.courseId(), leaving.personId(), on);
                    said.that(
                            "%s left “%s” on %s."
                                    .formatted(
                                            people.name(leaving.personId()),
                                            courseName(leaving.courseId()),
                                            TextFormat.day(on)));
                    return "/people";
                },
                problem -> page(FormState.refused("leaving", form, problem)));
    }

    @POST
    @Path("courses/{id: \\d{1,18}}/runs")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response runAgain(long id, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var opened =
                            schoolCourses.runAgain(
                                    user.actor(), id, inputs.read(form, NewRun.class));
                    said.that(
                            "“%s” is open, from %s to %s."
                                    .formatted(
                                            opened.name(),
                                            TextFormat.day(opened.startsOn()),
                                            TextFormat.day(opened.endsOn())),
                            "/courses/" + opened.id(),
                            "To the course");
                    return "/people";
                },
                problem -> page(FormState.refused("run-" + id, form, problem)));
    }

    @POST
    @Path("{id: \\d{1,18}}/active")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response setActive(long id, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var said = inputs.read(form, Activity.class);
                    register.setActive(user.actor(), id, said.version(), said.active());
                    return "/people#everybody";
                },
                problem -> page(activity(id, FormState.refused("activity", form, problem))));
    }

    private FormState activity(long id, FormState typed) {
        var person = people.get(user.actor(), id);
        var label =
                new Label(
                        "active",
                        "May %s sign in?".formatted(person.name()),
                        active -> active.equals("true") ? "Yes" : "No");
        var now =
                FormState.fresh("activity")
                        .with("version", person.version())
                        .with("active", person.active());
        return clashes.mend(
                typed, now, new EditConflicts.About("person", id, List.of(label), people::names));
    }

    /** Which people are asked for. */
    private record Asked(int page, String words) {

        private static final Asked ALL = new Asked(0, "");
    }

    private TemplateInstance page(FormState typed) {
        return page(Asked.ALL, typed, null);
    }

    private TemplateInstance page(Asked asked, FormState typed, @Nullable LinkFormat link) {
        var actor = user.actor();
        var found = people.everybody(actor, new PageRequest(asked.page(), ROWS), asked.words());
        var all = schoolCourses.list(actor);
        var members = schoolCourses.memberships(actor, all.stream().map(Course::id).toList());
        var courses =
                all.stream()
                        .map(
                                one ->
                                        new CourseMembers(
                                                one, members.getOrDefault(one.id(), List.of())))
                        .collect(Collectors.partitioningBy(this::isOver));
        var ids = found.items().stream().map(Person::id).toList();
        return Templates.people(
                new PeopleSheet(
                        found,
                        asked.words(),
                        links.invited(ids),
                        factors.among(actor, ids),
                        links.wishing(actor),
                        courses.getOrDefault(false, List.of()),
                        courses.getOrDefault(true, List.of()),
                        List.of(Role.values()),
                        typed,
                        link));
    }

    private String courseName(long courseId) {
        return schoolCourses.get(user.actor(), courseId).name();
    }

    private boolean isOver(CourseMembers entry) {
        return entry.course().over(today.date());
    }
}
