package org.ripewood;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A student's phone without reception, on the packaged service, in a browser, over a line that is
 * really cut: nothing listens on the address then, for pages and the worker alike.
 */
class ReceptionIT {

    private static final Path PICTURES = Path.of("target/pictures");
    private static final LocalDate TODAY = LocalDate.of(2026, 4, 20);
    private static final Path PHOTO = Path.of("demo-data/photos/crab-apple-stub-1.png");
    private static final Duration PATIENCE = Duration.ofSeconds(40);

    /** Keeps a tree that is ready for a step. */
    private static final String STUDENT = "anrike";

    private static final String TREE = "Hornbeam ready for wire";
    private static final String ANOTHER = "nerida";

    @TempDir static Path data;
    private static RunningJar service;

    private WeakLine line;
    private Browser browser;
    private DemoStudent record;

    @BeforeAll
    static void startService() throws Exception {
        service = RunningJar.withDemoSchool(data, TODAY);
        var instructor = DemoStudent.signIn(service, "ilsabet");
        instructor.make(
                "/api/v1" + tree() + "/steps",
                "{\"technique\": \"wiring_primary\", \"waivers\": {\"season\": \"Two shoots, to learn it.\"}}");
    }

    @AfterAll
    static void stopService() {
        service.close();
    }

    @BeforeEach
    void start() throws Exception {
        line = WeakLine.to(service.port());
        browser = new Browser(service.through(line.port()));
        browser.resize(Browser.PHONE);
        record = DemoStudent.signIn(service, STUDENT);
    }

    @AfterEach
    void stop() throws Exception {
        browser.close();
        line.close();
    }

    @Test
    void whatIsEnteredWithoutReceptionIsInTheRecordOnce() throws Exception {
        signIn(STUDENT);
        var tree = tree();
        await("copies of the tree's pages", () -> isKept(tree + "/measure"));
        long photosBefore = photos(tree);
        line.cut();

        browser.open(tree + "/checklist");
        assertThat(browser.text())
                .contains("Kept copy of", "no connection", TREE, "Wire the primary");
        browser.picture(PICTURES.resolve("kept-checklist-phone.png"));
        browser.unfold("Report it done");
        browser.type("Done on", TODAY.toString());
        browser.type("What was done", "Wired with 3 mm, even turns.");
        browser.attach(PHOTO);
        browser.pressButton("Report it done");
        assertThat(browser.where()).contains(tree + "/checklist");
        await("the report to wait", () -> browser.text().contains("Waiting on this phone: 1"));
        assertThat(headings())
                .as("what the page itself says stays")
                .contains("Do now", "Not yet, and why");
        browser.picture(PICTURES.resolve("kept-report-phone.png"));

        measure(tree, "50", "68", "first copy");
        measure(tree, "160", "60", "second copy");
        await("all to wait", () -> browser.text().contains("Waiting on this phone: 3"));
        browser.picture(PICTURES.resolve("kept-waiting-phone.png"));
        browser.visit("/lessons");
        assertThat(browser.text()).contains("No connection", "kept on this phone");
        assertThat(measured(tree, "first copy") + measured(tree, "second copy")).isZero();

        line.mend();
        browser.visit("/home");
        await("nothing to wait", () -> waiting() == 0);
        assertThat(browser.text()).contains("Sent now:");
        browser.picture(PICTURES.resolve("kept-sent-phone.png"));
        assertThat(measured(tree, "first copy")).isEqualTo(1);
        assertThat(measured(tree, "second copy")).isEqualTo(1);
        assertThat(reports(tree)).isEqualTo(1);
        assertThat(photos(tree)).isEqualTo(photosBefore + 1);
        browser.visit(tree + "/checklist");
        assertThat(browser.text()).doesNotContain("Kept copy of").contains("Waits for sign-off");
        assertThat(measured(tree, "first copy")).isEqualTo(1);
    }

    @Test
    void whatWasWrittenAndGotNoAnswerIsWrittenOnce() throws Exception {
        signIn(STUDENT);
        var tree = tree();
        await("the worker", () -> isKept(tree + "/measure"));
        line.loseAnswersTo("POST " + tree + "/measure");
        measure(tree, "70", "67", "no answer came");
        await("an answer lost, and the same sent again", () -> line.lost() >= 2);
        assertThat(measured(tree, "no answer came")).isEqualTo(1);
        assertThat(waiting()).isEqualTo(1);
        line.loseAnswersTo("");
        // so long ago that the service may have forgotten the key
        firstTried(Duration.ofHours(41));
        browser.visit("/home");
        await("a question", () -> browser.text().contains("no answer came, too long ago"));
        assertThat(waiting()).isEqualTo(1);
        browser.push("Send it");
        await("nothing to wait", () -> waiting() == 0);
        assertThat(measured(tree, "no answer came")).isEqualTo(1);
    }

    @Test
    void whatIsRefusedIsKeptWithItsWords() throws Exception {
        signIn(STUDENT);
        var tree = tree();
        await("the worker", () -> isKept(tree + "/measure"));
        line.cut();
        measure(tree, "140", "99999", "to be put right");
        line.mend();
        browser.endSignIn();
        // the copies are gone with the sign-in, and the entry waits for its person
        browser.visit("/home");
        assertThat(browser.where()).contains("/sign-in");
        assertThat(pagesKept()).isZero();
        assertThat(waiting()).isEqualTo(1);

        signIn(STUDENT);
        await("a refusal", () -> browser.text().contains("Not taken."));
        assertThat(browser.text())
                .contains("expected at most 2000, found 99999", "to be put right");
        browser.picture(PICTURES.resolve("kept-refused-phone.png"));
        browser.push("Open the form with it");
        await("the form", () -> "99999".equals(value("newDiameter.1")));
        assertThat(value("note")).isEqualTo("to be put right");
        enter("newDiameter.1", "62");
        browser.push("Record all of it");
        await("the record", () -> measured(tree, "to be put right") == 1);
        await("nothing to wait", () -> waiting() == 0);
    }

