package org.ripewood.audit;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.audit.Change.Kind;
import org.ripewood.people.NewPerson;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;

/** Who did what is written down with what they did, and told to registrars only. */
@QuarkusTest
class AuditTest {

    private static final AtomicInteger NEXT = new AtomicInteger();
    private static final Actor OFFICE = new Actor(-1, Set.of(Role.REGISTRAR));
    private static final AuditQuestion EVERYTHING = new AuditQuestion(null, null, null, null);
    private static final String PASSWORD = "quite a long password";

    @Inject Audit audit;
    @Inject PersonRegistration register;
    @Inject Today today;

    private Person registrar;

    @BeforeEach
    void somebodyIsEntered() {
        registrar = entered(Role.REGISTRAR);
    }

    @Test
    void whatIsWrittenByARequestIsToldWithWhoAndByWhichDoor() {
        var session = confirmed();
        var made = enterByApi(session, "by.request." + NEXT.incrementAndGet());
        made.then().statusCode(201);
        long id = made.jsonPath().getLong("id");

        var entry = latest(1).get(0);
        assertThat(entry.personId()).isEqualTo(registrar.id());
        assertThat(entry.door()).isEqualTo("POST /api/v1/people");
        assertThat(entry.deed()).isEqualTo(Deed.CHANGED);
        assertThat(entry.changes()).containsExactly(new Change("person", Kind.INSERTED, id, id, 1));
    }

    @Test
    void whatIsRefusedOrRolledBackIsNotTold() {
        var session = confirmed();
        var before = latest(1);
        enterByApi(session, registrar.login()).then().statusCode(400);
        var thought =
                catchThrowableOfType(
                        IllegalStateException.class,
                        () ->
                                QuarkusTransaction.requiringNew()
                                        .run(
                                                () -> {
                                                    entered(Role.STUDENT);
                                                    throw new IllegalStateException("no");
                                                }));
        assertThat(thought).hasMessage("no");
        assertThat(latest(1)).isEqualTo(before);
    }

    @Test
    void whatIsDoneWithoutARequestIsToldAsImport() {
        var student = entered(Role.STUDENT);
        var entry = latest(1).get(0);
        assertThat(entry.personId()).isNull();
        assertThat(entry.door()).isEqualTo("import");
        assertThat(entry.changes())
                .containsExactly(
                        new Change("person", Kind.INSERTED, student.id(), student.id(), 1));
    }

    @Test
    void manyChangesOfOneTransactionAreOneEntry() {
        var before = latest(1).get(0).id();
        QuarkusTransaction.requiringNew()
                .run(
                        () -> {
                            for (int i = 0; i < 60; i++) {
                                entered(Role.STUDENT);
                            }
                        });
        var entry = latest(1).get(0);
        assertThat(entry.id()).isEqualTo(before + 1);
        assertThat(entry.changes()).hasSizeBetween(1, 3);
        assertThat(entry.changes().stream().mapToInt(Change::amount).sum()).isEqualTo(60);
    }

    @Test
    void aRowThatIsChangedIsTold() {
        var student = entered(Role.STUDENT);
        register.setActive(OFFICE, student.id(), student.version(), false);
        assertThat(latest(1).get(0).changes())
                .contains(new Change("person", Kind.CHANGED, student.id(), student.id(), 1));
    }

    @Test
    void signingInAndOutIsTold() {
        var session = signIn(registrar.login(), PASSWORD).getCookie("ripewood-session");
        var in = latest(1).get(0);
        assertThat(in.deed()).isEqualTo(Deed.SIGNED_IN);
        assertThat(in.personId()).isEqualTo(registrar.id());
        assertThat(in.door()).isEqualTo("POST /j_security_check");
        post("/sign-out", session).then().statusCode(303);
        var out = latest(1).get(0);
        assertThat(out.deed()).isEqualTo(Deed.SIGNED_OUT);
        assertThat(out.personId()).isEqualTo(registrar.id());
        assertThat(out.door()).isEqualTo("POST /sign-out");
    }

    @Test
    void wrongSignInsAreToldAndWhenTriesAreHeld() {
        for (int i = 0; i < 10; i++) {
            signIn(registrar.login(), "guess number " + i);
        }
        var told = latest(11);
        assertThat(told.get(0).deed()).isEqualTo(Deed.SIGN_IN_PAUSED);
        assertThat(told.subList(1, 11))
                .allSatisfy(
                        entry -> {
                            assertThat(entry.deed()).isEqualTo(Deed.SIGN_IN_FAILED);
                            assertThat(entry.personId()).isEqualTo(registrar.id());
                        });
        signIn(registrar.login(), PASSWORD);
        assertThat(latest(1)).isEqualTo(told.subList(0, 1));
        signIn("nobody.of.that.name", PASSWORD);
        assertThat(latest(1).get(0).personId()).isNull();
    }

