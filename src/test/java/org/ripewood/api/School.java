package org.ripewood.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.endsWith;

import com.eatthepath.otp.TimeBasedOneTimePasswordGenerator;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Singleton;
import java.io.ByteArrayInputStream;
import java.security.InvalidKeyException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import javax.crypto.spec.SecretKeySpec;
import org.apache.commons.codec.binary.Base32;
import org.ripewood.accounts.ApiToken;
import org.ripewood.accounts.ApiTokens;
import org.ripewood.accounts.CalendarLinks;
import org.ripewood.accounts.NewApiToken;
import org.ripewood.accounts.PasswordLinks;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.aftercare.Aftercare;
import org.ripewood.aftercare.NewWord;
import org.ripewood.aftercare.Saying;
import org.ripewood.asks.Ask;
import org.ripewood.asks.AskKind;
import org.ripewood.asks.Asks;
import org.ripewood.asks.NewAsk;
import org.ripewood.assess.Judged;
import org.ripewood.assess.Judgement;
import org.ripewood.assess.Judgements;
import org.ripewood.assess.NewJudgement;
import org.ripewood.classday.ClassDays;
import org.ripewood.classday.NewTimetable;
import org.ripewood.core.progress.Work;
import org.ripewood.materials.Goods;
import org.ripewood.materials.Materials;
import org.ripewood.materials.NewStock;
import org.ripewood.materials.StockItem;
import org.ripewood.people.Course;
import org.ripewood.people.Courses;
import org.ripewood.people.NewCourse;
import org.ripewood.people.NewPerson;
import org.ripewood.people.Person;
import org.ripewood.people.Samples;
import org.ripewood.photos.NewPhoto;
import org.ripewood.photos.Photo;
import org.ripewood.photos.Photos;
import org.ripewood.photos.Pictures;
import org.ripewood.photos.Viewpoint;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.records.NewObservation;
import org.ripewood.records.NewWound;
import org.ripewood.records.Observations;
import org.ripewood.records.WorksDone;
import org.ripewood.records.Wounds;
import org.ripewood.school.SchoolName;
import org.ripewood.school.Schools;
import org.ripewood.secondfactor.SecondFactors;
import org.ripewood.sessions.NewCancellation;
import org.ripewood.sessions.NewEnrolment;
import org.ripewood.sessions.NewEnrolments;
import org.ripewood.sessions.NewSession;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.Sessions;
import org.ripewood.signin.SignIns;
import org.ripewood.sites.NewSite;
import org.ripewood.sites.Site;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.NewAssignment;
import org.ripewood.steps.NewReport;
import org.ripewood.steps.Reports;
import org.ripewood.steps.Step;
import org.ripewood.trees.HandOver;
import org.ripewood.trees.HandOvers;
import org.ripewood.trees.NewTree;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeSites;
import org.ripewood.trees.Trees;

/** A small school to test on: two courses, each with an instructor and a student. */
@Singleton
class School {

    static final String PASSWORD = "a long enough password";

    private static final AtomicInteger NUMBER = new AtomicInteger();
    private static final AtomicInteger DAYS = new AtomicInteger();

    private final PersonRegistration register;
    private final Courses schoolCourses;
    private final Samples samples;
    private final Schools schools;
    private final Trees trees;
    private final TreeSites treeSites;
    private final Observations observations;
    private final Wounds wounds;
    private final WorksDone worksDone;
    private final HandOvers handOvers;
    private final Sessions sessions;
    private final Asks asks;
    private final Assigner assigner;
    private final Reports reports;
    private final ClassDays days;
    private final Aftercare aftercare;
    private final Materials materials;
    private final Judgements judgements;
    private final Photos photos;
    private final CalendarLinks links;
    private final PasswordLinks passwordLinks;
    private final ApiTokens tokens;
    private final SignIns signIns;
    private final SecondFactors factors;
    private final Map<String, String> ofNobody = new LinkedHashMap<>();
    private final Today today;
    private final Map<Who, Person> persons = new EnumMap<>(Who.class);
    private final Map<Who, String> cookies = new EnumMap<>(Who.class);
    private final Map<Long, String> others = new ConcurrentHashMap<>();

