package org.ripewood.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.Observation;
import org.ripewood.records.Observations;
import org.ripewood.trees.Tree;

@QuarkusTest
@TestProfile(SchoolProfile.class)
class JudgementsTest {

    private static final PageRequest FIRST = new PageRequest(0, 50);
    private static final String VIGOUR = "vigour";
    private static final String FLARE = "root-flare";

    @Inject School school;
    @Inject Judgements judgements;
    @Inject Assessments assessments;
    @Inject Observations observing;

    School.Group group;
    Actor first;
    Actor second;
    Actor registrar;
    Tree tree;
    Judged ofTree;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        first = group.instructor();
        second = school.person("Second Judge", Role.INSTRUCTOR);
        registrar = school.person("Registrar", Role.REGISTRAR);
        school.join(group, second, Role.INSTRUCTOR);
        tree = school.tree(first, group.student(), "acer_palmatum");
        ofTree = Judged.tree(tree.id());
    }

    @Test
    void aDraftIsItsJudgesOwnUntilItIsSigned() {
        var draft = judgements.begin(first, ofTree, of(FLARE, null));
        assertThat(draft.draft()).isTrue();
        assertThat(seen(first)).containsExactly(draft.id());
        assertThat(seen(second)).isEmpty();
        assertThat(seen(group.student())).isEmpty();
        assertThat(refusalOf(() -> judgements.get(second, draft.id())).status()).isEqualTo(404);
        assertThat(refusalOf(() -> judgements.begin(first, ofTree, of(FLARE, 1))).status())
                .as("one draft at a time")
                .isEqualTo(409);
        assertThat(refusalOf(() -> judgements.sign(first, draft.id(), draft.version())))
                .satisfies(
                        problem -> assertThat(problem.faults().get(0).field()).isEqualTo("level"));
        var changed = judgements.change(first, draft.id(), draft.version(), of(FLARE, 3));
        assertThat(
                        refusalOf(
                                        () ->
                                                judgements.change(
                                                        first,
                                                        draft.id(),
                                                        draft.version(),
                                                        of(FLARE, 1)))
                                .status())
                .as("by one who has not seen the change")
                .isEqualTo(412);
        var signed = judgements.sign(first, draft.id(), changed.version());
        assertThat(signed.level()).isEqualTo(3);
        assertThat(seen(second)).containsExactly(draft.id());
        assertThat(seen(group.student())).containsExactly(draft.id());
        assertThat(seen(registrar)).containsExactly(draft.id());
    }

    @Test
    void whatIsSignedStaysAndACorrectionTakesItsPlace() {
        var signed = signed(first, of(VIGOUR, 1));
        for (ThrowingCallable change :
                List.<ThrowingCallable>of(
                        () ->
                                judgements.change(
                                        first, signed.id(), signed.version(), of(VIGOUR, 4)),
                        () -> judgements.discard(first, signed.id(), signed.version()),
                        () -> judgements.sign(first, signed.id(), signed.version()))) {
            assertThat(refusalOf(change).status()).isEqualTo(409);
        }
        assertThat(vigour()).extracting(Observation::value).containsExactly(new Value.Number(32));

        var corrected = signed(first, correction(VIGOUR, 3, signed.id()));
        assertThat(judgements.get(second, signed.id()).supersededBy()).isEqualTo(corrected.id());
        assertThat(judgements.latest(first, ofTree))
                .extracting(Judgement::id)
                .containsExactly(corrected.id());
        assertThat(vigour())
                .as("the entry is corrected as well")
                .extracting(Observation::value, seen -> seen.supersededBy() != null)
                .containsExactly(
                        tuple(new Value.Number(70), false), tuple(new Value.Number(32), true));
        assertThat(
                        refusalOf(
                                        () ->
                                                judgements.begin(
                                                        first,
                                                        ofTree,
                                                        correction(VIGOUR, 2, signed.id())))
                                .status())
                .as("corrected once")
                .isEqualTo(409);
        assertThat(
                        refusalOf(
                                        () ->
                                                judgements.begin(
                                                        second,
                                                        ofTree,
                                                        correction(VIGOUR, 2, corrected.id())))
                                .status())
                .as("by its own judge only")
                .isEqualTo(400);
    }

    @Test
    void aSecondJudgeLooksUnswayed() {
        var hidden = signed(first, secondWanted(VIGOUR, 2));
        assertThat(hidden.waitsForSecond()).isTrue();
        for (var other : List.of(second, group.student(), registrar)) {
            assertThat(seen(other)).isEmpty();
            assertThat(refusalOf(() -> judgements.get(other, hidden.id())).status()).isEqualTo(404);
        }
        assertThat(vigour()).as("it counts for nothing yet").isEmpty();

        var unswayed = signed(second, of(VIGOUR, 3));
        assertThat(unswayed.blind()).isTrue();
        assertThat(judgements.get(first, hidden.id()).waitsForSecond()).isFalse();
        assertThat(seen(group.student())).containsExactlyInAnyOrder(hidden.id(), unswayed.id());
        assertThat(vigour())
                .extracting(Observation::byId)
                .containsExactlyInAnyOrder(first.personId(), second.personId());
        assertThat(signed(second, of(VIGOUR, 3)).blind()).as("nothing was hidden").isFalse();
    }

    @Test
    void aJudgeWhoReachesTheTreeNoMoreIsNotInTheSecondsWay() {
        var gone = school.person("Gone Judge", Role.INSTRUCTOR);
        var office = new Actor(gone.personId(), Set.of(Role.INSTRUCTOR, Role.REGISTRAR));
        var hidden = signed(office, secondWanted(VIGOUR, 2));
        var unswayed = signed(second, of(VIGOUR, 3));
        assertThat(judgements.get(second, unswayed.id()).draft())
                .as("signed, and not only told so")
                .isFalse();
        assertThat(judgements.get(second, hidden.id()).waitsForSecond()).isFalse();
        assertThat(vigour())
                .as("the word of one who does not reach the tree does not count")
                .extracting(Observation::byId)
                .containsExactly(second.personId());
    }

    @Test
    void theFirstJudgeNeedNotWaitForEver() {
        var hidden = signed(first, secondWanted(VIGOUR, 2));
        assertThat(refusalOf(() -> judgements.open(second, hidden.id(), hidden.version())).status())
                .isEqualTo(404);
        judgements.open(first, hidden.id(), hidden.version());
        assertThat(seen(second)).containsExactly(hidden.id());
        assertThat(vigour()).hasSize(1);
    }

    /** What took its place would stay closed, and the mistake would count. */
    @Test
    void whatWasCorrectedWhileItWaitedIsNotOpened() {
        var mistake = signed(first, secondWanted(VIGOUR, 0));
        var corrected = signed(first, correction(VIGOUR, 3, mistake.id()));
        assertThat(corrected.waitsForSecond()).isTrue();
        var seen = judgements.get(first, mistake.id());
        assertThat(seen.waitsForSecond()).isFalse();
        assertThat(refusalOf(() -> judgements.open(first, seen.id(), seen.version())))
                .satisfies(problem -> assertThat(problem.status()).isEqualTo(409))
                .satisfies(
                        problem -> assertThat(problem.maybe()).contains("the one that corrected"));
        assertThat(seen(second)).isEmpty();
        judgements.open(first, corrected.id(), corrected.version());
        assertThat(seen(second)).containsExactly(corrected.id());
        assertThat(vigour()).extracting(Observation::value).containsExactly(new Value.Number(70));
    }

    @Test
    void aLookLongAfterIsNoSecondLook() {
        var hidden =
                signed(
                        first,
                        new NewJudgement(FLARE, 2, School.TODAY.minusDays(31), null, true, null));
        assertThat(signed(second, of(FLARE, 2)).blind()).isFalse();
        assertThat(judgements.get(first, hidden.id()).waitsForSecond()).isTrue();
    }

    @Test
    void aStudentsLevelShowsTheSkillOrTakesItBack() {
        var ofStudent = Judged.student(group.student().personId());
        assertThat(skills()).isEmpty();
        sign(first, judgements.begin(first, ofStudent, of("wiring-skill", 2)));
        assertThat(skills()).as("below the level").isEmpty();
        sign(first, judgements.begin(first, ofStudent, of("wiring-skill", 3)));
        assertThat(skills()).containsExactly("wiring-branches");
        sign(second, judgements.begin(second, ofStudent, of("wiring-skill", 1)));
        assertThat(skills()).as("a later look").isEmpty();
        assertThat(judgements.list(group.student(), ofStudent, FIRST).items()).hasSize(3);
    }

    @Test
    void whoMayNotJudgeIsTurnedAway() {
        var stranger = school.newGroup();
        var ofStudent = Judged.student(group.student().personId());
        assertThat(status(() -> judgements.begin(group.student(), ofTree, of(FLARE, 1))))
                .isEqualTo(403);
        assertThat(status(() -> judgements.begin(registrar, ofTree, of(FLARE, 1)))).isEqualTo(403);
        assertThat(status(() -> judgements.begin(stranger.instructor(), ofTree, of(FLARE, 1))))
                .isEqualTo(404);
        assertThat(status(() -> judgements.list(stranger.student(), ofTree, FIRST))).isEqualTo(404);
        assertThat(status(() -> judgements.list(stranger.instructor(), ofStudent, FIRST)))
                .isEqualTo(404);
        var both = school.person("Both", Role.INSTRUCTOR, Role.STUDENT);
        assertThat(
                        status(
                                () ->
                                        judgements.begin(
                                                both,
                                                Judged.student(both.personId()),
                                                of("wiring-skill", 4))))
                .as("their own skill")
                .isEqualTo(403);
        assertThat(
                        status(
                                () ->
                                        judgements.begin(
                                                first,
                                                Judged.student(first.personId()),
                                                of("wiring-skill", 4))))
                .isEqualTo(403);
    }

    @Test
    void aJudgementOfNothingIsRefusedByField() {
        assertFault("rubric", new NewJudgement("vigor", 1, School.TODAY, null, null, null));
        assertFault("rubric", of("wiring-skill", 1));
        assertFault("level", of(FLARE, 5));
        assertFault("judgedOn", on(School.TODAY.plusDays(1)));
        assertFault("judgedOn", on(LocalDate.of(1899, 12, 31)));
        assertFault("corrects", correction(FLARE, 1, Long.MAX_VALUE));
        var signed = signed(first, of(FLARE, 1));
        assertFault(
                "judgedOn",
                new NewJudgement(FLARE, 2, School.TODAY.minusDays(1), null, null, signed.id()));
        assertThat(seen(first)).containsExactly(signed.id());
    }

    private void assertFault(String field, NewJudgement judgement) {
        assertThat(refusalOf(() -> judgements.begin(first, ofTree, judgement)).faults())
                .extracting(fault -> fault.field())
                .containsExactly(field);
    }

    private static NewJudgement of(String rubric, @Nullable Integer level) {
        return new NewJudgement(rubric, level, School.TODAY, "seen at the bench", null, null);
    }

    private static NewJudgement on(LocalDate day) {
        return new NewJudgement(FLARE, 1, day, null, null, null);
    }

    private static NewJudgement secondWanted(String rubric, int level) {
        return new NewJudgement(rubric, level, School.TODAY, null, true, null);
    }

    private static NewJudgement correction(String rubric, int level, long corrects) {
        return new NewJudgement(rubric, level, School.TODAY, null, null, corrects);
    }

    private Judgement signed(Actor judge, NewJudgement judgement) {
        return sign(judge, judgements.begin(judge, ofTree, judgement));
    }

    private Judgement sign(Actor judge, Judgement draft) {
        return judgements.sign(judge, draft.id(), draft.version());
    }

    private List<Long> seen(Actor actor) {
        return judgements.list(actor, ofTree, FIRST).items().stream().map(Judgement::id).toList();
    }

    private List<Observation> vigour() {
        return observing.list(first, tree.id(), FIRST).items().stream()
                .filter(seen -> seen.fact() == Fact.VIGOUR_INDEX)
                .toList();
    }

    private Set<String> skills() {
        var id = group.student().personId();
        return assessments.skills(List.of(id)).get(id);
    }

    private static int status(ThrowingCallable call) {
        return refusalOf(call).status();
    }

    private static Problem refusalOf(ThrowingCallable call) {
        return catchThrowableOfType(Refused.class, call).problem();
    }
}
