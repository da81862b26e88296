package org.ripewood.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.cases.ShippedContent.CONTENT;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ripewood.course.JudgementCase;

/** What the shipped rules say of trees is what teachers say of them. */
@Tag("fast")
class JudgementCasesTest {

    private static final CaseRun RUN = new CaseRun(CONTENT, CaseRun.UP_TO);

    static Stream<Named<JudgementCase>> cases() {
        return CONTENT.cases().stream().map(one -> Named.of(one.code(), one));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void comesOutAsItsTeacherSays(JudgementCase one) {
        var outcome = RUN.play(one);
        assertThat(outcome.differences()).as(outcome.told()).isEmpty();
    }

    @Test
    void speakOfEverySpeciesAndEveryTechnique() {
        var species = new HashSet<>(CONTENT.species().keySet());
        var techniques = new HashSet<>(CONTENT.techniques().keySet());
        CONTENT.cases()
                .forEach(
                        one -> {
                            species.remove(one.species());
                            techniques.remove(one.technique());
                        });
        assertThat(species).as("species without a case").isEmpty();
        assertThat(techniques).as("techniques without a case").isEmpty();
    }

    @Test
    void speakOfBothHemispheresAndTheTropics() {
        assertThat(CONTENT.cases())
                .anyMatch(one -> one.climate().latitude() > 40)
                .anyMatch(one -> one.climate().latitude() < -40)
                .anyMatch(one -> Math.abs(one.climate().latitude()) < 10);
    }

    @Test
    void doNotHangOnTheYearTheyArePlayedIn() {
        var earlier = new CaseRun(CONTENT, LocalDate.of(2019, 6, 30));
        for (var one : CONTENT.cases()) {
            assertThat(earlier.play(one).found()).as(one.code()).isEqualTo(RUN.play(one).found());
        }
    }
}
