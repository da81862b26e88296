package org.ripewood.standing;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.course.CourseContent;

/** A decision is told as it was, whatever content says later. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class DecisionTest {

    @Inject School school;
    @Inject Standings standings;
    @Inject Assigner assigner;
    @Inject Decisions decisions;
    @Inject CourseContent content;

    @Test
    void laterContentDoesNotChangeAnOldDecision() throws IOException {
        var group = school.newGroup();
        var tree = Elm.readyForWiring(school, group, assigner);
        school.wound(group.instructor(), tree, "first branch", 24);
        var before = content.inForce().revision();
        var told = wiring(group, tree.id());
        var step =
                assigner.assign(
                        group.instructor(),
                        tree.id(),
                        new NewAssignment(
                                Elm.WIRING,
                                null,
                                null,
                                null,
                                Map.of("largest_opening_mm.AtMost", "It lies at the back.")));
        var decision = decisions.get(group.student(), step.decisionId());
        assertThat(decision.contentRevision()).isEqualTo(before);
        assertThat(decision.on()).isEqualTo(School.TODAY);
        assertThat(decision.standing()).isEqualTo(told);

        var file = SchoolProfile.CONTENT.resolve("techniques/wiring_primary.yaml");
        var original = Files.readString(file);
        try {
            Files.writeString(
                    file,
                    original.replace("title: Wire the primary branches", "title: Wire them")
                            .replace("atMost: 8", "atMost: 30"));
            assertThat(content.renew()).isEmpty();
            assertThat(content.inForce().revision()).isNotEqualTo(before);
            assertThat(wiring(group, tree.id()).title()).isEqualTo("Wire them");
            assertThat(wiring(group, tree.id()).against()).isEmpty();
            assertThat(decisions.get(group.student(), step.decisionId())).isEqualTo(decision);
        } finally {
            Files.writeString(file, original);
            assertThat(content.renew()).isEmpty();
        }
        assertThat(content.inForce().revision()).isEqualTo(before);
    }

    private TechniqueStanding wiring(School.Group group, long treeId) {
        return standings.of(group.student(), treeId, School.TODAY).techniques().stream()
                .filter(standing -> standing.technique().equals(Elm.WIRING))
                .findFirst()
                .orElseThrow();
    }
}