    private static final Duration HALF_ITS_TIME = Duration.ofMinutes(5);
    private Instant confirmedAt = Instant.EPOCH;
    private final Map<Who, String> formTokens = new EnumMap<>(Who.class);

    private Site site;
    private Course course;
    private Course otherCourse;

    /** Every page of a course judges its trees: of more than these a new course takes its place. */
    private static final int TREES_OF_A_COURSE = 40;

    private int treesMade;

    public School(
            PersonRegistration register,
            Courses schoolCourses,
            Samples samples,
            Schools schools,
            Trees trees,
            TreeSites treeSites,
            Observations observations,
            Wounds wounds,
            WorksDone worksDone,
            HandOvers handOvers,
            Sessions sessions,
            Asks asks,
            Assigner assigner,
            Reports reports,
            ClassDays days,
            Aftercare aftercare,
            Materials materials,
            Judgements judgements,
            Photos photos,
            CalendarLinks links,
            PasswordLinks passwordLinks,
            ApiTokens tokens,
            SignIns signIns,
            SecondFactors factors,
            Today today) {
        this.register = register;
        this.schoolCourses = schoolCourses;
        this.samples = samples;
        this.schools = schools;
        this.trees = trees;
        this.treeSites = treeSites;
        this.observations = observations;
        this.wounds = wounds;
        this.worksDone = worksDone;
        this.handOvers = handOvers;
        this.sessions = sessions;
        this.asks = asks;
        this.assigner = assigner;
        this.reports = reports;
        this.days = days;
        this.aftercare = aftercare;
        this.materials = materials;
        this.judgements = judgements;
        this.photos = photos;
        this.links = links;
        this.passwordLinks = passwordLinks;
        this.tokens = tokens;
        this.signIns = signIns;
        this.factors = factors;
        this.today = today;
    }

    /** Enters the school's people, and others in their place where their trees have become many. */
    synchronized School open() {
        if (persons.isEmpty() || treesMade > TREES_OF_A_COURSE) {
            enter();
        }
        if (!cookies.isEmpty()
                && (confirmedAt.isBefore(Instant.now().minus(HALF_ITS_TIME)) || isOut())) {
            forgetSessions();
        }
        if (cookies.isEmpty()) {
            confirmedAt = Instant.now();
        }
        // A sign-in is written down; what comes later has only its own rows to answer for.
        persons.keySet().forEach(this::cookie);
        return this;
    }

    private void enter() {
        // nobody is there yet who could enter the first one
        var first = new Actor(0, Set.of(Role.REGISTRAR));
        persons.computeIfAbsent(Who.REGISTRAR, who -> person(first, Role.REGISTRAR));
        var registrar = actor(Who.REGISTRAR);
        persons.put(Who.STUDENT, person(registrar, Role.STUDENT));
        persons.put(Who.OTHER_STUDENT, person(registrar, Role.STUDENT));
        persons.put(Who.INSTRUCTOR, person(registrar, Role.INSTRUCTOR));
        persons.put(Who.OTHER_INSTRUCTOR, person(registrar, Role.INSTRUCTOR));
        course = course(Who.INSTRUCTOR, Who.STUDENT);
        otherCourse = course(Who.OTHER_INSTRUCTOR, Who.OTHER_STUDENT);
        site = newSite(true);
        treesMade = 0;
        formTokens.clear();
        forgetSessions();
    }

    static String unique(String name) {
        return name + " " + NUMBER.incrementAndGet();
    }

    private Person person(Actor by, Role role) {
        var number = NUMBER.incrementAndGet();
        return register.enter(
                by,
                new NewPerson("Member " + number, "api.person." + number, PASSWORD, Set.of(role)));
    }

