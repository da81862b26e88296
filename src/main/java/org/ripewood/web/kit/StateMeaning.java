package org.ripewood.web.kit;

import io.quarkus.qute.TemplateExtension;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.ripewood.core.progress.Verdict;
import org.ripewood.steps.StepState;

/**
 * A state and what it means, for the legend that stands wherever states are shown.
 *
 * @param mark word, shape and tone as they are shown everywhere
 */
public record StateMeaning(Mark mark, String meaning) {

    /** What a verdict means for a technique on a tree. */
    public static String of(Verdict verdict) {
        return switch (verdict) {
            case READY -> "Everything asked for is met and the season is open.";
            case MEASURE ->
                    "Nothing known speaks against it, but something has to be looked at first.";
            case LESSON -> "The tree is ready; the student has not shown the skill yet.";
            case SEASON -> "The tree is ready; the growth stage is not the right one.";
            case HELD -> "The tree is not far enough yet, or another technique comes first.";
            case DONE -> "Signed off and not due again yet.";
            case NOT_NEEDED -> "This tree has no use for it as it stands.";
        };
    }

    private static String of(StepState state) {
        return switch (state) {
            case ASSIGNED -> "An instructor gave the student this step.";
            case REPORTED -> "The student reported it done; an instructor looks at it next.";
            case SENT_BACK -> "An instructor wants something put right before signing it off.";
            case SIGNED_OFF, WITHDRAWN, FOUND_DONE ->
                    throw new IllegalStateException("nothing is to happen: " + state);
        };
    }

    /** What templates ask for as {@code states:all}. */
    @TemplateExtension(namespace = "states")
    static final class All {

        private All() {}

        /** The states of techniques, then those of steps that are under way. */
        static List<StateMeaning> all() {
            return Stream.concat(
                            Arrays.stream(Verdict.values())
                                    .map(one -> new StateMeaning(Mark.of(one), of(one))),
                            Arrays.stream(StepState.values())
                                    .filter(StepState::isOpen)
                                    .map(one -> new StateMeaning(Mark.of(one), of(one))))
                    .toList();
        }
    }
}
