package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.web.Visitor.fields;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.materials.Goods;
import org.ripewood.materials.Materials;
import org.ripewood.people.People;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.photos.NewPhoto;
import org.ripewood.photos.Photos;
import org.ripewood.photos.Pictures;
import org.ripewood.photos.Viewpoint;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.sessions.NewEnrolment;
import org.ripewood.sessions.NewSession;
import org.ripewood.sessions.Sessions;
import org.ripewood.sites.NewSite;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.NewAssignment;
import org.ripewood.steps.Steps;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeSites;
import org.ripewood.trees.Trees;

/**
 * Two browsers open the same form; the first sends it, the second hears of it, sees what stands now
 * beside what they typed, and may send theirs again.
 */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class SomeoneChangedThisTest {

    /**
     * A form and what happens to it.
     *
     * @param first what somebody is quicker with
     * @param now what the page has to tell of that
     * @param who the one who was quicker
     */
    private record Form(
            String name,
            Visitor second,
            String page,
            String action,
            Runnable first,
            Map<String, String> typed,
            List<String> now,
            Actor who) {}

    @Inject School school;
    @Inject People people;
    @Inject PeopleUnchecked peopleUnchecked;
    @Inject Trees trees;
    @Inject TreeSites treeSites;
    @Inject Photos photos;
    @Inject Sessions sessions;
    @Inject Steps steps;
    @Inject Assigner assigner;
    @Inject Materials materials;

    private School.Group group;
    private Actor instructor;
    private Tree tree;
    private Visitor teacher;
    private Visitor pupil;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        instructor = group.instructor();
        tree = school.tree(instructor, group.student(), "ulmus_parvifolia");
        teacher = Visitor.of(people, instructor);
        pupil = Visitor.of(people, group.student());
    }

    @Test
    void theOwnFieldsOfATree() {
        var page = "/trees/" + tree.id() + "/change";
        var first =
                fields("label", "Elm at the door", "siteId", "" + tree.siteId(), "note", "quick");
        var second =
                fields(
                        "label",
                        "Elm & so",
                        "siteId",
                        "" + tree.siteId(),
                        "note",
                        "typed at length, twice");
        holds(
                new Form(
                        "tree",
                        pupil,
                        page,
                        page,
                        () -> send(teacher, page, page, first),
                        second,
                        List.of("Elm at the door", "quick", "What it is called"),
                        instructor));
        assertThat(trees.get(instructor, tree.id()).note()).isEqualTo("typed at length, twice");
    }

    @Test
    void aSite() {
        var other = school.person("Olga Office", Role.REGISTRAR);
        var site =
                treeSites.enter(
                        instructor,
                        new NewSite("Long terrace", 51.0, 7.0, "UTC", null, null, null));
        var page = "/sites/" + site.id();
        var place = fields("latitude", "" + site.latitude(), "longitude", "" + site.longitude());
        place.put("zone", "" + site.zone());
        var first = new LinkedHashMap<>(place);
        first.put("name", site.name() + " north");
        var second = new LinkedHashMap<>(place);
        second.put("name", site.name());
        holds(
                new Form(
                        "site",
                        teacher,
                        page,
                        page,
                        () -> send(Visitor.of(people, other), page, page, first),
                        second,
                        List.of(site.name() + " north"),
                        other));
    }

    @Test
    void theReportOfAStep() {
        var step = assigned();
        var page = "/steps/" + step;
        holds(
                new Form(
                        "report",
                        pupil,
                        page,
                        page + "/report",
                        () -> {
                            send(
                                    teacher,
                                    page,
                                    page + "/report",
                                    report("3 scales on 20 shoots, as I saw it"));
                            send(teacher, page, page + "/send-back", fields("note", "mine to try"));
                        },
                        report("2 scales on 20 shoots"),
                        List.of("3 scales on 20 shoots, as I saw it", "mine to try", "sent back"),
                        instructor));
        assertThat(steps.get(instructor, step).report().evidence())
                .isEqualTo("2 scales on 20 shoots");
    }

    @Test
    void theSignOffOfAStep() {
        var step = assigned();
        var page = "/steps/" + step;
        send(pupil, page, page + "/report", report("5 scales left on 20 shoots"));
        var colleague = school.person("Cleo Colleague", Role.INSTRUCTOR);
        school.join(group, colleague, Role.INSTRUCTOR);
        holds(
                new Form(
                        "sign-off",
                        Visitor.of(people, colleague),
                        page,
                        page + "/sign-off",
                        () -> {
                            send(teacher, page, page + "/send-back", fields("note", "count them"));
                            send(
                                    pupil,
                                    page,
                                    page + "/report",
                                    report("counted: 4 scales on 20 shoots"));
                        },
                        fields("note", "well grown, go on"),
                        List.of("counted: 4 scales on 20 shoots", "reported"),
                        group.student()));
    }

    @Test
    void theDraftOfAJudgement() {
        var page = "/trees/" + tree.id() + "/judgements/root-flare";
        var draft = fields("level", "2", "judgedOn", "" + School.TODAY, "note", "begun");
        draft.put("then", "keep");
        post(teacher, page, page, draft);
        var first = new LinkedHashMap<>(draft);
        first.put("note", "from the tablet");
        var second = new LinkedHashMap<>(draft);
        second.put("note", "from the desk");
        second.put("level", "3");
        var tablet = Visitor.of(people, instructor);
        holds(
                new Form(
                        "judgement",
                        teacher,
                        page,
                        page,
                        () -> send(tablet, page, page, first),
                        second,
                        List.of("from the tablet", "What was seen"),
                        instructor));
    }

    @Test
    void aThingInStock() {
        var saw = materials.enter(instructor, Goods.tool(), 1.0);
        var other = school.person("Olga Other", Role.INSTRUCTOR);
        var page = "/stock/" + saw.id();
        var quicker = Goods.name("Root saw");
        holds(
                new Form(
                        "stock",
                        teacher,
                        page,
                        page,
                        () -> send(Visitor.of(people, other), page, page, fields("name", quicker)),
                        fields("name", Goods.name("Slow saw")),
                        List.of(quicker),
                        other));
    }

    @Test
    void whatIsSaidOfAPhoto() {
        var photo = photo();
        var page = "/photos/" + photo + "/about";
        holds(
                new Form(
                        "photo",
                        pupil,
                        page,
                        page,
                        () ->
                                send(
                                        teacher,
                                        page,
                                        page,
                                        fields("view", "BACK", "caption", "the other side")),
                        fields("view", "FRONT", "caption", "before repotting"),
                        List.of("the other side", Viewpoint.BACK.title()),
                        instructor));
    }

    @Test
    void aPhotoTakenAwayOfWhichMoreWasSaid() {
        var photo = photo();
        var about = "/photos/" + photo + "/about";
        holds(
                new Form(
                        "removal",
                        pupil,
                        about,
                        "/photos/" + photo + "/remove",
                        () ->
                                send(
                                        teacher,
                                        about,
                                        about,
                                        fields("view", "FRONT", "caption", "needed for the show")),
                        fields(),
                        List.of("needed for the show"),
                        instructor));
    }

    @Test
    void whetherAPersonMaySignIn() {
        var registrar = school.person("Rae Registrar", Role.REGISTRAR);
        var colleague = school.person("Ruth Registrar", Role.REGISTRAR);
        var person = peopleUnchecked.get(school.person("Aa Aaron", Role.STUDENT).personId());
        var action = "/people/" + person.id() + "/active";
        holds(
                new Form(
                        "person",
                        Visitor.of(people, registrar),
                        "/people",
                        action,
                        () ->
                                send(
                                        Visitor.of(people, colleague),
                                        "/people",
                                        action,
                                        fields("active", "false")),
                        fields("active", "true"),
                        List.of("May %s sign in?".formatted(person.name())),
                        colleague));
        assertThat(peopleUnchecked.get(person.id()).active()).isTrue();
    }

    @Test
    void aSessionThatIsCalledOff() {
        var session = session(School.TODAY.plusDays(4));
        var colleague = school.person("Cleo Colleague", Role.INSTRUCTOR);
        school.join(group, colleague, Role.INSTRUCTOR);
        var page = "/sessions/" + session;
        var coming = fields("treeId", "" + tree.id(), "bench", "4");
        holds(
                new Form(
                        "session",
                        teacher,
                        page,
                        page + "/cancellation",
                        () ->
                                post(
                                        Visitor.of(people, colleague),
                                        page,
                                        page + "/enrolments",
                                        coming),
                        fields("reason", "Nobody comes anyway."),
                        List.of("Trees that come"),
                        colleague));
    }

    @Test
    void aTreeThatIsHandedOver() {
        var next = school.person("Nora Next", Role.STUDENT);
        school.join(group, next, Role.STUDENT);
        var page = "/trees/" + tree.id() + "/hand-over";
        var change = "/trees/" + tree.id() + "/change";
        var quicker =
                fields("label", "Elm by the gate", "siteId", "" + tree.siteId(), "note", "given");
        holds(
                new Form(
                        "hand-over",
                        teacher,
                        page,
                        page,
                        () -> send(pupil, change, change, quicker),
                        fields("keeperId", "" + next.personId(), "since", "" + School.TODAY),
                        List.of("Elm by the gate", "<td>Nora Next", "<b>Stan Student", "given"),
                        group.student()));
        assertThat(trees.get(next, tree.id()).keeperId()).isEqualTo(next.personId());
    }

    @Test
    void aTreeThatLeaves() {
        var page = "/trees/" + tree.id() + "/leave";
        var change = "/trees/" + tree.id() + "/change";
        var quicker = fields("label", "Elm by the gate", "siteId", "" + tree.siteId());
        holds(
                new Form(
                        "leave",
                        teacher,
                        page,
                        page,
                        () -> send(pupil, change, change, quicker),
                        fields(
                                "leftOn",
                                "" + School.TODAY,
                                "how",
                                "DIED",
                                "note",
                                "dried out in June"),
                        List.of("Elm by the gate", "<td>died"),
                        group.student()));
        assertThat(trees.get(instructor, tree.id()).left()).isTrue();
    }

    @Test
    void whoCameToAClass() {
        var session = session(School.TODAY);
        var student = group.student().personId();
        var coming = new NewEnrolment(student, tree.id(), "1");
        sessions.enrol(instructor, session, coming);
        var colleague = school.person("Cleo Colleague", Role.INSTRUCTOR);
        school.join(group, colleague, Role.INSTRUCTOR);
        var page = "/sessions/" + session;
        var action = page + "/attendance";
        holds(
                new Form(
                        "roll",
                        teacher,
                        page,
                        action,
                        () ->
                                send(
                                        Visitor.of(people, colleague),
                                        page,
                                        action,
                                        fields("mark." + student, "LATE")),
                        fields("mark." + student, "AWAY"),
                        List.of("<td>Did not come</td><td><b>Came late</b>"),
                        colleague));
    }

    private long session(LocalDate on) {
        return sessions.set(
                        instructor,
                        new NewSession(
                                group.course().id(),
                                on,
                                LocalTime.of(9, 0),
                                LocalTime.of(12, 0),
                                null,
                                "long table",
                                List.of(instructor.personId())))
                .id();
    }

    /** What holds of every such form. */
    private void holds(Form form) {
        long seen = version(form.second().get(form.page()).asString(), form.action());
        form.first().run();
        var sent = new LinkedHashMap<>(form.typed());
        sent.put("version", "" + seen);
        var refused = form.second().send(form.page(), form.action(), sent);
        assertThat(refused.statusCode()).as(form.name()).isEqualTo(412);
        var html = refused.asString();
        assertThat(html)
                .as(form.name())
                .contains("Someone changed this", "What you typed, and what stands now")
                .contains("Changed by " + peopleUnchecked.get(form.who().personId()).name());
        assertThat(html).as(form.name()).contains(form.now());
        var told = html.substring(html.indexOf("ledger clash"));
        form.typed().values().stream()
                .filter(value -> value.contains(" "))
                .map(value -> value.replace("&", "&amp;"))
                .forEach(
                        value -> {
                            assertThat(told).as("told").contains("<td>" + value);
                            // once in what is told and once, to be sent again, in the form
                            assertThat(told.split(Pattern.quote(value), -1))
                                    .as("%s keeps %s", form.name(), value)
                                    .hasSizeGreaterThan(2);
                        });
        long now = version(html, form.action());
        assertThat(now).as(form.name()).isNotEqualTo(seen);
        sent.put("version", "" + now);
        var again = form.second().send(form.page(), form.action(), sent);
        assertThat(again.statusCode()).as(form.name()).isEqualTo(303);
    }

    /** The version that a form on a page is sent with. */
    private static long version(String html, String action) {
        int alone = html.indexOf("action=\"" + action + "\" method=\"post\"");
        // that of a report sends its photos along
        var form =
                html.substring(
                        alone >= 0
                                ? alone
                                : html.indexOf("action=\"" + action + "-with-photos\" method"));
        var whole = form.substring(0, form.indexOf("</form>"));
        var found = Pattern.compile("name=\"version\" value=\"(\\d+)\"").matcher(whole);
        assertThat(found.find()).as("a version in the form of " + action).isTrue();
        return Long.parseLong(found.group(1));
    }

    private void send(Visitor visitor, String page, String action, Map<String, String> fields) {
        var sent = new LinkedHashMap<>(fields);
        sent.put("version", "" + version(visitor.get(page).asString(), action));
        post(visitor, page, action, sent);
    }

    private static void post(
            Visitor visitor, String page, String action, Map<String, String> fields) {
        assertThat(visitor.send(page, action, fields).statusCode()).as(action).isEqualTo(303);
    }

    private long assigned() {
        school.see(instructor, tree, "pest_level", "3");
        school.see(instructor, tree, "vigour_index", "80");
        school.see(instructor, tree, "soil_moist", "yes", School.TODAY);
        var pests = new NewAssignment("pest_control", null, null, null, null);
        return assigner.assign(instructor, tree.id(), pests).id();
    }

    private long photo() {
        return photos.add(
                        group.student(),
                        tree.id(),
                        new NewPhoto(School.TODAY, Viewpoint.FRONT, "as it came", null, null),
                        new ByteArrayInputStream(Pictures.jpeg()))
                .id();
    }

    private static Map<String, String> report(String evidence) {
        return fields("doneOn", "" + School.TODAY, "evidence", evidence);
    }
}
