package org.ripewood.classday;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.bench.ChoiceReason;
import org.ripewood.core.bench.ChoiceReason.AnotherFirst;
import org.ripewood.core.bench.ChoiceReason.StudentTime;
import org.ripewood.course.CourseContent;

/** Why work was chosen for a tree in the place of work that helps it more. */
@Tag("fast")
class ChoiceWordsTest {

    private static final String WIRING = "wiring_primary";

    private static final ChoiceWords WORDS =
            new ChoiceWords(
                    Objects.requireNonNull(
                            CourseContent.check(Path.of("course-content"), null).content()));

    @Test
    void whatFitsStandsInForWhatDoesNot() {
        List<ChoiceReason> reasons =
                List.of(new StudentTime(90, 75), new AnotherFirst("hard_cut_back"));
        assertThat(WORDS.before(WIRING, reasons))
                .isEqualTo(
                        "It stands in for “Wire the primary branches”, which is more useful: the"
                                + " student has 75 minutes left beside other work, and it takes"
                                + " 90.");
        assertThat(WORDS.of(reasons)).endsWith("“Cut branches back hard” is chosen for this tree.");
    }

    @Test
    void nothingIsToldOfWhatIsLessUsefulOrBarred() {
        assertThat(WORDS.before(WIRING, List.of(new AnotherFirst("hard_cut_back")))).isEmpty();
        assertThat(WORDS.before(WIRING, List.of(new StudentTime(90, 75))))
                .as("the tree does nothing in its place")
                .isEmpty();
        assertThat(
                        WORDS.before(
                                WIRING,
                                List.of(
                                        new ChoiceReason.SkillMissing(),
                                        new StudentTime(90, 75),
                                        new AnotherFirst("hard_cut_back"))))
                .isEmpty();
    }
}
