package org.ripewood;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The main path, on the packaged service, in a browser, without scripts of our own. */
class StoryIT {

    private static final Path PICTURES = Path.of("target/pictures");
    private static final LocalDate TODAY = LocalDate.of(2026, 4, 20);
    private static final String INSTRUCTOR = "ilsabet";
    private static final String STUDENT = "anrike";
    private static final String TREE = "Glasshouse fig";
    private static final String STEP = "Wire the primary branches";

    /** One of each kind; %s stands for a course. */
    private static final List<String> PAGES =
            List.of(
                    "/home",
                    "/trees",
                    "/lessons/wiring-branches",
                    "/techniques/wiring_primary",
                    "/species/acer_palmatum",
                    "/content/species/acer_palmatum/season",
                    "/help/teaching",
                    "/stock",
                    "/people",
                    "/account",
                    "/audit",
                    "/trees/999999",
                    "%s",
                    "%s/next",
                    "%s/sessions",
                    "%s/people",
                    "%s/readiness?page=0");

    private static final List<String> OF_A_TREE =
            List.of(
                    "",
                    "/life",
                    "/techniques",
                    "/record",
                    "/observations",
                    "/measure",
                    "/route",
                    "/route/print",
                    "/checklist/print",
                    "/passport",
                    "/papers",
                    "/photos");

    @TempDir Path data;
    private RunningJar service;
    private Browser browser;

    @BeforeEach
    void start() throws Exception {
        service = RunningJar.withDemoSchool(data, TODAY);
        browser = new Browser(service);
    }

    @AfterEach
    void stop() throws Exception {
        browser.close();
        service.close();
    }

    @Test
    void aHeldStepIsReleasedAssignedDoneSignedOffAndTheRestIsPlanned() throws Exception {
        signIn(INSTRUCTOR);
        browser.longPicture(PICTURES.resolve("home-instructor.png"));
        browser.follow("Structure and refinement");
        browser.longPicture(PICTURES.resolve("board.png"));
        browser.follow(TREE);
        browser.longPicture(PICTURES.resolve("tree.png"));
        var tree = browser.where();

        browser.open(tree.replaceFirst(".*(/trees/\\d+).*", "$1/techniques"));
        browser.unfold("Held");
        browser.follow(STEP);
        assertThat(browser.text()).contains("Largest open wound").contains("at most 8 mm");
        assertThat(browser.text()).contains("Should be met on its own from");
        browser.picture(PICTURES.resolve("held.png"));

        browser.follow(TREE);
        lookAhead(tree.replaceFirst(".*(/trees/\\d+).*", "$1"));
        browser.open(tree.replaceFirst(".*(/trees/\\d+).*", "$1/record"));
        browser.unfold("Read a wound");
        browser.choose("Wound", "Heavy limb on the left");
        browser.type("Open width, mm", "0");
        browser.type("Day", TODAY.toString());
        browser.pressButton("Record the reading");
        browser.open(tree.replaceFirst(".*(/trees/\\d+).*", "$1/techniques"));
        browser.follow(STEP);
        assertThat(browser.text()).contains("Ready");
        browser.type("Note for the student", "Lowest branch first; call me before you bend.");
        browser.pressButton("Assign the step");
        assertThat(browser.text()).contains(STEP);

        signOut();
        signIn(STUDENT);
        browser.longPicture(PICTURES.resolve("home-student.png"));
        browser.open(tree.replaceFirst(".*(/trees/\\d+).*", "$1/checklist"));
        browser.longPicture(PICTURES.resolve("checklist.png"));
        browser.resize(Browser.PHONE);
        browser.longPicture(PICTURES.resolve("checklist-phone.png"));
        browser.unfold("Report it done");
        browser.type("Done on", TODAY.toString());
        browser.type(
                "What was done", "All five wired with 3 mm aluminium, even turns, no bud caught.");
        browser.pressButton("Report it done");
        assertThat(browser.text()).contains("Waits for sign-off");
        browser.resize(Browser.DESK);

        signOut();
        signIn(INSTRUCTOR);
        assertThat(browser.text()).contains(TREE);
        browser.follow(STEP);
        browser.type("Word to the student", "Clean work.");
        browser.pressButton("Sign it off");
        assertThat(browser.text()).contains("Signed off").contains("Clean work.");
        browser.follow("The decision as it was");
        assertThat(browser.text()).contains("Largest open wound");
        browser.longPicture(PICTURES.resolve("decision.png"));

        browser.open("/home");
        browser.follow("Structure and refinement");
        browser.follow("Sessions");
        browser.follow("24 April 2026");
        browser.longPicture(PICTURES.resolve("session.png"));
        browser.follow("Session plan");
        assertThat(browser.text()).contains(TREE).contains("Crab apple");
        browser.longPicture(PICTURES.resolve("plan.png"));
        lookAtEveryKindOfPage(
                tree.replaceFirst(".*(/trees/\\d+).*", "$1"),
                browser.where().replaceFirst(".*(/sessions/\\d+).*", "$1"));
    }

    /**
     * At night on the narrowest phone: each is as wide as the window, its texts can be read, and
     * its colours stand out. The instructor of the story is the registrar too.
     */
    private void lookAtEveryKindOfPage(String tree, String session) {
        browser.resize(Browser.NARROW);
        browser.dark(true);
        browser.visit("/home");
        var course = browser.first("/courses/");
        for (var page : PAGES) {
            browser.open(page.formatted(course));
        }
        for (var page : OF_A_TREE) {
            browser.open(tree + page);
        }
        browser.open(session);
        browser.open(session + "/day");
        browser.open(session + "/plan");
        browser.dark(false);
        browser.resize(Browser.DESK);
    }

    /** What is going to come about: the wound's closing, the years ahead, the site's season. */
    private void lookAhead(String tree) throws Exception {
        browser.open(tree + "/record");
        browser.follow("Heavy limb on the left");
        assertThat(browser.text()).contains("Likely to close by");
        browser.longPicture(PICTURES.resolve("closing.png"));
        browser.open(tree + "/route");
        assertThat(browser.text()).contains(STEP);
        browser.longPicture(PICTURES.resolve("route.png"));
        browser.open(tree);
        browser.follow("Wrenfallow glasshouse");
        browser.longPicture(PICTURES.resolve("site.png"));
        for (var paper : List.of("/card", "/passport", "/route/print", "/checklist/print")) {
            browser.open(tree + paper);
            assertThat(browser.text()).contains(TREE);
            browser.longPicture(PICTURES.resolve(paper.substring(1).replace('/', '-') + ".png"));
        }
        browser.resize(Browser.PHONE);
        browser.open(tree + "/passport");
        browser.longPicture(PICTURES.resolve("passport-phone.png"));
        browser.open(tree + "/measure");
        browser.longPicture(PICTURES.resolve("measure-phone.png"));
        browser.resize(Browser.DESK);
    }

    private void signIn(String login) throws Exception {
        browser.open("/sign-in");
        browser.type("Sign-in name", login);
        browser.type("Password", service.passwordOf(login));
        browser.pressButton("Sign in");
        assertThat(browser.where()).endsWith("/home");
    }

    private void signOut() {
        browser.pressButton("Sign out");
    }
}
