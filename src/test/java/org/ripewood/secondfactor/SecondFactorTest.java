package org.ripewood.secondfactor;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.not;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.accounts.ApiToken;
import org.ripewood.accounts.ApiTokens;
import org.ripewood.accounts.NewApiToken;
import org.ripewood.accounts.PasswordLinks;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.audit.Audit;
import org.ripewood.audit.AuditQuestion;
import org.ripewood.people.BrowserSession;
import org.ripewood.people.NewPerson;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.signin.HalfSignIns;
import org.ripewood.signin.SignInPause;
import org.ripewood.signin.SignIns;
import org.ripewood.web.Visitor;

/** Signing in with a code beside the password (OWASP ASVS 5.0.0, 6.3.3 and 6.5). */
@Tag("one-database")
@QuarkusTest
class SecondFactorTest {

    private static final AtomicInteger NEXT = new AtomicInteger();
    private static final Actor OFFICE = new Actor(-1, Set.of(Role.REGISTRAR));
    private static final String PASSWORD = "kiln fern marble";

    @Inject PersonRegistration register;
    @Inject PeopleUnchecked peopleUnchecked;
    @Inject SecondFactors factors;
    @Inject SecondFactorRescue rescue;
    @Inject SecondFactorRows rows;
    @Inject SealedSecrets sealed;
    @Inject HalfSignIns halfSignIns;
    @Inject PasswordLinks links;
    @Inject ApiTokens tokens;
    @Inject Audit audit;

    private Person person;
    private Actor actor;
    private List<String> sheet;

    @BeforeEach
    void somebodyHasASecondFactor() {
        var login = "two.steps." + NEXT.incrementAndGet();
        person =
                register.enter(
                        OFFICE, new NewPerson("Enna Rell", login, PASSWORD, Set.of(Role.STUDENT)));
        actor = new Actor(person.id(), person.roles());
        factors.begin(actor);
        sheet = factors.turnOn(actor, code(0));
        // the code it was turned on with has counted
        forgetSteps();
    }

    @Test
    @DisplayName("6.3.3 · The password alone opens no session; password and code do")
    void bothAreAskedFor() {
        var half = password();
        half.then().statusCode(303).header("Location", endsWith("/sign-in/code"));
        assertThat(half.getCookie(BrowserSession.COOKIE)).isNull();
        BrowserSession.get("/sign-in/code", "")
                .then()
                .statusCode(200)
                .body(containsString("+code"));

        var done = code(half, code(0));
        done.then().statusCode(302).header("Location", endsWith("/"));
        var session = done.getCookie(BrowserSession.COOKIE);
        BrowserSession.get("/account", session)
                .then()
                .statusCode(200)
                .body(containsString("10 codes of your sheet left"));
        assertThat(done.getDetailedCookie("ripewood-half").getMaxAge()).isZero();
    }

    /** Not the password ends the session that the browser had, but the code. */
    @Test
    void theCodeEndsTheSessionOfTheSameBrowser() {
        var login = "one.step." + NEXT.incrementAndGet();
        register.enter(OFFICE, new NewPerson("Odo", login, PASSWORD, Set.of(Role.STUDENT)));
        var before = BrowserSession.signIn(login, PASSWORD);
        var half =
                given().redirects()
                        .follow(false)
                        .cookie(BrowserSession.COOKIE, before)
                        .formParam("j_username", person.login())
                        .formParam("j_password", PASSWORD)
                        .post("/j_security_check");
        BrowserSession.get("/account", before).then().statusCode(200);
        given().redirects()
                .follow(false)
                .cookies(half.getCookies())
                .cookie(BrowserSession.COOKIE, before)
                .formParam("j_username", SignIns.CODE_NAME)
                .formParam("j_password", code(0))
                .post("/j_security_check")
                .then()
                .statusCode(302);
        BrowserSession.get("/account", before).then().statusCode(303);
    }

    @Test
    void oneComesBackToWhereOneWent() {
        var sent = BrowserSession.get("/rehearsal/mine", "");
        var half =
                given().redirects()
                        .follow(false)
                        .cookies(sent.getCookies())
                        .formParam("j_username", person.login())
                        .formParam("j_password", PASSWORD)
                        .post("/j_security_check");
        given().redirects()
                .follow(false)
                .cookies(sent.getCookies())
                .cookies(half.getCookies())
                .formParam("j_username", SignIns.CODE_NAME)
                .formParam("j_password", code(0))
                .post("/j_security_check")
                .then()
                .statusCode(302)
                .header("Location", endsWith("/rehearsal/mine"));
    }