    @Test
    void tokensMadeAndEndedAreTold() {
        var session = confirmed();
        post("/account/tokens", session, "name", "A program", "scope", "READ", "days", "9");
        var made = latest(1).get(0);
        assertThat(made.deed()).isEqualTo(Deed.TOKEN_MADE);
        assertThat(made.personId()).isEqualTo(registrar.id());
        assertThat(made.changes()).hasSize(1);
        post("/account/tokens/" + made.changes().get(0).firstId() + "/end", session)
                .then()
                .statusCode(303);
        assertThat(latest(1).get(0).deed()).isEqualTo(Deed.TOKEN_ENDED);
    }

    @Test
    void entriesAreFoundByPersonDayAndThing() {
        signIn(registrar.login(), PASSWORD);
        var student = entered(Role.STUDENT);
        var day = today.moment().atZone(today.zone()).toLocalDate();
        assertThat(entries(new AuditQuestion(registrar.id(), day, day, null)))
                .isNotEmpty()
                .allMatch(entry -> entry.personId() == registrar.id());
        assertThat(entries(new AuditQuestion(registrar.id(), day.plusDays(1), null, null)))
                .isEmpty();
        assertThat(entries(new AuditQuestion(registrar.id(), null, day.minusDays(1), null)))
                .isEmpty();
        var persons = entries(new AuditQuestion(null, day, day, "person"));
        assertThat(persons.get(0).changes())
                .contains(new Change("person", Kind.INSERTED, student.id(), student.id(), 1));
        assertThat(persons)
                .allMatch(
                        entry ->
                                entry.changes().stream()
                                        .anyMatch(change -> change.thing().equals("person")));
        assertThat(status(new AuditQuestion(null, null, null, "no_such_thing"))).isEqualTo(400);
    }

    @Test
    void onlyRegistrarsReadIt() {
        var instructor = new Actor(1, Set.of(Role.INSTRUCTOR, Role.STUDENT));
        assertThat(
                        catchThrowableOfType(
                                        Refused.class,
                                        () ->
                                                audit.entries(
                                                        instructor,
                                                        EVERYTHING,
                                                        new PageRequest(0, 10)))
                                .problem()
                                .status())
                .isEqualTo(403);
    }

    @Test
    void theApiAndThePageTellTheSame() {
        var session = signIn(registrar.login(), PASSWORD).getCookie("ripewood-session");
        given().cookie("ripewood-session", session)
                .get("/api/v1/audit?size=1&person=" + registrar.id())
                .then()
                .statusCode(200)
                .body("items[0].deed", equalTo("SIGNED_IN"));
        var page =
                given().cookie("ripewood-session", session)
                        .get("/audit?login=" + registrar.login())
                        .asString();
        assertThat(page).contains("Signed in").contains("POST /j_security_check");
        given().cookie("ripewood-session", session)
                .get("/audit?login=nobody.of.that.name")
                .then()
                .statusCode(400);
        given().cookie("ripewood-session", session)
                .get("/audit?from=2024-13-01")
                .then()
                .statusCode(400);
    }

    @Test
    void whatIsWrittenIsNotToldItself() {
        assertThat(audit.things())
                .contains("person", "tree", "site_reading", "step")
                .doesNotContain("audit_entry", "sign_in_session");
    }

    private Person entered(Role role) {
        var login = "audited." + NEXT.incrementAndGet();
        return register.enter(OFFICE, new NewPerson("Ines Holt", login, PASSWORD, Set.of(role)));
    }

    private List<AuditEntry> latest(int many) {
        return audit.entries(OFFICE, EVERYTHING, new PageRequest(0, many)).items();
    }

    private List<AuditEntry> entries(AuditQuestion question) {
        return audit.entries(OFFICE, question, new PageRequest(0, 50)).items();
    }

    private int status(AuditQuestion question) {
        return catchThrowableOfType(Refused.class, () -> entries(question)).problem().status();
    }

    private static Response enterByApi(String session, String login) {
        return given().cookie("ripewood-session", session)
                .header("X-Ripewood", "1")
                .contentType("application/json")
                .body(
                        """
                        {"name": "New", "login": "%s", "password": "quite a long password",
                         "roles": ["STUDENT"]}"""
                                .formatted(login))
                .post("/api/v1/people");
    }

    /** A session of the registrar's that has shown that it is theirs. */
    private String confirmed() {
        return given().cookies(signIn(registrar.login(), PASSWORD).getCookies())
                .header("X-Ripewood", "1")
                .contentType("application/json")
                .body(Map.of("password", PASSWORD))
                .post("/api/v1/people/me/confirmation")
                .getCookie("ripewood-session");
    }

    private static Response signIn(String login, String password) {
        return given().redirects()
                .follow(false)
                .formParam("j_username", login)
                .formParam("j_password", password)
                .post("/j_security_check");
    }

    private static Response post(String path, String session, String... fields) {
        var token =
                given().cookie("ripewood-session", session)
                        .get("/rehearsal/open")
                        .getCookie("ripewood-csrf");
        var request =
                given().redirects()
                        .follow(false)
                        .cookie("ripewood-session", session)
                        .cookie("ripewood-csrf", token)
                        .contentType("application/x-www-form-urlencoded; charset=UTF-8")
                        .formParam("csrf-token", token);
        for (int i = 0; i < fields.length; i += 2) {
            request.formParam(fields[i], fields[i + 1]);
        }
        return request.post(path);
    }
}
