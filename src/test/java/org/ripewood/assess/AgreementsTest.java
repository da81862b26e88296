package org.ripewood.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.core.agreement.Answer;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;

/** How judgements become occasions and pairs; the mathematics is checked in its own room. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class AgreementsTest {

    /** A span of its own, so that no other test's judgements lie in it. */
    private static final LocalDate DAY = LocalDate.of(2011, 6, 15);

    @Inject School school;
    @Inject Judgements judgements;
    @Inject Agreements agreements;

    School.Group group;
    Actor first;
    Actor second;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        first = group.instructor();
        second = school.person("Second Judge", Role.INSTRUCTOR);
        school.join(group, second, Role.INSTRUCTOR);
    }

    @Test
    void twoJudgesAreComparedOnWhatBothJudgedAtTheSameTime() {
        // worked by hand: levels (0,0) (1,2) (2,1) (3,3); mean square of differences 2/4, over all
        // sixteen pairs of the two judges' levels 40/16, so kappa is 1 - 0.5/2.5
        int[][] levels = {{0, 0}, {1, 2}, {2, 1}, {3, 3}};
        for (var pair : levels) {
            var tree = tree();
            judge(first, tree, pair[0], DAY, false);
            judge(second, tree, pair[1], DAY.plusDays(20), false);
        }
        var alone = tree();
        judge(first, alone, 4, DAY, false);
        var later = tree();
        judge(first, later, 4, DAY, false);
        judge(second, later, 0, DAY.plusDays(31), false);

        var found = vigour(DAY, DAY.plusDays(60), false);
        assertThat(found.judgements()).isEqualTo(11);
        assertThat(found.shared()).isEqualTo(4);
        var pair = found.pairs().get(0);
        assertThat(List.of(pair.oneId(), pair.otherId()))
                .containsExactlyInAnyOrder(first.personId(), second.personId());
        var kappa = pair.kappa().find().orElseThrow();
        assertThat(kappa.pairs()).isEqualTo(4);
        assertThat(kappa.value()).isCloseTo(0.8, within(1e-12));
        assertThat(found.overall().find().orElseThrow().value()).isCloseTo(0.8, within(1e-12));
        assertThat(pair.correlation()).isInstanceOf(Answer.Available.class);
        assertThat(vigour(DAY, DAY.plusDays(60), true).pairs()).as("nobody was unswayed").isEmpty();
    }

    @Test
    void aCorrectedJudgementIsNotComparedAndTheLastLookOfAnOccasionCounts() {
        var day = DAY.plusYears(1);
        var tree = tree();
        var wrong = judge(first, tree, 0, day, false);
        sign(
                first,
                judgements.begin(
                        first, tree, new NewJudgement("vigour", 3, day, null, null, wrong.id())));
        judge(second, tree, 1, day, false);
        judge(second, tree, 3, day.plusDays(3), false);
        var other = tree();
        judge(first, other, 1, day, false);
        judge(second, other, 1, day, false);
        var kappa = vigour(day, day.plusDays(9), false).pairs().get(0).kappa().find();
        assertThat(kappa.orElseThrow().value()).isEqualTo(1);
    }

    @Test
    void onlyUnswayedLooksAreComparedWhenAskedFor() {
        var day = DAY.plusYears(2);
        var levels = new ArrayList<Integer>(List.of(1, 3));
        for (var level : levels) {
            var tree = tree();
            var waiting = judge(first, tree, level, School.TODAY, true);
            assertThat(waiting.waitsForSecond()).isTrue();
            assertThat(judge(second, tree, level, School.TODAY, false).blind()).isTrue();
        }
        var swayed = tree();
        judge(first, swayed, 0, day, false);
        judge(second, swayed, 4, day, false);
        var found =
                vigour(day, School.TODAY, true).pairs().stream()
                        .filter(pair -> pair.oneId() == first.personId())
                        .toList();
        assertThat(found).hasSize(1);
        assertThat(found.get(0).kappa().find().orElseThrow().pairs()).isEqualTo(2);
        assertThat(found.get(0).kappa().find().orElseThrow().value()).isEqualTo(1);
    }

    @Test
    void studentsDoNotCompareTheirJudges() {
        assertThatThrownBy(() -> agreements.between(group.student(), DAY, DAY, false))
                .isInstanceOf(Refused.class)
                .extracting(refused -> ((Refused) refused).problem().status())
                .isEqualTo(403);
        assertThatThrownBy(() -> agreements.between(first, DAY, DAY.minusDays(1), false))
                .isInstanceOf(Refused.class)
                .extracting(refused -> ((Refused) refused).problem().faults().get(0).field())
                .isEqualTo("until");
    }

    @Test
    void everyRubricIsToldAlsoThoseNobodyUsed() {
        var found =
                agreements.between(
                        first, LocalDate.of(1950, 1, 1), LocalDate.of(1950, 1, 2), false);
        assertThat(found).hasSizeGreaterThan(10);
        assertThat(found)
                .allSatisfy(
                        one -> assertThat(one.overall()).isInstanceOf(Answer.NotAvailable.class));
    }

    private RubricAgreement vigour(LocalDate from, LocalDate until, boolean blindOnly) {
        return agreements.between(first, from, until, blindOnly).stream()
                .filter(one -> one.rubric().equals("vigour"))
                .findFirst()
                .orElseThrow();
    }

    private Judged tree() {
        return Judged.tree(school.tree(first, group.student(), "acer_palmatum").id());
    }

    private Judgement judge(Actor judge, Judged of, int level, LocalDate on, boolean second) {
        var judgement = new NewJudgement("vigour", level, on, null, second, null);
        return sign(judge, judgements.begin(judge, of, judgement));
    }

    private Judgement sign(Actor judge, Judgement draft) {
        return judgements.sign(judge, draft.id(), draft.version());
    }
}
