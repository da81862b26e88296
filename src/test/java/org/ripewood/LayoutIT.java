package org.ripewood;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every kind of page on the packaged service, at a desk, on a phone and on a narrow one: no wider
 * than the window, no text in a column too narrow to be read, and no longer than it should be.
 */
class LayoutIT {

    private static final Path PICTURES = Path.of("target/pictures/layout");
    private static final LocalDate TODAY = LocalDate.of(2026, 4, 20);
    private static final String REGISTRAR = "ilsabet";
    private static final String INSTRUCTOR = "corvan";
    private static final String STUDENT = "anrike";

    private static final List<String> TAUGHT =
            List.of(
                    "/catalogue",
                    "/glossary",
                    "/lessons",
                    "/lessons/wiring-branches",
                    "/species/acer_palmatum",
                    "/rubrics/vigour",
                    "/rubrics/wiring-skill",
                    "/content/species/acer_palmatum/season",
                    "/search",
                    "/search?q=wire",
                    "/search?q=a&kind=technique",
                    "/search?q=nebrai");

    @TempDir Path data;
    private final List<String> faults = new ArrayList<>();
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
    void pagesFitTheWindowAndCanBeRead() throws Exception {
        signIn(STUDENT);
        look("student", List.of("/home", "/trees", "/account", "/help", "/sites"));
        browser.open("/home");
        var about = browser.first("/courses/");
        browser.open(about);
        look("student", List.of(about, browser.first("/people/")));
        signIn(INSTRUCTOR);
        look("taught", TAUGHT);
        look("taught", List.of("/techniques/wiring_primary"));
        techniques();
        look("instructor", List.of("/home", "/trees", "/trees/left", "/trees/new", "/stock"));
        browser.open("/trees");
        var tree = browser.first("/trees/");
        for (var page : List.of("", "/life", "/techniques", "/record", "/papers", "/photos")) {
            look("instructor", List.of(tree + page));
        }
        look("instructor", List.of(tree + "/measure", tree + "/techniques/wiring_primary"));
        browser.open("/home");
        look("instructor", List.of(browser.first("/courses/"), browser.first("/sessions/")));
        signIn(REGISTRAR);
        browser.open("/people");
        look("registrar", List.of("/people", browser.first("/people/"), "/audit", "/lists"));
        assertThat(faults).isEmpty();
    }

    /** All of them: each has its own length of text, list of cautions and criteria. */
    private void techniques() {
        browser.visit("/catalogue");
        for (var path : browser.links("/techniques/")) {
            browser.visit(path);
            for (var size : Browser.SIZES) {
                browser.resize(size);
                noting(browser::measure);
            }
        }
        browser.resize(Browser.DESK);
    }

    private void look(String who, List<String> paths) throws Exception {
        for (var path : paths) {
            noting(() -> browser.open(path));
            for (var size : Browser.SIZES) {
                browser.resize(size);
                noting(browser::measure);
                var name = "%s%s-%d.png".formatted(who, path, size.width);
                browser.longPicture(PICTURES.resolve(name.replaceAll("[/?&=]+", "-")));
            }
            browser.resize(Browser.DESK);
        }
    }

    /** What is wrong with one page does not hide what is wrong with the next. */
    private void noting(Runnable look) {
        try {
            look.run();
        } catch (AssertionError wrong) {
            faults.add(String.valueOf(wrong.getMessage()));
        }
    }

    private void signIn(String login) throws Exception {
        browser.forget();
        browser.open("/sign-in");
        browser.type("Sign-in name", login);
        browser.type("Password", service.passwordOf(login));
        browser.pressButton("Sign in");
    }
}