    /** A registrar who has asked for nothing yet. */
    Person freshRegistrar() {
        return person(actor(Who.REGISTRAR), Role.REGISTRAR);
    }

    private Course course(Who instructor, Who student) {
        var registrar = actor(Who.REGISTRAR);
        var opened =
                schoolCourses.open(
                        registrar,
                        new NewCourse(
                                unique("Course"),
                                today.date().minusMonths(1),
                                today.date().plusMonths(11)));
        schoolCourses.join(registrar, opened.id(), id(instructor), Role.INSTRUCTOR);
        schoolCourses.join(registrar, opened.id(), id(student), Role.STUDENT);
        return opened;
    }

    Actor actor(Who who) {
        var person = persons.get(who);
        return new Actor(person.id(), person.roles());
    }

    long id(Who who) {
        return persons.get(who).id();
    }

    SchoolName name() {
        return schools.get();
    }

    /** A person in no course yet, for joining one. */
    Person newcomer() {
        return person(actor(Who.REGISTRAR), Role.STUDENT);
    }

    /** A new member of the student's course. */
    Person fellow() {
        var fellow = newcomer();
        schoolCourses.join(actor(Who.REGISTRAR), course.id(), fellow.id(), Role.STUDENT);
        return fellow;
    }

    /** A newcomer who attends the course since today. */
    Person member() {
        var member = newcomer();
        schoolCourses.join(actor(Who.REGISTRAR), course.id(), member.id(), Role.STUDENT);
        return member;
    }

    Course course() {
        return course;
    }

    Course otherCourse() {
        return otherCourse;
    }

    Site site() {
        return site;
    }

    Site newSite() {
        return newSite(false);
    }

    private Site newSite(boolean schoolGround) {
        return treeSites.enter(
                actor(Who.REGISTRAR),
                new NewSite(unique("Yard"), 48.0, 11.0, "UTC", schoolGround, null, null));
    }

    Today today() {
        return today;
    }

    /** A new maple of the student's with nothing on record. */
    public Tree tree() {
        return tree(person(Who.STUDENT));
    }

    private Tree tree(Person keeper) {
        treesMade++;
        return trees.enter(
                new Actor(keeper.id(), keeper.roles()),
                new NewTree(
                        unique("Maple"),
                        "acer_palmatum",
                        keeper.id(),
                        site.id(),
                        today.date().minusYears(4),
                        null,
                        null));
    }

    /** A new tree on which pest control may be assigned. */
    Tree infestedTree() {
        return infestedTree(person(Who.STUDENT));
    }

    /** The same of somebody who attends the course. */
    Tree infestedTree(Person keeper) {
        var tree = tree(keeper);
        see(tree.id(), "pest_level", "3");
        see(tree.id(), "soil_moist", "yes");
        see(tree.id(), "vigour_index", "80");
        return tree;
    }

    /** The instructor's word on a fact, as of today. */
    void see(long treeId, String fact, String value) {
        observations.observe(
                actor(Who.INSTRUCTOR),
                treeId,
                new NewObservation(fact, value, today.date(), null, null, null, null, null));
    }

    /** A new cut of 24 mm on a tree. */
    long freshCut(Tree tree) {
        var cut = new NewWound("left", today.date(), 24.0, 30.0, null, null, false);
        return wounds.add(actor(Who.INSTRUCTOR), tree.id(), cut).id();
    }

    /** A photo of a new tree, sent by its keeper. */
    Photo photo() {
        return photos.add(
                actor(Who.STUDENT),
                tree().id(),
                new NewPhoto(today.date(), Viewpoint.FRONT, "before repotting", null, null),
                new ByteArrayInputStream(Pictures.jpeg()));
    }

    /** A task of shading that root work of today on a tree asks for. */
    String careTask(long treeId) {
        var work = new Work("root_check", today.date(), 0, 0, 0, 0);
        worksDone.record(actor(Who.INSTRUCTOR), treeId, work, null, null);
        return aftercare.of(actor(Who.STUDENT), treeId, today.date()).now().get(0).id();
    }

