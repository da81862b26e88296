package org.ripewood.steps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.standing.RefusalAssert.refusalOf;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.platform.problems.Refused;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.NewAssignment;

/** Every move from every state, through the façade. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class StepMovesTest {

    /** What a step becomes, or the status of the refusal. */
    private static final String TABLE =
            """
            from       | REPORT   | SIGN_OFF   | SEND_BACK | WITHDRAW
            ASSIGNED   | REPORTED | 409        | 409       | WITHDRAWN
            REPORTED   | 409      | SIGNED_OFF | SENT_BACK | WITHDRAWN
            SENT_BACK  | REPORTED | 409        | 409       | WITHDRAWN
            SIGNED_OFF | 409      | 409        | 409       | 409
            WITHDRAWN  | 409      | 409        | 409       | 409
            FOUND_DONE | 409      | 409        | 409       | 409
            """;

    @Inject School school;
    @Inject SignOffs signOffs;
    @Inject Steps steps;
    @Inject Assigner assigner;
    @Inject Reports reports;

    @Test
    void theTableOfMovesHolds() {
        var group = school.newGroup();
        var rows = TABLE.lines().map(StepMovesTest::cells).toList();
        assertThat(rows.stream().skip(1).map(row -> row[0]))
                .containsExactlyInAnyOrderElementsOf(
                        Arrays.stream(StepState.values()).map(Enum::name).toList());
        var head = rows.get(0);
        var found =
                rows.stream()
                        .skip(1)
                        .map(row -> outcomes(group, head, row[0]))
                        .collect(Collectors.joining("\n"));
        var expected =
                rows.stream()
                        .skip(1)
                        .map(row -> String.join(" ", row))
                        .collect(Collectors.joining("\n"));
        assertThat(found).isEqualTo(expected);
    }

    @Test
    void aStaleVersionIsRefusedBeforeTheStateIsAsked() {
        var group = school.newGroup();
        for (var state : new StepState[] {StepState.ASSIGNED, StepState.SIGNED_OFF}) {
            var step = stepIn(group, state);
            for (var move : StepTransition.values()) {
                var problem = refusalOf(() -> move(group, step, move, step.version() + 1));
                assertThat(problem.status()).as("%s from %s", move, state).isEqualTo(412);
            }
        }
    }

    @Test
    void aRefusedMoveSaysWhatTheStepIsNow() {
        var group = school.newGroup();
        var step = stepIn(group, StepState.SIGNED_OFF);
        assertThat(
                        refusalOf(() -> move(group, step, StepTransition.WITHDRAW, step.version()))
                                .detail())
                .isEqualTo("The step is signed off now and cannot be withdrawn.");
    }

    @Test
    void studentsOnlyReport() {
        var group = school.newGroup();
        var step = stepIn(group, StepState.REPORTED);
        var student = group.student();
        assertThat(refusalOf(() -> signOffs.signOff(student, step.id(), step.version(), null)))
                .extracting(problem -> problem.status())
                .isEqualTo(403);
        assertThat(refusalOf(() -> signOffs.sendBack(student, step.id(), step.version(), "no")))
                .extracting(problem -> problem.status())
                .isEqualTo(403);
        assertThat(refusalOf(() -> signOffs.withdraw(student, step.id(), step.version(), "no")))
                .extracting(problem -> problem.status())
                .isEqualTo(403);
    }

    @Test
    void sendingBackWithoutANoteIsRefused() {
        var group = school.newGroup();
        var step = stepIn(group, StepState.REPORTED);
        var problem =
                refusalOf(
                        () ->
                                signOffs.sendBack(
                                        group.instructor(), step.id(), step.version(), "  "));
        assertThat(problem.status()).isEqualTo(400);
        assertThat(problem.faults()).extracting(fault -> fault.field()).containsExactly("note");
    }

    private String outcomes(School.Group group, String[] head, String from) {
        var outcomes = new StringBuilder(from);
        for (int i = 1; i < head.length; i++) {
            var step = stepIn(group, StepState.valueOf(from));
            outcomes.append(' ').append(outcome(group, step, StepTransition.valueOf(head[i])));
        }
        return outcomes.toString();
    }

    private String outcome(School.Group group, Step step, StepTransition move) {
        try {
            return move(group, step, move, step.version()).state().name();
        } catch (Refused refused) {
            assertThat(steps.get(group.instructor(), step.id())).isEqualTo(step);
            return String.valueOf(refused.problem().status());
        }
    }

    private Step stepIn(School.Group group, StepState state) {
        var tree = school.tree(group.instructor(), group.student(), "ulmus_parvifolia");
        if (state == StepState.FOUND_DONE) {
            return assigner.noteFoundDone(
                    group.instructor(), tree.id(), "root_check", School.TODAY, null);
        }
        school.wound(group.instructor(), tree, "fresh cut", 12, School.TODAY);
        var dressing = new NewAssignment("wound_dressing", null, null, null, null);
        var step = assigner.assign(group.instructor(), tree.id(), dressing);
        return switch (state) {
            case REPORTED -> move(group, step, StepTransition.REPORT, step.version());
            case SENT_BACK -> then(group, step, StepTransition.REPORT, StepTransition.SEND_BACK);
            case SIGNED_OFF -> then(group, step, StepTransition.REPORT, StepTransition.SIGN_OFF);
            case WITHDRAWN -> move(group, step, StepTransition.WITHDRAW, step.version());
            default -> step;
        };
    }

    private Step then(School.Group group, Step step, StepTransition first, StepTransition second) {
        var moved = move(group, step, first, step.version());
        return move(group, moved, second, moved.version());
    }

    private Step move(School.Group group, Step step, StepTransition move, long version) {
        var instructor = group.instructor();
        return switch (move) {
            // Another evidence each time, so that it is never the same report sent twice.
            case REPORT ->
                    reports.report(
                            group.student(),
                            step.id(),
                            version,
                            dressed("Dressed, version " + step.version()));
            case SIGN_OFF -> signOffs.signOff(instructor, step.id(), version, null);
            case SEND_BACK -> signOffs.sendBack(instructor, step.id(), version, "Once more.");
            case WITHDRAW -> signOffs.withdraw(instructor, step.id(), version, "Not now.");
        };
    }

    private static NewReport dressed(String evidence) {
        return new NewReport(
                School.TODAY, evidence, null, null, "fresh cut", 12.0, 17.0, null, null, null);
    }

    private static String[] cells(String row) {
        return Arrays.stream(row.split("\\|")).map(String::strip).toArray(String[]::new);
    }
}
