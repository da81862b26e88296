package org.ripewood.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hibernate.SessionFactory;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.accounts.CalendarLinks;
import org.ripewood.aftercare.Aftercare;
import org.ripewood.archive.Archive;
import org.ripewood.archive.RecordForm;
import org.ripewood.assess.Judged;
import org.ripewood.assess.Judgements;
import org.ripewood.assess.NewJudgement;
import org.ripewood.core.progress.Work;
import org.ripewood.lists.Choice;
import org.ripewood.lists.ListKind;
import org.ripewood.lists.ListOutcome;
import org.ripewood.lists.Lists;
import org.ripewood.people.People;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.Branches;
import org.ripewood.records.NewObservation;
import org.ripewood.records.Observations;
import org.ripewood.records.WorksDone;
import org.ripewood.sessions.NewEnrolment;
import org.ripewood.sessions.NewSession;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.Sessions;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.NewAssignment;
import org.ripewood.standing.Standings;
import org.ripewood.steps.NewReport;
import org.ripewood.steps.Reports;
import org.ripewood.steps.SignOffsWaiting;
import org.ripewood.steps.Step;
import org.ripewood.steps.StepState;
import org.ripewood.steps.Steps;
import org.ripewood.trees.Departure;
import org.ripewood.trees.Departures;
import org.ripewood.trees.HandOver;
import org.ripewood.trees.HandOvers;
import org.ripewood.trees.NewDeparture;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;
import org.ripewood.trees.TreesUnchecked;