    void sayDone(long treeId, String task) {
        aftercare.say(actor(Who.STUDENT), treeId, task, Saying.DONE, NewWord.TODAY);
    }

    /** The file behind a new private link of the student's. */
    String calendarFile() {
        return links.make(actor(Who.STUDENT)) + ".ics";
    }

    /** What a new link opens, by which a newcomer chooses a password. */
    String passwordSecret() {
        return passwordLinks.make(actor(Who.REGISTRAR), newcomer().id()).secret();
    }

    /** The secret of a new token that may do whatever its owner may. */
    String token(Who who) {
        return token(who, ApiToken.Scope.READ_AND_WRITE);
    }

    /** The secret of somebody's one token; those of before are ended, or they would be too many. */
    String token(Who who, ApiToken.Scope scope) {
        tokens.of(actor(who)).forEach(old -> tokens.end(actor(who), old.id()));
        return tokens.make(actor(who), new NewApiToken(unique("Token"), scope, 1)).secret();
    }

    /** A new token of the student's. */
    long tokenId() {
        var wanted = new NewApiToken("Weather station", ApiToken.Scope.READ, 30);
        var made = tokens.make(actor(Who.STUDENT), wanted);
        tokens.of(actor(Who.STUDENT)).stream()
                .filter(old -> old.id() != made.token().id())
                .forEach(old -> tokens.end(actor(Who.STUDENT), old.id()));
        return made.token().id();
    }

    /** Somebody new who has a second factor. */
    Person securedNewcomer() {
        var newcomer = newcomer();
        secure(new Actor(newcomer.id(), newcomer.roles()));
        return newcomer;
    }

    private void secure(Actor actor) {
        var secret = new Base32().decode(factors.begin(actor).secret());
        try {
            var key = new SecretKeySpec(secret, "HmacSHA1");
            var codes = new TimeBasedOneTimePasswordGenerator();
            factors.turnOn(
                    actor, codes.generateOneTimePasswordString(key, Instant.now(), Locale.ROOT));
        } catch (InvalidKeyException e) {
            throw new IllegalStateException(e);
        }
    }

    /** From now on nobody's requests carry a sign-in that waits for its code, wherever they can. */
    void nobodyWaitsForACode() {
        var half =
                given().redirects()
                        .follow(false)
                        .formParam("j_username", securedNewcomer().login())
                        .formParam("j_password", PASSWORD)
                        .post("/j_security_check")
                        .then()
                        .header("Location", endsWith("/sign-in/code"))
                        .extract()
                        .cookie("ripewood-half");
        for (var name : List.of("ripewood-half", "ripewood-session", "ripewood-browser")) {
            ofNobody.put(name, half);
        }
    }

    void nobodyIsNobodyAgain() {
        ofNobody.clear();
    }

    /** Another session of the student's than the one the tests go on with. */
    long sessionId() {
        signIn(persons.get(Who.STUDENT).login());
        return signIns.of(actor(Who.STUDENT)).get(0).sessionId();
    }

    /** A question of the tree's keeper. */
    Ask ask(Tree tree) {
        var keeper = new Actor(tree.keeperId(), Set.of(Role.STUDENT));
        return asks.ask(
                keeper,
                tree.id(),
                new NewAsk("pest_control", AskKind.QUESTION, "Which soap do I take?"));
    }

    Step assignedStep() {
        return assigner.assign(
                actor(Who.INSTRUCTOR),
                infestedTree().id(),
                new NewAssignment("pest_control", null, null, null, null));
    }

    Step reportedStep() {
        var step = assignedStep();
        return reports.report(
                actor(Who.STUDENT),
                step.id(),
                step.version(),
                new NewReport(
                        today.date(),
                        "Washed off; 3 scales left on 20 shoots.",
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null));
    }

    /** A draft of the instructor's on a new tree. */
    Judgement draft() {
        var judgement = new NewJudgement("root-flare", 2, today.date(), null, true, null);
        return judgements.begin(actor(Who.INSTRUCTOR), Judged.tree(tree().id()), judgement);
    }