    @Test
    void whoLeavesLeavesNothingOnThePhone() throws Exception {
        signIn(STUDENT);
        var tree = tree();
        await("copies", () -> isKept(tree + "/measure"));
        line.cut();
        measure(tree, "180", "58", "never sent");
        line.mend();
        // it waits where nothing sends it: the page that would is gone
        line.loseAnswersTo("GET /help");
        browser.visit(tree + "/checklist");
        await("one to wait", () -> browser.text().contains("Waiting on this phone: 1"));
        browser.push("Sign out");
        browser.accept();
        await("the sign-in page", () -> browser.where().contains("/sign-in"));
        line.loseAnswersTo("");
        await("nothing kept", () -> cachesKept() == 0 && waiting() == 0);

        signIn(ANOTHER);
        await("copies of the other's", () -> pagesKept() > 1);
        line.cut();
        browser.visit(tree + "/checklist");
        assertThat(browser.text()).contains("No connection").doesNotContain(TREE);
        assertThat(measured(tree, "never sent")).isZero();
    }

    private void signIn(String login) throws IOException {
        browser.visit("/sign-in");
        browser.type("Sign-in name", login);
        browser.type("Password", service.passwordOf(login));
        browser.push("Sign in");
        await("home", () -> browser.where().endsWith("/home"));
    }

    /** The address of the student's tree. */
    private static String tree() throws Exception {
        var record = DemoStudent.signIn(service, STUDENT);
        for (var one : record.read("/api/v1/trees?size=100").get("items")) {
            if (one.get("label").asText().equals(TREE)) {
                return "/trees/" + one.get("id").asLong();
            }
        }
        throw new AssertionError("no tree " + TREE);
    }

    /** Fills in the bench form and sends it. */
    private void measure(String tree, String height, String diameter, String note) {
        browser.visit(tree + "/measure");
        enter("newHeight.1", height);
        enter("newDiameter.1", diameter);
        enter("note", note);
        browser.push("Record all of it");
        await("the entry to wait", () -> waiting() > 0);
    }

    private void enter(String field, String value) {
        browser.run(field(field) + ".value = '" + value + "'");
    }

    private Object value(String field) {
        return browser.run("return " + field(field) + "?.value ?? ''");
    }

    private static String field(String name) {
        return "document.querySelector('main form.bench [name=\"" + name + "\"]')";
    }

    private boolean isKept(String path) {
        return Boolean.TRUE.equals(
                browser.run(
                        "return !!(await caches.match('"
                                + path
                                + "'))"
                                + " && !!navigator.serviceWorker.controller"));
    }

    private String headings() {
        return String.valueOf(
                browser.run(
                        "return [...document.querySelectorAll('main h2')]"
                                + ".map(one => one.textContent).join('; ')"));
    }

    private long cachesKept() {
        return number("return (await caches.keys()).length");
    }

    private long pagesKept() {
        return number("return (await (await caches.open('ripewood-pages')).keys()).length");
    }

    /** Entries in the browser's database, read beside the service's own scripts. */
    private long waiting() {
        return number(
                """
                if (!(await indexedDB.databases()).some(one => one.name === 'ripewood')) {
                  return 0;
                }
                return await new Promise((done, failed) => {
                  const asked = indexedDB.open('ripewood');
                  asked.onerror = failed;
                  asked.onsuccess = () => {
                    const rows = asked.result;
                    if (!rows.objectStoreNames.contains('entries')) {
                      rows.close();
                      done(0);
                      return;
                    }
                    const count = rows.transaction('entries').objectStore('entries').count();
                    count.onsuccess = () => { rows.close(); done(count.result); };
                  };
                });
                """);
    }

    private void firstTried(Duration ago) {
        var answer =
                browser.run(
                        "for (const entry of await Kept.entries()) {"
                                + " entry.tried = Date.now() - "
                                + ago.toMillis()
                                + "; await Kept.put(entry); }");
        assertThat(answer).isNull();
    }

    private long number(String script) {
        var answer = browser.run(script);
        assertThat(answer).as(script).isInstanceOf(Number.class);
        return ((Number) answer).longValue();
    }

    /** Diameters in the record that came with this note. */
    private long measured(String tree, String note) {
        try {
            long found = 0;
            for (var one : record.read("/api/v1" + tree + "/observations?size=200").get("items")) {
                if (note.equals(Objects.toString(one.path("note").asText(), ""))) {
                    found++;
                }
            }
            return found;
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private long photos(String tree) throws Exception {
        return record.read("/api/v1" + tree + "/photos").get("total").asLong();
    }

    private long reports(String tree) throws Exception {
        long found = 0;
        for (var step : record.read("/api/v1" + tree + "/steps?size=100").get("items")) {
            if (step.path("report").path("evidence").asText().startsWith("Wired with 3 mm")) {
                assertThat(step.get("events").findValuesAsText("became"))
                        .as(step.toString())
                        .containsOnlyOnce("REPORTED");
                found++;
            }
        }
        return found;
    }

    private static void await(String what, BooleanSupplier isSo) {
        for (var until = Instant.now().plus(PATIENCE); Instant.now().isBefore(until); ) {
            if (isSo.getAsBoolean()) {
                return;
            }
            pause();
        }
        throw new AssertionError("not in time: " + what);
    }

    private static void pause() {
        try {
            Thread.sleep(100);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
