package org.ripewood.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.Database;
import org.ripewood.people.Courses;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.school.Schools;
import org.ripewood.web.Visitor;

/** The first hour of a school, by its pages; in a database of its own. */
@Tag("one-database")
@QuarkusTest
@TestProfile(FirstHourTest.EmptySchool.class)
class FirstHourTest {

    public static class EmptySchool implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Database.named("first-hour");
        }
    }

    private static final String PASSWORD = "quiet fern ladder stone";
    private static final String SCHOOL = "Moss & Stone House";
    private static final String ESCAPED = "Moss &amp; Stone House";
    private static final Pattern LINK = Pattern.compile("/password/[A-Za-z0-9_-]{43}");

    @Inject SetUpCode code;
    @Inject PeopleUnchecked people;
    @Inject Schools schools;
    @Inject Courses courses;
    @Inject Today today;

    /** One after the other, since each step stands on those before it. */
    @Test
    void aTeacherSetsUpTheirSchool() {
        var teacher = Visitor.nobody();
        theSchoolIsSetUp(teacher);
        theNameIsShownAndChanged(teacher);
        rolesAreGivenAndTaken(teacher);
        whoChoosesAPasswordByLinkIsSignedIn(teacher);
        aClassIsInvitedAtOnce(teacher);
        aSiteIsFoundAndAdded(teacher);
    }

    private void theSchoolIsSetUp(Visitor teacher) {
        var page = teacher.get("/set-up").asString();
        assertThat(page).contains("I teach myself", "Name of the school", " checked>");
        var typed = new HashMap<>(Map.of("code", "AAAA-AAAA-AAAA-AAAA", "school", SCHOOL));
        typed.putAll(Map.of("name", "Tessa Arden", "login", "tessa", "password", PASSWORD));
        typed.put("teaches", "true");
        var refused = teacher.send("/set-up", "/set-up", typed);
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.asString()).contains("value=\"" + ESCAPED + "\"", " checked>");
        typed.put("code", code.fresh());
        for (var hostile : List.of("s".repeat(81), "<b>House</b>", "two\nlines", "a\u202eb", " ")) {
            typed.put("school", hostile);
            assertThat(teacher.send("/set-up", "/set-up", typed).statusCode()).isEqualTo(400);
        }
        assertThat(people.findByLogin("tessa")).isEmpty();

        typed.put("school", SCHOOL);
        goesTo(teacher.send("/set-up", "/set-up", typed), "/home");
        assertThat(people.findByLogin("tessa").orElseThrow().roles())
                .containsExactlyInAnyOrder(Role.REGISTRAR, Role.INSTRUCTOR);
        assertThat(schools.get().name()).isEqualTo(SCHOOL);
        var home = teacher.get("/home").asString();
        assertThat(home).contains("Tessa Arden", "What to do first", "Enter the first tree");
        assertThat(home.split("<b>Done</b>", -1)).as("the name is done").hasSize(2);
    }

    private void theNameIsShownAndChanged(Visitor teacher) {
        assertThat(teacher.get("/people").asString())
                .contains(">" + ESCAPED + "</span>")
                .contains("<title>People and courses · " + ESCAPED + " · Ripewood</title>");
        assertThat(Visitor.nobody().get("/sign-in").asString()).contains(ESCAPED);
        var version = schools.get().version();
        var blank = Map.of("version", version, "name", "  ");
        assertThat(teacher.send("/school", "/school", blank).statusCode()).isEqualTo(400);
        var named = Map.of("version", version, "name", "Moss House");
        goesTo(teacher.send("/school", "/school", named), "/people");
        var late = teacher.send("/school", "/school", Map.of("version", version, "name", "Late"));
        assertThat(late.statusCode()).isEqualTo(412);
        assertThat(late.asString()).contains("Moss House", "Late");
        assertThat(teacher.get("/home").asString()).contains(">Moss House</span>");
    }

    private void rolesAreGivenAndTaken(Visitor teacher) {
        var tessa = people.findByLogin("tessa").orElseThrow();
        var page = "/people/" + tessa.id() + "/roles";
        teacher.get(page).then().statusCode(200).body(containsString("Roles of Tessa Arden"));
        var form = new HashMap<String, Object>(Map.of("version", tessa.version()));
        form.put("roles", List.of("REGISTRAR", "INSTRUCTOR", "STUDENT"));
        var asked = teacher.send(page, page, form);
        assertThat(asked.statusCode()).isEqualTo(403);
        assertThat(asked.asString()).contains("Confirm that it is you");
        form.put("confirmPassword", PASSWORD);
        goesTo(teacher.send(page, page, form), "/people#everybody");
        var all = people.get(tessa.id());
        assertThat(all.roles()).containsExactlyInAnyOrder(Role.values());

        form.put("version", all.version());
        form.put("roles", List.of("INSTRUCTOR"));
        var last = teacher.send(page, page, form);
        assertThat(last.statusCode()).isEqualTo(409);
        assertThat(last.asString()).contains("Tessa Arden is the only registrar");
        form.put("roles", List.of());
        assertThat(teacher.send(page, page, form).statusCode()).isEqualTo(400);
        form.put("roles", List.of("HEADMASTER"));
        assertThat(teacher.send(page, page, form).statusCode()).isEqualTo(400);
        form.put("version", tessa.version());
        form.put("roles", List.of("REGISTRAR"));
        assertThat(teacher.send(page, page, form).statusCode()).isEqualTo(412);
        assertThat(people.get(tessa.id())).isEqualTo(all);
    }

    private void whoChoosesAPasswordByLinkIsSignedIn(Visitor teacher) {
        var guest = Map.of("name", "Nils Orme", "login", "nils", "roles", "STUDENT");
        var link = LINK.matcher(teacher.send("/people", "/people/invitations", guest).asString());
        assertThat(link.find()).isTrue();
        var student = Visitor.nobody();
        var chosen = Map.of("newPassword", "slow river lantern oak");
        goesTo(student.send(link.group(), link.group(), chosen), "/home");
        student.get("/home").then().statusCode(200).body(containsString("Nils Orme"));
        assertThat(Visitor.nobody().get(link.group()).statusCode()).isEqualTo(404);
    }

    private void aClassIsInvitedAtOnce(Visitor teacher) {
        var course = Map.of("name", "First bench", "startsOn", today(0), "endsOn", today(90));
        goesTo(teacher.send("/people", "/people/courses", course), "/people");
        assertThat(teacher.get("/people").asString())
                .contains("“First bench” is open. Nobody belongs to it yet, not even you");
        assertThat(firstStep(teacher, "Open a course")).contains("Done");
        assertThat(firstStep(teacher, "Add people to the course"))
                .contains("You teach, and belong to no course yet.")
                .doesNotContain("Done");
        var wrong = "Ada & Lunt\nNils Orme; nils\nBero Wend; bero; pupil";
        var looked = look(teacher, wrong);
        assertThat(looked)
                .contains("Ada &amp; Lunt", "ada.lunt", "2 lines need", "is somebody&#39;s already")
                .contains("somebody of this name is here already", "found “pupil”")
                .doesNotContain("Invite these");
        var refused = teacher.send("/people/many", "/people/many", Map.of("lines", wrong));
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.asString()).contains("line 2: ", "line 3: ", "Ada &amp; Lunt");
        assertThat(people.findByLogin("ada.lunt")).isEmpty();

        var list = "Ada & Lunt\tada\tstudent\tFirst bench\nBero Wend; ; instructor; first bench";
        assertThat(look(teacher, list)).contains("Invite these 2 people");
        var sheet = teacher.send("/people/many", "/people/many", Map.of("lines", list));
        sheet.then().statusCode(200).header("Cache-Control", "no-store");
        assertThat(sheet.asString()).contains("Ada &amp; Lunt", "<b>bero.wend</b>", "until ");
        assertThat(LINK.matcher(sheet.asString()).results()).hasSize(2);
        assertThat(sheet.asString().split("<svg class=\"qr\"", -1)).hasSize(3);
        var bero = people.findByLogin("bero.wend").orElseThrow();
        assertThat(courses.as(new Actor(bero.id(), bero.roles()), Role.INSTRUCTOR)).hasSize(1);

        assertThat(firstStep(teacher, "Add people to the course"))
                .as("an instructor and a student belong to it")
                .contains("Done", "You teach, and belong to no course yet.");
        joins(teacher);
        assertThat(firstStep(teacher, "Add people to the course"))
                .contains("Done")
                .doesNotContain("You teach");

        var again = teacher.send("/people/many", "/people/many", Map.of("lines", list));
        assertThat(again.statusCode()).isEqualTo(400);
        assertThat(look(teacher, " \n;;\n")).contains("expected a name");
        assertThat(look(teacher, "")).contains("found 0");
        assertThat(look(teacher, "Guest\n".repeat(41))).contains("found 41");
        assertThat(look(teacher, "x".repeat(20_001))).contains("at most 20000 characters");
    }

    /** Adding somebody is answered, and adding them again is told apart. */
    private void joins(Visitor teacher) {
        var tessa = people.findByLogin("tessa").orElseThrow();
        var actor = new Actor(tessa.id(), tessa.roles());
        var form =
                Map.of(
                        "courseId",
                        courses.list(actor).get(0).id(),
                        "personId",
                        tessa.id(),
                        "as",
                        "INSTRUCTOR");
        goesTo(teacher.send("/people", "/people/members", form), "/people");
        assertThat(teacher.get("/people").asString())
                .contains("Tessa Arden is now instructor of “First bench”.");
        assertThat(teacher.get("/people").asString()).doesNotContain("is now instructor");
        goesTo(teacher.send("/people", "/people/members", form), "/people");
        assertThat(teacher.get("/people").asString())
                .contains("Tessa Arden was already instructor of “First bench”.");
    }

    private static String firstStep(Visitor teacher, String title) {
        var home = teacher.get("/home").asString();
        var item = home.substring(home.indexOf(">" + title + "<"));
        return item.substring(0, item.indexOf("</li>"));
    }

    private void aSiteIsFoundAndAdded(Visitor teacher) {
        assertThat(teacher.get("/sites/new").asString()).contains("Where is it?");
        assertThat(teacher.get("/sites/new?place=Nowherehamstead").asString())
                .contains("no town called “Nowherehamstead” is known");
        assertThat(teacher.get("/sites/new?place=San").asString()).contains("Which one?");
        assertThat(teacher.get("/sites/new?place=95,11").asString()).contains("from -90 to 90");
        assertThat(teacher.get("/sites/new?place=-33.5,-70.25").asString())
                .contains("value=\"-33.5, -70.25\"", "<optgroup label=\"America\">")
                .containsPattern("<option value=\"America/[A-Za-z_]+\" selected>");
        var form = new HashMap<>(Map.of("name", "Yard", "zone", "America/Santiago"));
        form.put("place", "Mossford");
        var name = teacher.send("/sites/new?place=1,1", "/sites", form);
        assertThat(name.statusCode()).isEqualTo(400);
        assertThat(name.asString()).contains("value=\"Mossford\"", "latitude and longitude here");
        form.put("place", "33,5 S; 70,25 W");
        form.put("zone", "America/Nowhere");
        assertThat(teacher.send("/sites/new?place=1,1", "/sites", form).statusCode())
                .isEqualTo(400);
        form.put("zone", "America/Santiago");
        var added = teacher.send("/sites/new?place=1,1", "/sites", form);
        assertThat(added.statusCode()).isEqualTo(303);
        var site = added.getHeader("Location").replaceFirst(".*(/sites/\\d+)$", "$1");
        assertThat(teacher.get(site).asString()).contains("-33.5° latitude, -70.25° longitude");
        form.put("place", "-34 -70");
        form.put("version", "0");
        goesTo(teacher.send(site, site, form), site);
        assertThat(teacher.get(site).asString()).contains("value=\"-34, -70\"");
    }

    private static String look(Visitor teacher, String lines) {
        return teacher.send("/people/many", "/people/many/look", Map.of("lines", lines)).asString();
    }

    private String today(int more) {
        return today.date().plusDays(more).toString();
    }

    private static void goesTo(Response answer, String path) {
        answer.then().statusCode(303).header("Location", endsWith(path));
    }
}