    Judgement signed(Judgement draft) {
        return judgements.sign(actor(Who.INSTRUCTOR), draft.id(), draft.version());
    }

    /** There is one student, and one draft of a judge by a rubric at a time. */
    void discardDrafts() {
        var instructor = actor(Who.INSTRUCTOR);
        judgements
                .findDraft(instructor, Judged.student(id(Who.STUDENT)), "wiring-skill")
                .ifPresent(draft -> judgements.discard(instructor, draft.id(), draft.version()));
    }

    Session session() {
        return session(LocalTime.of(12, 30));
    }

    /** From half past nine, with a lesson of two hours. */
    Session session(LocalTime endsAt) {
        return sessions.set(
                actor(Who.INSTRUCTOR),
                new NewSession(
                        course.id(),
                        dayAhead(),
                        LocalTime.of(9, 30),
                        endsAt,
                        "wiring-branches",
                        "Bench house",
                        List.of(id(Who.INSTRUCTOR))));
    }

    /** A day on which the instructors teach nothing else. */
    LocalDate dayAhead() {
        return today.date().plusDays(DAYS.incrementAndGet());
    }

    Session enrolledSession() {
        return sessions.enrol(
                actor(Who.INSTRUCTOR),
                session().id(),
                new NewEnrolment(id(Who.STUDENT), tree().id(), "3"));
    }

    /** One with room for a tree, and two that want to come. */
    Session fullSession() {
        var instructor = actor(Who.INSTRUCTOR);
        var set =
                sessions.set(
                        instructor,
                        new NewSession(
                                course.id(),
                                dayAhead(),
                                LocalTime.of(9, 30),
                                LocalTime.of(12, 30),
                                null,
                                "Bench house",
                                List.of(id(Who.INSTRUCTOR)),
                                1));
        var trees = List.of(tree().id(), tree().id());
        return sessions.enrolMany(instructor, set.id(), new NewEnrolments(trees));
    }

    /** One of today with a student enrolled; those of before are called off, or they overlap. */
    Session sessionToday() {
        var instructor = actor(Who.INSTRUCTOR);
        for (var earlier : sessions.ofCourse(instructor, course.id(), today.date())) {
            if (earlier.heldOn().equals(today.date()) && earlier.held()) {
                sessions.cancel(
                        instructor,
                        earlier.id(),
                        sessions.get(instructor, earlier.id()).version(),
                        new NewCancellation("It is over."));
            }
        }
        var session =
                sessions.set(
                        instructor,
                        new NewSession(
                                course.id(),
                                today.date(),
                                LocalTime.of(9, 30),
                                LocalTime.of(12, 30),
                                null,
                                "Bench house",
                                List.of(id(Who.INSTRUCTOR))));
        return sessions.enrol(
                instructor, session.id(), new NewEnrolment(id(Who.STUDENT), tree().id(), "3"));
    }

    StockItem stocked(NewStock stock) {
        return materials.enter(actor(Who.INSTRUCTOR), stock, null);
    }

    /** Two of a tool, counted today. */
    StockItem tools() {
        return materials.enter(actor(Who.INSTRUCTOR), Goods.tool(), 2.0);
    }

    /** A session to which a student brings a tree with work to do, laid out. */
    Session workingSession() {
        var step = assignedStep();
        var session =
                sessions.enrol(
                        actor(Who.INSTRUCTOR),
                        session().id(),
                        new NewEnrolment(id(Who.STUDENT), step.treeId(), "3"));
        days.layOut(
                actor(Who.INSTRUCTOR),
                session.id(),
                new NewTimetable(null, null, null, null, null, new NewTimetable.Lesson(null, 0)));
        return session;
    }

    /** A request as somebody; redirects are answers here. */
    RequestSpecification as(Who who) {
        var request = given().redirects().follow(false).header("X-Ripewood", "1");
        return who == Who.ANONYMOUS ? request : request.cookie("ripewood-session", cookie(who));
    }