/** A tree leaves the school, is gone from what is done there, stays to be read, and comes back. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class TreeLeavesTest {

    private static final LocalDate TODAY = School.TODAY;
    private static final PageRequest ALL = new PageRequest(0, 200);

    @Inject School school;
    @Inject People people;
    @Inject PeopleUnchecked peopleUnchecked;
    @Inject Trees trees;
    @Inject Departures departures;
    @Inject HandOvers handOvers;
    @Inject WorksDone worksDone;
    @Inject TreesUnchecked treesUnchecked;
    @Inject Observations observing;
    @Inject Branches branches;
    @Inject Sessions sessions;
    @Inject Standings standings;
    @Inject Assigner assigner;
    @Inject Reports reports;
    @Inject SignOffsWaiting signOffsWaiting;
    @Inject Steps steps;
    @Inject Aftercare aftercare;
    @Inject Judgements judgements;
    @Inject CalendarLinks links;
    @Inject Archive archive;
    @Inject Lists lists;
    @Inject SessionFactory statistics;

    private School.Group group;
    private Actor keeper;
    private Actor teacher;
    private Actor office;
    private Tree tree;
    private String page;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        keeper = group.student();
        teacher = group.instructor();
        office = school.person("Rae Registrar", Role.REGISTRAR);
        tree = school.tree(teacher, keeper, "acer_palmatum");
        page = "/trees/" + tree.id();
    }

    private Tree leave(Actor by, LocalDate on, @Nullable String note) {
        var version = trees.get(by, tree.id()).version();
        return departures.leave(
                by, tree.id(), version, new NewDeparture(on, Departure.How.WITH_KEEPER, note));
    }

    private Tree takeIn(Actor by, Actor to, LocalDate since) {
        var version = trees.get(by, tree.id()).version();
        return handOvers.handOver(by, tree.id(), version, new HandOver(to.personId(), since));
    }

    private static Problem problem(Runnable act) {
        return catchThrowableOfType(Refused.class, act::run).problem();
    }

    private Session classOn(LocalDate on, int fromHour) {
        var session =
                sessions.set(
                        teacher,
                        new NewSession(
                                group.course().id(),
                                on,
                                LocalTime.of(fromHour, 0),
                                LocalTime.of(fromHour, 59),
                                null,
                                "long table",
                                List.of(teacher.personId())));
        var coming = new NewEnrolment(keeper.personId(), tree.id(), "A" + fromHour);
        return sessions.enrol(teacher, session.id(), coming);
    }

    private List<Long> comingTo(Session session) {
        return sessions.get(teacher, session.id()).enrolments().stream()
                .filter(coming -> coming.treeId() == tree.id())
                .map(Session.Enrolment::personId)
                .toList();
    }

    private Step assigned() {
        school.see(teacher, tree, "pest_level", "3");
        school.see(teacher, tree, "vigour_index", "80");
        school.see(teacher, tree, "soil_moist", "yes", TODAY);
        var pests = new NewAssignment("pest_control", null, null, null, null);
        return assigner.assign(teacher, tree.id(), pests);
    }

    private Step reported() {
        var step = assigned();
        var said =
                new NewReport(
                        TODAY,
                        "2 scales on 20 shoots",
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null);
        return reports.report(keeper, step.id(), step.version(), said);
    }

    @Test
    void keeperInstructorAndRegistrarLetItLeaveOnceOnADayThatFits() {
        for (int who = 0; who < 3; who++) {
            openTheSchool();
            var actor = List.of(keeper, teacher, office).get(who);
            for (var wrong : List.of(TODAY.plusDays(1), tree.cameOn().minusDays(1))) {
                var refused = problem(() -> leave(actor, wrong, null));
                assertThat(refused.status()).isEqualTo(400);
                assertThat(refused.faults()).extracting("field").containsExactly("leftOn");
            }
            var left = leave(actor, TODAY.minusDays(1), " to the coast ");
            assertThat(left.leftOn()).isEqualTo(TODAY.minusDays(1));
            assertThat(trees.get(actor, tree.id())).isEqualTo(left);
            assertThat(departures.of(actor, tree.id()))
                    .singleElement()
                    .satisfies(told -> assertThat(told.note()).isEqualTo("to the coast"));
            var again = problem(() -> leave(actor, TODAY, null));
            assertThat(again.status()).isEqualTo(409);
            assertThat(again.detail())
                    .isEqualTo("The tree left the school on %s.".formatted(TODAY.minusDays(1)));
        }
    }

    @Test
    void itLeavesNotBeforeTheKeeperOfNowBegan() {
        var next = school.person("Nora Next", Role.STUDENT);
        school.join(group, next, Role.STUDENT);
        takeIn(teacher, next, TODAY.minusDays(3));
        assertThat(problem(() -> leave(next, TODAY.minusDays(4), null)).status()).isEqualTo(400);
        assertThat(leave(next, TODAY.minusDays(3), null).left()).isTrue();
    }

    @Test
    void whoDoesNotReachItCannotLetItLeave() {
        var other = school.newGroup();
        for (var stranger : List.of(other.student(), other.instructor())) {
            var going = new NewDeparture(TODAY, Departure.How.DIED, null);
            assertThat(problem(() -> departures.leave(stranger, tree.id(), 0, going)).status())
                    .isEqualTo(404);
            assertThat(problem(() -> departures.of(stranger, tree.id())).status()).isEqualTo(404);
        }
        assertThat(trees.get(keeper, tree.id()).left()).isFalse();
    }

    @Test
    void theVersionIsAskedFor() {
        var going = Map.of("leftOn", "" + TODAY, "how", "DIED");
        var path = "/api/v1/trees/" + tree.id() + "/leave";
        var visitor = Visitor.of(people, keeper);
        assertThat(visitor.sendJson(path, null, going).statusCode()).isEqualTo(428);
        assertThat(visitor.sendJson(path, "\"99\"", going).statusCode()).isEqualTo(412);
        assertThat(trees.get(keeper, tree.id()).left()).isFalse();
        var done = visitor.sendJson(path, "\"" + tree.version() + "\"", going);
        assertThat(done.statusCode()).isEqualTo(200);
        assertThat(done.jsonPath().getString("leftOn")).isEqualTo("" + TODAY);
    }

    /** Asked where a tree is told before and no more afterwards. */
    @Test
    void itIsOnNoListBoardPlanOrCalendar() {
        var session = classOn(TODAY.plusDays(2), 9);
        reported();
        var repotting = new Work("root_pruning_repot", TODAY.minusDays(3), 0, 0, 0, 0);
        worksDone.record(teacher, tree.id(), repotting, null, null);
        school.wound(teacher, tree, "left", 20, TODAY.minusDays(100));
        var calendar = "/calendar/" + links.make(keeper) + ".ics";
        var course = "/courses/" + group.course().id();
        var pages = new LinkedHashMap<String, Actor>();
        pages.put("/home", keeper);
        pages.put("/home ", teacher);
        pages.put(course, teacher);
        pages.put(course + "/cards", teacher);
        pages.put(course + "/board.csv", teacher);
        pages.put(course + "/readiness", teacher);
        pages.put(course + "/readiness.csv", teacher);
        pages.put(course + "/next", teacher);
        pages.put("/sessions/" + session.id(), teacher);
        pages.put("/sessions/" + session.id() + "/plan", teacher);
        pages.put("/sessions/" + session.id() + "/day", teacher);
        pages.forEach(
                (path, who) ->
                        assertThat(Visitor.of(people, who).get(path.strip()).asString())
                                .as(path)
                                .contains(tree.label()));
        assertThat(given().get(calendar).asString()).contains(tree.label(), "-shade-1-");
        assertThat(lists()).allSatisfy(list -> assertThat(list).contains(tree));
        assertThat(trees.left(keeper, null, null, ALL).items()).isEmpty();
        assertThat(signOffsWaiting.forInstructor(teacher, ALL).total()).isEqualTo(1);

        leave(keeper, TODAY, null);

        pages.forEach(
                (path, who) ->
                        assertThat(Visitor.of(people, who).get(path.strip()).asString())
                                .as(path)
                                .doesNotContain(tree.label()));
        assertThat(given().get(calendar).asString())
                .contains("STATUS:CANCELLED")
                .doesNotContain(tree.label(), "-shade-1-", "measure-" + tree.id());
        assertThat(lists())
                .allSatisfy(
                        list -> assertThat(list).extracting(Tree::id).doesNotContain(tree.id()));
        assertThat(signOffsWaiting.forInstructor(teacher, ALL).total()).isZero();
        assertThat(standings.proposals(teacher, tree.id(), TODAY)).isEmpty();
        assertThat(aftercare.of(keeper, tree.id(), TODAY).measuring()).isEmpty();
        assertThat(aftercare.of(keeper, tree.id(), TODAY).tasks()).noneMatch(task -> task.open());
    }

    private List<List<Tree>> lists() {
        return List.of(
                treesUnchecked.ofKeepers(List.of(keeper.personId())),
                trees.list(keeper, null, null, ALL).items(),
                trees.list(teacher, keeper.personId(), null, ALL).items(),
                trees.list(teacher, null, group.course().id(), ALL).items(),
                trees.list(office, keeper.personId(), null, ALL).items());
    }

    @Test
    void thoseThatLeftAreFoundInPagesByWhoReachesThem() {
        leave(teacher, TODAY, null);
        var first = trees.get(keeper, tree.id());
        tree = school.tree(teacher, keeper, "acer_palmatum");
        leave(teacher, TODAY, null);
        for (var who : List.of(keeper, teacher)) {
            var found = trees.left(who, null, null, new PageRequest(0, 1));
            assertThat(found.items()).hasSize(1);
            assertThat(found.total()).isEqualTo(2);
        }
        assertThat(trees.left(office, keeper.personId(), null, ALL).items()).contains(first);
        assertThat(trees.left(office, null, null, ALL).items()).contains(first);
        assertThat(trees.left(teacher, null, group.course().id(), ALL).items()).contains(first);
        assertThat(trees.left(school.newGroup().instructor(), null, null, ALL).items()).isEmpty();
        var visitor = Visitor.of(people, keeper);
        assertThat(visitor.get("/trees/left").asString()).contains(first.label(), tree.label());
        assertThat(visitor.get("/api/v1/trees?left=true").jsonPath().getInt("total")).isEqualTo(2);
        assertThat(visitor.get("/api/v1/trees?left=maybe").statusCode()).isEqualTo(400);
    }

    @Test
    void aListTakesAsManyQueriesWithSomeThatLeft() {
        long before = queries();
        leave(teacher, TODAY, null);
        tree = school.tree(teacher, keeper, "acer_palmatum");
        assertThat(queries()).isEqualTo(before);
    }

    private long queries() {
        var counted = statistics.getStatistics();
        counted.setStatisticsEnabled(true);
        counted.clear();
        assertThat(trees.list(teacher, null, null, ALL).items()).hasSize(1);
        return counted.getPrepareStatementCount();
    }

    @Test
    void stepsUnderWayAreTakenBackWithTheReason() {
        var step = reported();
        leave(keeper, TODAY, null);
        var after = steps.get(keeper, step.id());
        assertThat(after.state()).isEqualTo(StepState.WITHDRAWN);
        var last = after.events().get(after.events().size() - 1);
        assertThat(last.note()).isEqualTo("The tree left the school on %s.".formatted(TODAY));
        assertThat(last.byId()).isEqualTo(keeper.personId());
        assertThat(after.report()).isNotNull();
    }

    @Test
    void itGivesUpItsPlacesInClassesThatHaveNotBegun() {
        var over = classOn(TODAY.minusDays(1), 9);
        var begun = classOn(TODAY, 0);
        var ahead = classOn(TODAY.plusDays(1), 9);
        assertThat(sessions.aheadOf(keeper, tree.id()))
                .extracting(Session::id)
                .containsExactly(ahead.id());
        assertThat(Visitor.of(people, keeper).get(page + "/leave").asString())
                .contains("/sessions/" + ahead.id())
                .doesNotContain("/sessions/" + over.id());
        leave(teacher, TODAY.minusDays(1), null);
        assertThat(comingTo(ahead)).isEmpty();
        assertThat(comingTo(over)).containsExactly(keeper.personId());
        assertThat(comingTo(begun)).containsExactly(keeper.personId());
        assertThat(sessions.get(teacher, ahead.id()).version()).isGreaterThan(ahead.version());
        assertThat(Visitor.of(people, teacher).get("/sessions/" + over.id()).asString())
                .contains(tree.label());
    }

    @Test
    void itsRecordIsReadByThoseWhoReadItBefore() throws IOException {
        leave(keeper, TODAY, "to the coast");
        for (var who : List.of(keeper, teacher, office)) {
            var visitor = Visitor.of(people, who);
            assertThat(visitor.get(page).asString())
                    .contains("Not at the school", "left with its keeper", "to the coast")
                    .doesNotContain(page + "/wounds\" method", page + "/change");
            assertThat(visitor.get(page + "/record").asString())
                    .contains("The tree left the school")
                    .doesNotContain("<form class=\"fill");
            assertThat(visitor.get(page + "/papers").asString())
                    .contains(page + "/passport", page + "/hand-over", "to the coast")
                    .doesNotContain(page + "/change", page + "/leave", page + "/card");
            assertThat(visitor.get(page + "/passport").statusCode()).isEqualTo(200);
            for (var closed :
                    List.of("/measure", "/photos", "/observations?fact=pest_level", "/leave")) {
                assertThat(visitor.get(page + closed).asString())
                        .as(closed)
                        .contains("left")
                        .doesNotContain("<form class=\"fill");
            }
            try (var file = archive.tree(who, tree.id(), true, RecordForm.JSON)) {
                assertThat(new String(file.readAllBytes(), StandardCharsets.UTF_8))
                        .contains("\"leftOn\":\"%s\"".formatted(TODAY), "to the coast");
            }
        }
        var other = school.newGroup();
        assertThat(Visitor.of(people, other.instructor()).get(page).statusCode()).isEqualTo(404);
    }

    @Test
    void whoKeptOnlyTreesThatLeftCanBeForgotten() {
        assertThat(archive.forgetting(office, keeper.personId()).trees())
                .containsExactly(tree.label());
        assertThat(problem(this::forget).status()).isEqualTo(409);
        leave(keeper, TODAY, "to my aunt");
        assertThat(archive.forgetting(office, keeper.personId()).trees()).isEmpty();
        forget();
        assertThat(peopleUnchecked.get(keeper.personId()).active()).isFalse();
        assertThat(departures.of(office, tree.id()).get(0).note()).isNull();
        assertThat(Visitor.of(people, office).get(page).statusCode()).isEqualTo(200);
        assertThat(problem(() -> takeIn(office, keeper, TODAY)).status())
                .as("back to somebody forgotten")
                .isEqualTo(404);
        assertThat(takeIn(office, teacher, TODAY).left()).isFalse();
    }

    private void forget() {
        archive.forget(office, keeper.personId(), peopleUnchecked.get(keeper.personId()).version());
    }

    @Test
    void itComesBackToItsLastKeeperAndItsRecordGoesOn() {
        leave(keeper, TODAY.minusDays(2), "for the winter");
        assertThat(Visitor.of(people, keeper).get(page + "/hand-over").asString())
                .contains("Take %s in again".formatted(tree.label()), "Stan Student");
        assertThat(problem(() -> takeIn(keeper, keeper, TODAY.minusDays(3))).status())
                .isEqualTo(400);
        var back = takeIn(keeper, keeper, TODAY.minusDays(1));
        assertThat(back.left()).isFalse();
        assertThat(back.keeperId()).isEqualTo(keeper.personId());
        school.see(keeper, tree, "pest_level", "1", TODAY);
        assertThat(trees.list(keeper, null, null, ALL).items()).contains(back);
        assertThat(trees.left(keeper, null, null, ALL).items()).isEmpty();
        assertThat(departures.of(keeper, tree.id())).hasSize(1);
        assertThat(Visitor.of(people, keeper).get(page).asString()).contains("came back");
        assertThat(problem(() -> takeIn(keeper, keeper, TODAY)).status())
                .as("here it is kept by that keeper already")
                .isEqualTo(400);
        assertThat(problem(() -> leave(keeper, TODAY.minusDays(2), null)).status())
                .as("the new keeping counts")
                .isEqualTo(400);
        assertThat(leave(keeper, TODAY, null).left()).isTrue();
        assertThat(departures.of(keeper, tree.id())).hasSize(2);
    }

    @Test
    void whatTheLastKeeperSaidOfItsLeavingStaysWithThem() {
        leave(keeper, TODAY, "to my aunt");
        var next = school.person("Nora Next", Role.STUDENT);
        school.join(group, next, Role.STUDENT);
        takeIn(teacher, next, TODAY);
        assertThat(departures.of(next, tree.id()).get(0).note()).isNull();
        assertThat(departures.of(teacher, tree.id()).get(0).note()).isEqualTo("to my aunt");
    }

    @Test
    void placesGoAlongToWhoAttendsTheCourseAndAreGivenUpElsewhere() {
        var over = classOn(TODAY.minusDays(1), 9);
        var here = classOn(TODAY.plusDays(1), 9);
        var next = school.person("Nora Next", Role.STUDENT);
        school.join(group, next, Role.STUDENT);
        assertThat(Visitor.of(people, keeper).get(page + "/hand-over").asString())
                .contains("/sessions/" + here.id(), "at the same bench");
        takeIn(keeper, next, TODAY);
        assertThat(comingTo(here)).containsExactly(next.personId());
        assertThat(comingTo(over)).containsExactly(keeper.personId());
        var now = sessions.get(teacher, here.id());
        assertThat(now.version()).isGreaterThan(here.version());
        assertThat(now.enrolments()).singleElement().extracting("bench").isEqualTo("A9");
        assertThat(sessions.ofPerson(keeper, TODAY).get(0).withdrawn()).isTrue();
        assertThat(sessions.ofPerson(next, TODAY).get(0).treeIds()).containsExactly(tree.id());

        var elsewhere = school.newGroup();
        takeIn(office, elsewhere.student(), TODAY);
        assertThat(comingTo(here)).isEmpty();
        assertThat(sessions.ofPerson(elsewhere.student(), TODAY)).isEmpty();
    }

    @Test
    void whatARefusedHandOverWouldHaveMovedStays() {
        var here = classOn(TODAY.plusDays(1), 9);
        assertThat(problem(() -> takeIn(keeper, keeper, TODAY)).status()).isEqualTo(400);
        assertThat(comingTo(here)).containsExactly(keeper.personId());
    }

    @Test
    void aDraftedJudgementIsNotSignedOnceItLeft() {
        var judgement = new NewJudgement("root-flare", 2, TODAY, null, false, null);
        var draft = judgements.begin(teacher, Judged.tree(tree.id()), judgement);
        var visitor = Visitor.of(people, teacher);
        var form = page + "/judgements/root-flare";
        assertThat(visitor.get(page + "/judgements").asString()).contains(form);
        leave(teacher, TODAY, null);
        assertThat(visitor.get(page + "/judgements").asString()).doesNotContain(form);
        assertThat(problem(() -> judgements.sign(teacher, draft.id(), draft.version())).status())
                .isEqualTo(409);
    }

    /** Doors of which none has an address of its own. */
    @Test
    void neitherWorkNorFactsNorABranchTakenOffAreWritten() {
        leave(teacher, TODAY, null);
        var work = new Work("root_check", TODAY, 0, 0, 0, 0);
        var seen = new NewObservation("pest_level", "1", TODAY, null, null, null, null, null);
        var id = tree.id();
        for (var write :
                List.<Runnable>of(
                        () -> worksDone.record(teacher, id, work, null, null),
                        () -> observing.setFacts(teacher, id, Map.of(), TODAY, ""),
                        () -> branches.takeOff(teacher, id, 1, TODAY),
                        () -> observing.observe(teacher, id, seen))) {
            assertThat(problem(write).status()).isEqualTo(409);
        }
    }

    @Test
    void aListOfReadingsDoesNotKnowIt() {
        assertThat(readings().faults()).isEmpty();
        leave(teacher, TODAY, null);
        assertThat(readings().faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.column()).isEqualTo("tree"));
    }

    private ListOutcome readings() {
        var login = peopleUnchecked.get(keeper.personId()).login();
        var row = "%s,%s,vigour_index,80,%s,\n".formatted(tree.label(), login, TODAY);
        return lists.take(
                teacher,
                ListKind.READINGS,
                "tree,keeper,fact,value,observed_on,height_mm\n" + row,
                Choice.DRY_RUN);
    }

    @Test
    void aFormThatIsRefusedKeepsWhatWasTyped() {
        var visitor = Visitor.of(people, keeper);
        var wrong = new LinkedHashMap<String, Object>();
        wrong.put("version", tree.version());
        wrong.put("leftOn", "" + TODAY.plusDays(1));
        wrong.put("how", "GIVEN_AWAY");
        wrong.put("note", "to a garden & pond");
        var refused = visitor.send(page + "/leave", page + "/leave", wrong);
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.asString())
                .contains("to a garden &amp; pond", "value=\"GIVEN_AWAY\" selected")
                .contains("value=\"" + TODAY.plusDays(1) + "\"");
        wrong.put("leftOn", "" + TODAY);
        var done = visitor.send(page + "/leave", page + "/leave", wrong);
        assertThat(done.statusCode()).isEqualTo(303);
        assertThat(visitor.get(page + "/leave").asString()).contains("Take it in again");
    }

    @Test
    void whatWasTypedWhileItLeftIsNotGone() {
        var step = assigned();
        var visitor = Visitor.of(people, keeper);
        leave(teacher, TODAY, null);
        var typed =
                Visitor.fields(
                        "version",
                        "" + step.version(),
                        "doneOn",
                        "" + TODAY,
                        "evidence",
                        "1 of 20 & no more");

        var refused = visitor.send("/steps/" + step.id(), "/steps/" + step.id() + "/report", typed);

        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(refused.asString()).contains("What you typed:", "1 of 20 &amp; no more");
    }
}
