package org.ripewood.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;

@QuarkusTest
@TestProfile(SchoolProfile.class)
class AssessmentsTest {

    private static final String WIRING = "wiring-branches";

    @Inject School school;
    @Inject Assessments assessments;

    School.Group group;
    long studentId;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
        studentId = group.student().personId();
    }

    @Test
    void theLatestJudgementByDayThenByEntryCounts() {
        judge(true, School.TODAY.minusDays(10));
        assertThat(skills()).containsExactly(WIRING);
        judge(false, School.TODAY.minusDays(5));
        assertThat(skills()).isEmpty();
        judge(true, School.TODAY.minusDays(7));
        assertThat(skills()).as("an older day entered later").isEmpty();
        judge(true, School.TODAY.minusDays(5));
        assertThat(skills()).as("the same day entered later").containsExactly(WIRING);
        assertThat(assessments.of(group.student(), studentId))
                .extracting(SkillJudgement::judgedOn)
                .containsExactly(
                        School.TODAY.minusDays(5),
                        School.TODAY.minusDays(5),
                        School.TODAY.minusDays(7),
                        School.TODAY.minusDays(10));
    }

    @Test
    void whoeverHasShownNothingHasAnEmptySet() {
        assertThat(assessments.skills(List.of(studentId, 0L))).hasSize(2);
        assertThat(skills()).isEmpty();
        assertThat(assessments.skills(List.of())).isEmpty();
    }

    @Test
    void onlyInstructorsWhoReachTheStudentJudge() {
        var good = new NewSkillJudgement(WIRING, true, School.TODAY, null);
        assertThat(refusalOf(() -> assessments.judge(group.student(), studentId, good)).status())
                .isEqualTo(403);
        var stranger = school.newGroup();
        assertThat(
                        refusalOf(() -> assessments.judge(stranger.instructor(), studentId, good))
                                .status())
                .isEqualTo(404);
        assertThat(refusalOf(() -> assessments.of(stranger.student(), studentId)).status())
                .isEqualTo(404);
        assertThat(assessments.of(group.student(), studentId)).isEmpty();
    }

    @Test
    void nobodyJudgesTheirOwnSkill() {
        var both = school.person("Ida Instructor", Role.INSTRUCTOR, Role.STUDENT);
        var good = new NewSkillJudgement(WIRING, true, School.TODAY, null);
        assertThat(refusalOf(() -> assessments.judge(both, both.personId(), good)).status())
                .isEqualTo(403);
    }

    @Test
    void aJudgementOfNothingIsRefused() {
        assertFault(new NewSkillJudgement("wiring-branchs", true, School.TODAY, null), "lesson");
        assertFault(
                new NewSkillJudgement(WIRING, true, LocalDate.of(1899, 12, 31), null), "judgedOn");
        assertFault(
                new NewSkillJudgement(WIRING, true, School.TODAY.plusDays(1), null), "judgedOn");
        assertThat(assessments.of(group.student(), studentId)).isEmpty();
    }

    private void assertFault(NewSkillJudgement judgement, String field) {
        var problem = refusalOf(() -> assessments.judge(group.instructor(), studentId, judgement));
        assertThat(problem.status()).isEqualTo(400);
        assertThat(problem.faults()).extracting(fault -> fault.field()).containsExactly(field);
    }

    private void judge(boolean shown, LocalDate on) {
        assessments.judge(
                group.instructor(),
                studentId,
                new NewSkillJudgement(WIRING, shown, on, "seen at the bench"));
    }

    private Set<String> skills() {
        return assessments.skills(List.of(studentId)).get(studentId);
    }

    private static Problem refusalOf(ThrowingCallable call) {
        return catchThrowableOfType(Refused.class, call).problem();
    }
}