    @Test
    @DisplayName("6.5.1 · A code of the app counts once, also when it is sent twice at once")
    void noCodeCountsTwice() throws Exception {
        var code = code(0);
        var both = Executors.newFixedThreadPool(2);
        try {
            var one = password();
            var two = password();
            var answers =
                    both.invokeAll(
                            List.<Callable<Response>>of(
                                    () -> code(one, code), () -> code(two, code)));
            assertThat(List.of(session(answers.get(0).get()), session(answers.get(1).get())))
                    .containsExactlyInAnyOrder(true, false);
        } finally {
            both.shutdownNow();
        }
        code(password(), code)
                .then()
                .statusCode(303)
                .header("Location", endsWith("/sign-in/code?wrong=yes"));
        assertThat(session(code(password(), code(-1)))).isFalse();
        assertThat(session(code(password(), code(1)))).isTrue();
    }

    @Test
    @DisplayName("6.5.1, 6.5.3 · Each code of the sheet lets in once, however it is typed")
    void aCodeOfTheSheetLetsInOnce() {
        assertThat(sheet).hasSize(10).doesNotHaveDuplicates();
        assertThat(sheet)
                .allSatisfy(code -> assertThat(code).matches("([A-Z2-7]{4}-){2}[A-Z2-7]{4}"));
        var typed = " " + sheet.get(3).toLowerCase(java.util.Locale.ROOT).replace("-", " ");
        assertThat(session(code(password(), typed))).isTrue();
        assertThat(session(code(password(), typed))).isFalse();
        assertThat(factors.of(actor).codesLeft()).isEqualTo(9);
        assertThat(session(code(password(), sheet.get(4)))).isTrue();

        var fresh = factors.newSheet(actor);
        assertThat(session(code(password(), sheet.get(5)))).isFalse();
        assertThat(session(code(password(), fresh.get(0)))).isTrue();
        assertThat(factors.of(actor).codesLeft()).isEqualTo(9);
    }

    @Test
    @DisplayName(
            "6.5.2 · Neither the app's secret nor a code of the sheet can be read in the database")
    void nothingOfItIsKeptAsItIs() {
        var kept = QuarkusTransaction.requiringNew().call(() -> rows.findById(person.id()));
        var secret = Base32.encode(secret());
        assertThat(kept.sealedSecret).doesNotContain(secret).hasSizeGreaterThan(60);
        assertThat(sealed.open(person.id() + 1, kept.sealedSecret)).isEmpty();
        var hashes =
                QuarkusTransaction.requiringNew()
                        .call(
                                () ->
                                        rows.getEntityManager()
                                                .createQuery(
                                                        "select c.codeHash from RecoveryCodeEntity c"
                                                                + " where c.personId = :id",
                                                        String.class)
                                                .setParameter("id", person.id())
                                                .getResultList());
        assertThat(hashes).hasSize(10).allSatisfy(hash -> assertThat(hash).startsWith("2:$2"));
    }

    @Test
    @DisplayName(
            "6.3.1 · Wrong codes are held like wrong passwords, and right passwords forget none")
    void guessingCodesIsHeld() {
        for (int i = 0; i < SignInPause.MOST_FAILURES; i++) {
            code(password(), "00000" + i % 10)
                    .then()
                    .header("Location", endsWith("code?wrong=yes"));
        }
        var half = password();
        half.then().header("Location", endsWith("/sign-in/code"));
        code(half, code(0)).then().header("Location", containsString("wrong=paused&minutes=15"));
    }

    @Test
    void aSignInThatWaitsForItsCodeIsNoSession() {
        var half = password().getCookie("ripewood-half");
        for (var cookie : List.of(BrowserSession.COOKIE, "ripewood-half", "ripewood-browser")) {
            given().redirects()
                    .follow(false)
                    .cookie(cookie, half)
                    .get("/api/v1/rehearsal/who")
                    .then()
                    .statusCode(401);
        }
    }

