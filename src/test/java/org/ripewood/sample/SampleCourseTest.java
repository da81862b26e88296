package org.ripewood.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.IOException;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.ripewood.School;
import org.ripewood.accounts.PasswordLinks;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.archive.Archive;
import org.ripewood.archive.RecordForm;
import org.ripewood.people.Courses;
import org.ripewood.people.People;
import org.ripewood.people.Person;
import org.ripewood.people.Sample;
import org.ripewood.people.Samples;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.readiness.ReadinessAsked;
import org.ripewood.readiness.ReadinessMaker;
import org.ripewood.sessions.NewEnrolment;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.Sessions;
import org.ripewood.sites.NewSite;
import org.ripewood.steps.Step;
import org.ripewood.steps.StepState;
import org.ripewood.steps.Steps;
import org.ripewood.trees.HandOver;
import org.ripewood.trees.HandOvers;
import org.ripewood.trees.NewTree;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeSites;
import org.ripewood.trees.Trees;
import org.ripewood.web.Visitor;

/** A sample course comes and goes, and the school's own stays as it is. */
@QuarkusTest
@TestProfile(SampleProfile.class)
class SampleCourseTest {

    private static final PageRequest ALL = new PageRequest(0, 100);

    @Inject School school;
    @Inject WholeSchool whole;
    @Inject SampleCourses samples;
    @Inject SampleLoading loading;
    @Inject Samples marks;
    @Inject Archive archive;
    @Inject People people;
    @Inject Courses courses;
    @Inject PersonRegistration register;
    @Inject PasswordLinks links;
    @Inject Trees trees;
    @Inject TreeSites sites;
    @Inject HandOvers handOvers;
    @Inject Sessions sessions;
    @Inject Steps steps;
    @Inject ReadinessMaker readiness;
    @Inject Today today;

    @AfterEach
    void throwAway() {
        var office = school.person("Olle Office", Role.REGISTRAR);
        for (var sample : marks.all()) {
            samples.throwAway(office, sample.courseId());
        }
    }

    private Actor teacher() {
        return school.person("Tessa Arden", Role.REGISTRAR, Role.INSTRUCTOR);
    }

    @Test
    void aSchoolIsAfterwardsWhatItWasBefore() throws SQLException, IOException {
        var teacher = teacher();
        var group = school.newGroup();
        var own = school.tree(group.instructor(), group.student(), "acer_palmatum");
        school.see(group.instructor(), own, "vigour_index", "60");
        school.wound(group.instructor(), own, "Left of the trunk", 12);
        var before = whole.rows();
        var files = whole.files();

        var course = samples.add(teacher);
        var filled = whole.rows();
        assertThat(filled.get("tree")).hasSize(before.get("tree").size() + 12);
        for (var table :
                List.of(
                        "course",
                        "person",
                        "class_session",
                        "enrolment",
                        "observation",
                        "wound",
                        "branch",
                        "photo",
                        "step",
                        "step_event",
                        "skill_judgement",
                        "work_done")) {
            assertThat(filled.get(table).size()).as(table).isGreaterThan(before.get(table).size());
        }
        assertThat(whole.files()).hasSizeGreaterThan(files.size());
        var tree = sampleTrees(teacher, course).get(0);
        // what the teacher tries on it goes with it
        school.see(teacher, tree, "vigour_index", "70");

        samples.throwAway(teacher, course);
        assertThat(whole.rows()).isEqualTo(before);
        assertThat(whole.files()).isEqualTo(files);
    }

    @Test
    void aSecondOneIsNotAdded() throws SQLException {
        var teacher = teacher();
        var course = samples.add(teacher);
        var once = whole.rows();
        refused(409, "There is a sample course already", () -> samples.add(teacher));
        assertThat(whole.rows()).isEqualTo(once);
        refused(412, "sample course", () -> samples.throwAway(teacher, course + 1_000));
        samples.throwAway(teacher, course);
        refused(404, "no sample", () -> samples.throwAway(teacher, course));
    }

    @Test
    void registrarsWhoTeachAddIt() {
        var group = school.newGroup();
        var office = school.person("Olle Office", Role.REGISTRAR);
        refused(403, "Only a registrar", () -> samples.add(group.instructor()));
        refused(403, "Only a registrar", () -> samples.add(group.student()));
        refused(409, "you are no instructor", () -> samples.add(office));
        var course = samples.add(teacher());
        refused(403, "Only a registrar", () -> samples.throwAway(group.instructor(), course));
        samples.throwAway(office, course);
    }

    @Test
    void nobodySignsInAsSomebodyMadeUpAndTheirTreesStayTheirs() {
        var teacher = teacher();
        var student = school.newGroup().student();
        var course = samples.add(teacher);
        var madeUp = students(teacher, course);
        assertThat(madeUp).hasSize(7).allMatch(one -> !one.active());
        var one = madeUp.get(0);
        refused(
                409,
                "is made up",
                () -> register.setActive(teacher, one.id(), one.version(), true));
        refused(409, "may not sign in", () -> links.make(teacher, one.id()));
        var other = school.newGroup().course();
        refused(
                409,
                "no student of the school",
                () -> courses.join(teacher, other.id(), one.id(), Role.STUDENT));
        var tree = sampleTrees(teacher, course).get(0);
        refused(
                409,
                "stays in the sample course",
                () ->
                        handOvers.handOver(
                                teacher,
                                tree.id(),
                                tree.version(),
                                new HandOver(student.personId(), School.TODAY)));
        refused(
                400,
                "needs correcting",
                () -> trees.enter(teacher, tree(one.id(), tree.siteId(), School.TODAY)));
    }

