package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.core.progress.Work;
import org.ripewood.people.People;
import org.ripewood.platform.Role;
import org.ripewood.records.WorksDone;
import org.ripewood.sessions.NewSession;
import org.ripewood.sessions.Sessions;
import org.ripewood.trees.Tree;

/** Who sees which page, and what every page has. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SchoolProfile.class)
class PagesTest {

    private static final Pattern ID = Pattern.compile("\\sid=\"([^\"]+)\"");
    private static final Pattern LABEL = Pattern.compile("<label for=\"([^\"]+)\"");

    @Inject School school;
    @Inject People people;
    @Inject Sessions sessions;
    @Inject WorksDone worksDone;

    private School.Group group;
    private Tree tree;
    private List<String> ofTeachers;
    private List<String> ofStudents;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        tree = school.tree(group.instructor(), group.student(), "ulmus_parvifolia");
        school.wound(group.instructor(), tree, "first branch", 24);
        worksDone.record(
                group.instructor(),
                tree.id(),
                new Work("wiring_primary", School.TODAY.minusDays(60), 0, 0, 0, 0),
                null,
                null);
        var session =
                sessions.set(
                        group.instructor(),
                        new NewSession(
                                group.course().id(),
                                School.TODAY.plusDays(3),
                                java.time.LocalTime.of(9, 0),
                                java.time.LocalTime.of(12, 0),
                                "wiring-branches",
                                "long table",
                                List.of(group.instructor().personId())));
        var at = "/trees/" + tree.id();
        ofStudents =
                List.of(
                        "/home",
                        "/account",
                        "/help",
                        "/help/learning",
                        "/help/teaching",
                        "/lessons",
                        "/lessons/wiring-branches",
                        "/catalogue",
                        "/glossary",
                        "/techniques/wiring_primary",
                        "/techniques/pest_control",
                        "/species/acer_palmatum",
                        "/rubrics/vigour",
                        "/rubrics/wiring-skill",
                        "/search",
                        "/search?q=wiring",
                        "/search?q=nothing-has-this-word",
                        "/search?q=a&kind=technique&page=1",
                        "/trees",
                        "/trees?species=ulmus_parvifolia&order=KEEPER",
                        "/people/" + group.student().personId(),
                        "/people/" + group.instructor().personId(),
                        "/courses/" + group.course().id() + "/about",
                        "/trees/new",
                        at,
                        at + "/record",
                        at + "/life",
                        at + "/life?until=2024",
                        at + "/techniques",
                        at + "/papers",
                        at + "/aftercare",
                        at + "/checklist",
                        at + "/checklist/print",
                        at + "/measure",
                        at + "/photos",
                        at + "/route",
                        at + "/route/print?goal=show",
                        at + "/judgements",
                        "/students/" + group.student().personId() + "/judgements",
                        at + "/card",
                        at + "/passport",
                        at + "/observations",
                        at + "/observations?fact=wound_open_mm",
                        at + "/observations?fact=front_mark",
                        at + "/observations?fact=largest_opening_mm",
                        at + "/techniques/wiring_primary",
                        "/sites",
                        "/sites/" + tree.siteId(),
                        "/sites/" + tree.siteId() + "?species=acer_palmatum",
                        "/sessions/" + session.id());
        ofTeachers =
                List.of(
                        "/content",
                        "/agreement",
                        "/agreement?from=2020-01-01&unswayed=true",
                        "/courses/" + group.course().id(),
                        "/courses/" + group.course().id() + "?heldFrom=styling&sort=SOONEST",
                        "/courses/" + group.course().id() + "/readiness",
                        "/courses/" + group.course().id() + "/next?headline=HELD",
                        "/courses/" + group.course().id() + "/again",
                        "/courses/" + group.course().id() + "/people",
                        "/courses/" + group.course().id() + "/sessions",
                        "/courses/" + group.course().id() + "/weeks",
                        "/courses/" + group.course().id() + "/weeks?weeks=104",
                        "/courses/" + group.course().id() + "/cards",
                        "/sessions/" + session.id() + "/day",
                        "/sessions/" + session.id() + "/plan",
                        "/students/" + group.student().personId() + "/skills");
    }

    @Test
    void everyPageHasALanguageATitleOneHeadingAndAWayPastTheMenu() {
        var teacher = Visitor.of(people, group.instructor());
        for (var path : all(ofStudents, ofTeachers)) {
            var answer = teacher.get(path);
            assertThat(answer.statusCode()).as(path).isEqualTo(200);
            var html = answer.asString();
            assertThat(html)
                    .as(path)
                    .contains("<html lang=\"en\">")
                    .contains("href=\"#main\"")
                    .contains("<main id=\"main\"")
                    .containsOnlyOnce("<h1")
                    .doesNotContain("NOT_FOUND")
                    .doesNotContain("{");
            assertThat(html).as(path).containsPattern("<title>[^<]+ · Ripewood</title>");
        }
    }

    @Test
    void everyPageSaysWhereItStandsAndLeadsUp() {
        var teacher = Visitor.of(people, group.instructor());
        for (var path : all(ofStudents, ofTeachers)) {
            var html = teacher.get(path).asString();
            if (html.contains("<body class=\"paper")) {
                assertThat(html).as(path).contains("aria-label=\"Back and PDF\"", "href=\"/home\"");
                continue;
            }
            var trail = trail(html);
            assertThat(trail).as(path).containsPattern("<li aria-current=\"page\">[^<{]+</li>$");
            if (!path.equals("/home")) {
                assertThat(trail).as(path).startsWith("<li><a href=\"/home\">Home</a></li>");
            }
        }
        assertThat(trail(teacher.get("/trees/" + tree.id() + "/measure").asString()))
                .contains("<a href=\"/trees/" + tree.id() + "\">" + tree.label() + "</a>");
    }

    /** Only pages of this service are believed, and a course's name only for those who reach it. */
    @Test
    void theWayBackIsTheOneTheAddressTellsWhenItIsOneOfOurs() {
        var teacher = Visitor.of(people, group.instructor());
        var course = group.course();
        var at = "/trees/" + tree.id();
        assertThat(trail(teacher.get(at + "?from=/courses/" + course.id()).asString()))
                .contains("<a href=\"/courses/" + course.id() + "\">" + course.name() + "</a>");
        var foreign = school.newGroup().course();
        for (var wrong :
                List.of(
                        "//example.org/courses/" + course.id(),
                        "https://example.org/",
                        "/courses/" + course.id() + "/../../x",
                        "/courses/" + course.id() + "\"><b>",
                        "/courses/" + foreign.id(),
                        "/courses/999999999999999999999",
                        "javascript:alert(1)",
                        "")) {
            var answer =
                    teacher.get(
                            at
                                    + "?from="
                                    + java.net.URLEncoder.encode(
                                            wrong, java.nio.charset.StandardCharsets.UTF_8));
            assertThat(answer.statusCode()).as(wrong).isEqualTo(200);
            assertThat(trail(answer.asString()))
                    .as(wrong)
                    .doesNotContain("example", "/courses/", "script", foreign.name());
        }
        var twice = "/courses/" + course.id();
        assertThat(trail(teacher.get(at + "?from=" + twice + "&from=" + twice).asString()))
                .doesNotContain("/courses/");
    }

    @Test
    void whoSharesACourseSeesANameAndNoRecord() {
        var at = "/people/" + group.student().personId();
        assertThat(Visitor.of(people, group.instructor()).get(at).asString())
                .contains(tree.label(), "Skills shown")
                .doesNotContain("Block sign-in");
        var fellow = school.person("Fee Fellow", Role.STUDENT);
        school.join(group, fellow, Role.STUDENT);
        assertThat(Visitor.of(people, fellow).get(at).asString())
                .contains("Stan Student", group.course().name())
                .doesNotContain(tree.label(), "Skills shown", "Block sign-in", "Signs in as");
        var office = school.person("Rika Registrar", Role.REGISTRAR);
        assertThat(Visitor.of(people, office).get(at).asString())
                .contains("Block sign-in", "Signs in as", tree.label());
    }

    @Test
    void allTreesAreListedSortedAndFiltered() {
        var other = school.tree(group.instructor(), group.student(), "acer_palmatum");
        var foreign = school.newGroup();
        var theirs = school.tree(foreign.instructor(), foreign.student(), "acer_palmatum");
        for (var who : List.of(group.instructor(), group.student())) {
            var visitor = Visitor.of(people, who);
            assertThat(visitor.get("/trees").asString())
                    .contains(tree.label(), other.label())
                    .doesNotContain(">" + theirs.label() + "<");
            assertThat(visitor.get("/trees?species=acer_palmatum").asString())
                    .contains(">" + other.label() + "<")
                    .doesNotContain(">" + tree.label() + "<");
            assertThat(visitor.get("/trees?keeper=" + foreign.student().personId()).asString())
                    .contains("No tree is like that");
            var file = visitor.get("/trees/list.csv?order=ARRIVED");
            assertThat(file.asString().lines()).hasSize(3);
            assertThat(file.asString()).startsWith("\"Tree\",\"Species\",");
        }
        var teacher = Visitor.of(people, group.instructor());
        for (var wrong : List.of("order=LOST", "keeper=x", "page=-1", "page=first")) {
            assertThat(teacher.get("/trees?" + wrong).statusCode()).as(wrong).isEqualTo(400);
        }
    }

    private static String trail(String html) {
        var found =
                Pattern.compile("(?s)<nav class=\"trail\"[^>]*>\\s*<ol>(.*?)</ol>").matcher(html);
        assertThat(found.find()).isTrue();
        return found.group(1).strip().replaceAll("\\s*\n\\s*", "");
    }

    @Test
    void aLessonsPictureIsStrictlyAPictureAndStandsAlone() {
        var student = Visitor.of(people, group.student());
        assertThat(student.get("/lessons/hollow-cuts").asString())
                .contains("<img src=\"pictures/hollow-cut.svg\" alt=\"In section:");
        var picture = student.get("/lessons/pictures/hollow-cut.svg");
        assertThat(picture.statusCode()).isEqualTo(200);
        assertThat(picture.header("Content-Type")).isEqualTo("image/svg+xml");
        assertThat(picture.header("X-Content-Type-Options")).isEqualTo("nosniff");
        assertThat(picture.header("Content-Security-Policy"))
                .isEqualTo("default-src 'none'; frame-ancestors 'none'; sandbox");
        assertThat(student.get("/lessons/pictures/none.svg").statusCode()).isEqualTo(404);
        assertThat(student.get("/lessons/pictures/..%2fhollow-cuts.md").statusCode())
                .isIn(400, 404);
    }

    @Test
    void aBoardsFileHasTheRowsOfTheFilterAndASafeName() {
        school.tree(group.instructor(), group.student(), "acer_palmatum");
        var teacher = Visitor.of(people, group.instructor());
        var at = "/courses/" + group.course().id();
        var file = teacher.get(at + "/board.csv?species=ulmus_parvifolia&page=0");
        assertThat(file.header("Content-Type")).isEqualToIgnoringCase("text/csv;charset=UTF-8");
        assertThat(file.header("Content-Disposition"))
                .isEqualTo(
                        "attachment; filename=\"course-%d-board-2026-02-20.csv\""
                                .formatted(group.course().id()));
        assertThat(file.asString().lines()).hasSize(2);
        assertThat(file.asString())
                .startsWith("\"Tree\",\"Species\",\"Student\",")
                .contains(tree.label());
        var wrong = teacher.get(at + "/next?student=x&unseenWeeks=900");
        assertThat(wrong.statusCode()).isEqualTo(400);
        assertThat(wrong.asString()).contains("value=\"900\"", "expected a whole number");
        assertThat(teacher.get(at + "/board.csv?headline=NONE").statusCode()).isEqualTo(400);
    }

    /** What stood on a course's first page before is asked for where it stands now. */
    @Test
    void theOldQuestionsOfACoursesPageLeadToItsNextSteps() {
        var teacher = Visitor.of(people, group.instructor());
        var at = "/courses/" + group.course().id();
        for (var query : List.of("headline=HELD", "fact=vigour_index", "unseenWeeks=4")) {
            var answer = teacher.get(at + "?" + query);
            assertThat(answer.statusCode()).as(query).isEqualTo(303);
            assertThat(answer.header("Location")).endsWith(at + "/next?page=0&" + query);
        }
    }

    @Test
    void aReadinessSheetTellsHoldsAndItsFileHasAColumnForEachGroupOfWork() {
        var teacher = Visitor.of(people, group.instructor());
        var at = "/courses/" + group.course().id();
        var page = teacher.get(at).asString();
        assertThat(page)
                .contains("Held from styling", "href=\"" + at + "?heldFrom=styling\"")
                .contains("data-name=\"Wire\"", "/trees/" + tree.id() + "/techniques/");
        var file = teacher.get(at + "/readiness.csv?species=ulmus_parvifolia");
        assertThat(file.header("Content-Disposition"))
                .isEqualTo(
                        "attachment; filename=\"course-%d-readiness-2026-02-20.csv\""
                                .formatted(group.course().id()));
        assertThat(file.asString())
                .startsWith("\"Tree\",\"Species\",\"Student\",\"Stage\",\"Next styling\"")
                .contains("\"Wire\",\"Refine\",\"Show\"", tree.label(), "held: ");
        var wrong = teacher.get(at + "?heldFrom=wirr&student=x");
        assertThat(wrong.statusCode()).isEqualTo(400);
        assertThat(wrong.asString()).contains("expected");
        var unknown = teacher.get(at + "?heldFrom=wirr");
        assertThat(unknown.statusCode()).isEqualTo(400);
        assertThat(unknown.asString()).contains("wirr", "Maybe “wire”.");
        assertThat(teacher.get(at + "/readiness.csv?stage=none").statusCode()).isEqualTo(400);
        assertThat(teacher.get(at + "/readiness.pdf?size=a3").statusCode()).isEqualTo(400);
    }

    @Test
    void everyIdIsThereOnceAndEveryLabelHasItsField() {
        var teacher = Visitor.of(people, group.instructor());
        for (var path : all(ofStudents, ofTeachers)) {
            var html = teacher.get(path).asString();
            var ids = ID.matcher(html).results().map(found -> found.group(1)).toList();
            assertThat(ids).as(path).doesNotHaveDuplicates();
            assertThat(ids)
                    .as(path)
                    .containsAll(
                            LABEL.matcher(html).results().map(found -> found.group(1)).toList());
        }
    }

    @Test
    void aStudentSeesOwnPagesAndNotTheTeachers() {
        var pupil = Visitor.of(people, group.student());
        for (var path : ofStudents) {
            assertThat(pupil.get(path).statusCode()).as(path).isEqualTo(200);
        }
        for (var path : all(ofTeachers, List.of("/people", "/audit"))) {
            assertThat(pupil.get(path).statusCode()).as(path).isEqualTo(403);
        }
    }

    @Test
    void whatIsOutOfReachIsNotFound() {
        var stranger = Visitor.of(people, school.newGroup().student());
        for (var path : ofStudents) {
            if (path.startsWith("/trees/" + tree.id())
                    || path.startsWith("/sessions/")
                    || path.startsWith("/people/")
                    || path.startsWith("/courses/")) {
                assertThat(stranger.get(path).statusCode()).as(path).isEqualTo(404);
            }
        }
        var otherTeacher = Visitor.of(people, school.newGroup().instructor());
        for (var path : ofTeachers) {
            if (path.startsWith("/agreement") || path.equals("/content")) {
                continue; // it is about the whole school
            }
            assertThat(otherTeacher.get(path).statusCode()).as(path).isEqualTo(404);
        }
    }

    @Test
    void whoIsNotSignedInIsLedToTheDoor() {
        for (var path : all(ofStudents, ofTeachers)) {
            var answer = Visitor.nobody().get(path);
            assertThat(answer.statusCode()).as(path).isBetween(302, 303);
            assertThat(answer.header("Location")).as(path).endsWith("/sign-in");
        }
    }

    @Test
    void aPageAskedForWithNonsenseSaysSo() {
        var teacher = Visitor.of(people, group.instructor());
        assertThat(teacher.get("/trees/abc").statusCode()).isEqualTo(404);
        assertThat(teacher.get("/trees/99999999999999999999").statusCode()).isEqualTo(404);
        assertThat(teacher.get("/lessons/no-such-lesson").statusCode()).isEqualTo(404);
        var route = "/trees/" + tree.id() + "/route";
        assertThat(teacher.get(route + "?goal=lost").statusCode()).isEqualTo(400);
        assertThat(teacher.get(route + "/print?goal=lost").statusCode()).isEqualTo(400);
        assertThat(teacher.get(route + ".pdf?goal=lost").statusCode()).isEqualTo(400);
        assertThat(teacher.get(route + ".pdf?size=a3").statusCode()).isEqualTo(400);
        for (var until : List.of("3000", "-1", "x", "1e3", "99999999999")) {
            assertThat(teacher.get("/trees/" + tree.id() + "/life?until=" + until).statusCode())
                    .as(until)
                    .isEqualTo(400);
        }
        var course = "/courses/" + group.course().id();
        assertThat(teacher.get(course + "?page=-1").statusCode()).isEqualTo(400);
        assertThat(teacher.get(course + "?page=first").statusCode()).isBetween(400, 404);
        assertThat(teacher.get(course + "/next?headline=LOST").statusCode()).isBetween(400, 404);
        assertThat(teacher.get("/trees/" + tree.id() + "/observations?fact=lost").statusCode())
                .isBetween(200, 404);
    }

    @Test
    void theRegistrarSeesEverybody() {
        var office = Visitor.of(people, school.person("Rika Registrar", Role.REGISTRAR));
        for (var path :
                all(
                        ofTeachers,
                        List.of("/people", "/home", "/audit", "/audit?thing=tree&login="))) {
            assertThat(office.get(path).statusCode()).as(path).isEqualTo(200);
        }
    }

    private static List<String> all(List<String> some, List<String> others) {
        var all = new ArrayList<>(some);
        all.addAll(others);
        return all;
    }
}