    @Test
    @DisplayName("6.5.5 · It waits for five minutes, and for the one whose password it was")
    void itWaitsForFiveMinutes() {
        var half = password();
        age(HalfSignIns.WAITS);
        code(half, code(0)).then().header("Location", endsWith("/sign-in?late=yes"));
        BrowserSession.get("/sign-in?late=yes", "").then().body(containsString("took too long"));
        given().redirects()
                .follow(false)
                .formParam("j_username", SignIns.CODE_NAME)
                .formParam("j_password", code(0))
                .post("/j_security_check")
                .then()
                .header("Location", endsWith("/sign-in?late=yes"));

        var shutOut = password();
        register.setActive(OFFICE, person.id(), peopleUnchecked.get(person.id()).version(), false);
        code(shutOut, code(0)).then().header("Location", endsWith("/sign-in?late=yes"));
    }

    @Test
    void aRightCodeIsUsedUpWithItsSignIn() {
        var half = password();
        assertThat(session(code(half, code(0)))).isTrue();
        assertThat(session(code(half, code(1)))).isFalse();
    }

    @Test
    @DisplayName("6.4.3 · A link for a lost password does not go round the second factor")
    void aLinkDoesNotGoRoundIt() {
        links.use(links.make(OFFICE, person.id()).secret(), "orbit kettle plum");
        var half = BrowserSession.answer(person.login(), "orbit kettle plum");
        half.then().header("Location", endsWith("/sign-in/code"));
        assertThat(half.getCookie(BrowserSession.COOKIE)).isNull();
        assertThat(session(code(half, code(0)))).isTrue();
    }

    @Test
    @DisplayName(
            "6.4.3 · Who chooses a password by link is signed in by it only without a second one")
    void theLinksPageAsksForTheSecondFactor() {
        var page = "/password/" + links.make(OFFICE, person.id()).secret();
        var visitor = Visitor.nobody();
        visitor.send(page, page, Map.of("newPassword", "orbit kettle plum"))
                .then()
                .statusCode(303)
                .header("Location", endsWith("/sign-in?chosen=yes"));
        visitor.get("/home").then().statusCode(303).header("Location", endsWith("/sign-in"));
    }

    @Test
    void programsGoOnWithTheirTokens() {
        var made = tokens.make(actor, new NewApiToken("Station", ApiToken.Scope.READ, 9));
        given().header("Authorization", "Bearer " + made.secret())
                .get("/api/v1/rehearsal/who")
                .then()
                .statusCode(200);
    }

    @Test
    @DisplayName("7.5.1 · Who has it confirms with both, and changes it so")
    void confirmingTakesBoth() {
        var replayed = code(0);
        var session = code(password(), replayed).getCookie(BrowserSession.COOKIE);
        BrowserSession.confirmation(session, PASSWORD).then().statusCode(400);
        post("/account/second-factor/off", session, "confirmPassword", PASSWORD)
                .then()
                .statusCode(400)
                .body(containsString("name=\"confirmCode\""), containsString("found nothing"));
        post(
                        "/account/second-factor/off",
                        session,
                        "confirmPassword",
                        PASSWORD,
                        "confirmCode",
                        replayed)
                .then()
                .statusCode(400);
        post(
                        "/account/second-factor/off",
                        session,
                        "confirmPassword",
                        PASSWORD,
                        "confirmCode",
                        code(1))
                .then()
                .statusCode(303);
        assertThat(factors.of(actor).on()).isFalse();
        assertThat(BrowserSession.signIn(person.login(), PASSWORD)).isNotNull();
        assertThat(deeds()).contains("SECOND_FACTOR_OFF");
    }

    @Test
    void itIsSetUpOnThePageWithoutAScript() {
        factors.reset(new Actor(-1, Set.of(Role.REGISTRAR)), person.id());
        var session = BrowserSession.signIn(person.login(), PASSWORD);
        BrowserSession.get("/account/second-factor", session)
                .then()
                .body(containsString("Set it up"));
        post("/account/second-factor/begin", session).then().statusCode(403);
        session = BrowserSession.confirm(session, PASSWORD);
        var begun = post("/account/second-factor/begin", session);
        begun.then()
                .statusCode(200)
                .header("Cache-Control", containsString("no-store"))
                .body(containsString("class=\"qr\""));
        assertThat(begun.asString().replaceAll("(?s).*nums\">([A-Z2-7 ]+)</span>.*", "$1"))
                .matches("([A-Z2-7]{4} ){7}[A-Z2-7]{4}")
                .isEqualTo(Base32.encode(secret()).replaceAll("(.{4})(?=.)", "$1 "));
        BrowserSession.get("/account/second-factor", session)
                .then()
                .body(not(containsString("class=\"qr\"")));
        assertThat(BrowserSession.signIn(person.login(), PASSWORD)).isNotNull();

        post("/account/second-factor/on", session, "code", "000000")
                .then()
                .statusCode(400)
                .body(containsString("class=\"qr\""), containsString("clock is wrong"));
        var typed = code(0).replaceFirst("(...)", "$1 ");
        var on = post("/account/second-factor/on", session, "code", typed);
        on.then().statusCode(200).body(containsString("shown this once"));
        var codes = on.asString().split("<li class=\"nums\">").length - 1;
        assertThat(codes).isEqualTo(10);
        BrowserSession.get("/account/second-factor", session)
                .then()
                .body(containsString("10 codes"), not(containsString("<li class=\"nums\">")));
        assertThat(BrowserSession.signIn(person.login(), PASSWORD)).isNull();
        post("/account/second-factor/on", session, "code", typed).then().statusCode(409);
    }