    /** Guests and what is theirs stay; that they belonged to the sample goes. */
    @Test
    void guestsStayAtTheSchool() throws SQLException {
        var teacher = teacher();
        var group = school.newGroup();
        var own = school.tree(group.instructor(), group.student(), "acer_palmatum");
        var before = whole.rows();
        var course = samples.add(teacher);
        var guest = group.student();
        courses.join(teacher, course, guest.personId(), Role.STUDENT);
        var session = session(teacher, course);
        sessions.enrol(
                teacher, session.id(), new NewEnrolment(guest.personId(), own.id(), "guest"));
        assertThat(samples.get(teacher).orElseThrow().guests())
                .containsExactlyInAnyOrder(
                        people.name(guest.personId()), people.name(teacher.personId()));
        samples.throwAway(teacher, course);
        assertThat(whole.rows()).isEqualTo(before);
    }

    /** What is made up here is told as made up where its file is brought in. */
    @Test
    void aFileOfItStaysMarked() throws IOException {
        var teacher = teacher();
        var course = samples.add(teacher);
        var madeUp = marks.peopleOf(course);
        try (var file = archive.course(teacher, course, RecordForm.JSON)) {
            archive.take(teacher, file);
        }
        assertThat(marks.all()).hasSize(2);
        var other = marks.all().get(1).courseId();
        assertThat(marks.peopleOf(other)).hasSameSizeAs(madeUp).doesNotContainAnyElementsOf(madeUp);
        samples.throwAway(teacher, course);
        assertThat(marks.all()).extracting(Sample::courseId).containsExactly(other);
        assertThat(sampleTrees(teacher, other)).hasSize(12);
    }

    /** Each page of the course and its trees says that it is made up, and no other does. */
    @Test
    void everyPageOfItSaysSo() {
        var teacher = teacher();
        var group = school.newGroup();
        var own = school.tree(group.instructor(), group.student(), "acer_palmatum");
        var browser = Visitor.of(people, teacher);
        var form = Map.of("once", "a-key-of-this-form");
        var answer = browser.send("/sample-course", "/sample-course", form);
        assertThat(answer.statusCode()).isEqualTo(303);
        var twice = browser.send("/sample-course", "/sample-course", form);
        assertThat(twice.statusCode()).isEqualTo(303);
        assertThat(twice.header("Location")).isEqualTo(answer.header("Location"));
        var course = samples.get(teacher).orElseThrow().courseId();
        assertThat(answer.header("Location")).endsWith("/courses/" + course);
        var tree = sampleTrees(teacher, course).get(0).id();
        var session = session(teacher, course).id();
        var step =
                steps.of(teacher, sampleTree(teacher, course, "Box").id(), ALL).items().get(0).id();
        for (var path :
                List.of(
                        "/courses/" + course,
                        "/courses/" + course + "/next",
                        "/courses/" + course + "/sessions",
                        "/courses/" + course + "/weeks",
                        "/courses/" + course + "/again",
                        "/courses/" + course + "/people",
                        "/courses/" + course + "/about",
                        "/courses/" + course + "/readiness",
                        "/courses/" + course + "/cards",
                        "/trees/" + tree,
                        "/trees/" + tree + "/life",
                        "/trees/" + tree + "/techniques",
                        "/trees/" + tree + "/checklist",
                        "/trees/" + tree + "/route",
                        "/trees/" + tree + "/measure",
                        "/trees/" + tree + "/record",
                        "/trees/" + tree + "/observations",
                        "/trees/" + tree + "/photos",
                        "/trees/" + tree + "/papers",
                        "/trees/" + tree + "/card",
                        "/sessions/" + session,
                        "/sessions/" + session + "/day",
                        "/sessions/" + session + "/plan",
                        "/steps/" + step,
                        "/people/" + students(teacher, course).get(0).id())) {
            var page = browser.get(path);
            assertThat(page.statusCode()).as(path).isEqualTo(200);
            assertThat(page.asString()).as(path).contains("Sample – made up");
        }
        for (var path :
                List.of(
                        "/home",
                        "/courses/" + group.course().id(),
                        "/trees/" + own.id(),
                        "/people/" + group.student().personId())) {
            assertThat(browser.get(path).asString()).as(path).doesNotContain("Sample – made up");
        }
        var again = browser.send("/sample-course", "/sample-course", Map.of());
        assertThat(again.statusCode()).isEqualTo(409);
        assertThat(again.asString()).contains("There is a sample course already");
        var seen = browser.get("/sample-course").asString();
        assertThat(seen).contains("Throw the sample away", "12 trees", "7 made-up students");
        var away = "/sample-course/throw-away";
        assertThat(browser.send("/sample-course", away, Map.of("course", "x")).statusCode())
                .isEqualTo(400);
        var gone = browser.send("/sample-course", away, Map.of("course", course));
        assertThat(gone.statusCode()).isEqualTo(303);
        assertThat(browser.get("/home").asString()).contains("thrown away");
        assertThat(browser.get("/courses/" + course).statusCode()).isEqualTo(404);
        assertThat(browser.get("/trees/" + tree).statusCode()).isEqualTo(404);
    }