    /** A request as somebody who is in no column of the role table. */
    RequestSpecification as(Person person) {
        return given().redirects()
                .follow(false)
                .header("X-Ripewood", "1")
                .cookie(
                        "ripewood-session",
                        others.computeIfAbsent(person.id(), id -> signIn(person.login())));
    }

    /** The same over a connection that is kept. */
    Line lineOf(Person person) {
        return new Line()
                .header("X-Ripewood", "1")
                .formToken(as(person).get("/rehearsal/open").cookie("ripewood-csrf"))
                .cookie(
                        "ripewood-session",
                        others.computeIfAbsent(person.id(), id -> signIn(person.login())));
    }

    /** Takes an instructor out of the student's course. */
    void endMembership(Person teacher) {
        schoolCourses.leave(actor(Who.REGISTRAR), course.id(), teacher.id(), today.date());
    }

    /** Gives a tree to the student of the other course. */
    void handOn(long treeId) {
        var registrar = actor(Who.REGISTRAR);
        handOvers.handOver(
                registrar,
                treeId,
                trees.get(registrar, treeId).version(),
                new HandOver(id(Who.OTHER_STUDENT), today.date()));
    }

    Person person(Who who) {
        return persons.get(who);
    }

    /** Somebody new who belongs to the student's course. */
    public Person teacher(Role... roles) {
        var number = NUMBER.incrementAndGet();
        var entered =
                register.enter(
                        actor(Who.REGISTRAR),
                        new NewPerson(
                                "Member " + number,
                                "api.person." + number,
                                PASSWORD,
                                Set.of(roles)));
        schoolCourses.join(actor(Who.REGISTRAR), course.id(), entered.id(), Role.INSTRUCTOR);
        return entered;
    }

    /** The same over a connection that is kept. */
    Line lineOf(Who who) {
        var line = new Line().header("X-Ripewood", "1").formToken(formToken(who));
        if (who == Who.ANONYMOUS) {
            ofNobody.forEach(line::cookie);
        }
        return who == Who.ANONYMOUS ? line : line.cookie("ripewood-session", cookie(who));
    }

    /** What the forms on a page of theirs carry; it outlasts a session. */
    synchronized String formToken(Who who) {
        return formTokens.computeIfAbsent(
                who, key -> as(key).get("/rehearsal/open").cookie("ripewood-csrf"));
    }

    synchronized String cookie(Who who) {
        return cookies.computeIfAbsent(
                who, key -> confirmed(signIn(persons.get(key).login()), PASSWORD));
    }

    /** Whether another test ended everybody's sessions. */
    private boolean isOut() {
        return as(Who.REGISTRAR).get("/api/v1/people/me").statusCode() != 200;
    }

    /** The session's next cookie, once it has shown that it is its owner's. */
    static String confirmed(String session, String password) {
        return given().cookie("ripewood-session", session)
                .header("X-Ripewood", "1")
                .contentType("application/json")
                .body(Map.of("password", password))
                .post("/api/v1/people/me/confirmation")
                .then()
                .statusCode(200)
                .extract()
                .cookie("ripewood-session");
    }

    /** The next request signs in anew, after one that signed out. */
    /** A course that is marked as a sample, as after a file was brought in. */
    long sample() {
        var registrar = actor(Who.REGISTRAR);
        var made =
                schoolCourses.open(
                        registrar,
                        new NewCourse(unique("Sample"), today.date(), today.date().plusDays(1)));
        samples.mark(registrar, made.id(), null, List.of());
        return made.id();
    }

    synchronized void forgetSessions() {
        cookies.clear();
    }

    private static String signIn(String login) {
        return given().redirects()
                .follow(false)
                .formParam("j_username", login)
                .formParam("j_password", PASSWORD)
                .post("/j_security_check")
                .then()
                .statusCode(302)
                .extract()
                .cookie("ripewood-session");
    }
}