    @Test
    @DisplayName("6.4.4 · Who lost app and sheet is let in by password once a registrar reset it")
    void aRegistrarResetsIt() {
        factors.reset(OFFICE, person.id());
        assertThat(BrowserSession.signIn(person.login(), PASSWORD)).isNotNull();
        var told =
                audit.entries(
                        OFFICE,
                        new AuditQuestion(null, null, null, "person"),
                        new PageRequest(0, 5));
        assertThat(told.items().get(0).deed().name()).isEqualTo("SECOND_FACTOR_RESET");
        assertThat(told.items().get(0).changes().get(0).firstId()).isEqualTo(person.id());
        assertThat(status(() -> factors.reset(OFFICE, person.id()))).isEqualTo(409);
        assertThat(status(() -> factors.reset(actor, person.id()))).isEqualTo(403);
        var self = new Actor(person.id(), Set.of(Role.REGISTRAR));
        assertThat(status(() -> factors.reset(self, person.id()))).isEqualTo(409);
    }

    @Test
    void whoRunsTheServiceCanTakeItAway() {
        rescue.rescue("nobody.of.that.name");
        rescue.rescue(person.login());
        assertThat(BrowserSession.signIn(person.login(), PASSWORD)).isNotNull();
    }

    @Test
    void withAnotherKeyTheSheetStillWorks() {
        QuarkusTransaction.requiringNew()
                .run(
                        () ->
                                rows.update(
                                        "sealedSecret = ?1 where personId = ?2",
                                        new SealedSecrets("of a data folder that was lost")
                                                .seal(person.id(), AppCodes.freshSecret()),
                                        person.id()));
        assertThat(session(code(password(), "123456"))).isFalse();
        assertThat(session(code(password(), sheet.get(0)))).isTrue();
    }

    private Response password() {
        return BrowserSession.answer(person.login(), PASSWORD);
    }

    private static Response code(Response half, String code) {
        return given().redirects()
                .follow(false)
                .cookies(half.getCookies())
                .formParam("j_username", SignIns.CODE_NAME)
                .formParam("j_password", code)
                .post("/j_security_check");
    }

    private static Response post(String path, String session, Object... fields) {
        return BrowserSession.post(path, session, fields);
    }

    private static boolean session(Response answer) {
        return answer.getCookie(BrowserSession.COOKIE) != null;
    }

    /** What the app shows, so many steps from now. */
    private String code(int aside) {
        return AppCodes.code(secret(), Instant.now().plus(AppCodes.STEP.multipliedBy(aside)));
    }

    private byte[] secret() {
        return QuarkusTransaction.requiringNew()
                .call(
                        () ->
                                sealed.open(person.id(), rows.findById(person.id()).sealedSecret)
                                        .orElseThrow());
    }

    private void forgetSteps() {
        QuarkusTransaction.requiringNew()
                .run(() -> rows.update("lastStep = 0 where personId = ?1", person.id()));
    }

    private void age(Duration by) {
        QuarkusTransaction.requiringNew()
                .run(
                        () ->
                                halfSignIns.update(
                                        "begunAt = ?1 where personId = ?2",
                                        Instant.now().minus(by),
                                        person.id()));
    }

    private List<String> deeds() {
        var told =
                audit.entries(
                        OFFICE,
                        new AuditQuestion(person.id(), null, null, null),
                        new PageRequest(0, 30));
        return told.items().stream().map(entry -> entry.deed().name()).toList();
    }

    private static int status(org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
        var refused = catchThrowableOfType(Refused.class, call);
        assertThat(refused).as("it is refused").isNotNull();
        return refused.problem().status();
    }
}