    /** At the foot of a sheet; cards to be cut apart say so with the name of the course each. */
    @Test
    void everySheetOfPaperSaysSo() throws IOException {
        var teacher = teacher();
        var course = samples.add(teacher);
        var browser = Visitor.of(people, teacher);
        for (var path :
                List.of(
                        "/courses/" + course + "/readiness.pdf",
                        "/courses/" + course + "/cards.pdf",
                        "/sessions/" + session(teacher, course).id() + "/plan.pdf",
                        "/trees/" + sampleTrees(teacher, course).get(0).id() + "/checklist.pdf")) {
            try (var paper = Loader.loadPDF(browser.get(path).asByteArray())) {
                for (int sheet = 1; sheet <= paper.getNumberOfPages(); sheet++) {
                    var text = new PDFTextStripper();
                    text.setStartPage(sheet);
                    text.setEndPage(sheet);
                    assertThat(text.getText(paper).replaceAll("\\s+", " "))
                            .as("%s, sheet %d", path, sheet)
                            .containsAnyOf("Sample – made up", "Sample course (made up)");
                }
            }
        }
    }

    static Stream<Arguments> sites() {
        return Stream.of(-37.5, 0.0, 25.0, 52.0, 64.0)
                .flatMap(
                        latitude ->
                                Stream.of("2026-01-10", "2026-04-12", "2026-07-01", "2026-10-20")
                                        .map(day -> Arguments.of(latitude, LocalDate.parse(day))));
    }

    /** Wherever the school lies and whatever the day, all of it is entered and has its verdicts. */
    @ParameterizedTest
    @MethodSource("sites")
    void itLoadsAnywhereAndOnAnyDay(double latitude, LocalDate day) {
        var teacher = teacher();
        inATransactionTakenBack(
                site -> {
                    var loaded = loading.load(teacher, site);
                    assertThat(loaded.siteId()).isNull();
                    marks.mark(teacher, loaded.courseId(), null, loaded.people());
                    assertShown(teacher, loaded.courseId(), day);
                },
                teacher,
                latitude,
                day);
        assertThat(marks.all()).isEmpty();
    }

    private void assertShown(Actor teacher, long course, LocalDate day) {
        var found = sampleTrees(teacher, course);
        assertThat(found).hasSize(12);
        var sheet = readiness.whole(teacher, course, day, ReadinessAsked.ALL);
        assertThat(sheet.rows().items()).hasSize(12).allMatch(row -> !row.cells().isEmpty());
        var states =
                found.stream()
                        .flatMap(tree -> steps.of(teacher, tree.id(), ALL).items().stream())
                        .map(Step::state)
                        .toList();
        assertThat(states).contains(StepState.REPORTED);
        var session = session(teacher, course);
        assertThat(session.heldOn()).isEqualTo(day.plusDays(14));
        assertThat(session.enrolments()).hasSize(7);
    }

    private void inATransactionTakenBack(
            Consumer<Long> work, Actor teacher, double latitude, LocalDate day) {
        QuarkusTransaction.begin(QuarkusTransaction.beginOptions().timeout(600));
        try {
            today.asOf(
                    day,
                    () -> {
                        var site =
                                sites.enter(
                                        teacher,
                                        new NewSite(
                                                "Bench at " + latitude,
                                                latitude,
                                                10.0,
                                                "Europe/Zurich",
                                                false,
                                                null,
                                                null));
                        work.accept(site.id());
                    });
        } finally {
            QuarkusTransaction.rollback();
        }
    }

    private List<Person> students(Actor teacher, long course) {
        return courses.members(teacher, course, Role.STUDENT);
    }

    private List<Tree> sampleTrees(Actor teacher, long course) {
        return trees.list(teacher, null, course, ALL).items();
    }

    private Tree sampleTree(Actor teacher, long course, String label) {
        return sampleTrees(teacher, course).stream()
                .filter(tree -> tree.label().startsWith(label))
                .findFirst()
                .orElseThrow();
    }

    private Session session(Actor teacher, long course) {
        var all = sessions.of(teacher, courses.roster(teacher, course), LocalDate.EPOCH);
        return Objects.requireNonNull(all.get(0));
    }

    private static NewTree tree(long keeper, long site, LocalDate cameOn) {
        return new NewTree("Mine", "acer_palmatum", keeper, site, cameOn, null, null);
    }

    private static void refused(int status, String words, Runnable act) {
        assertThatThrownBy(act::run)
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> {
                            assertThat(refused.problem().status()).isEqualTo(status);
                            assertThat(refused.problem().detail()).contains(words);
                        });
    }
}
