package org.ripewood.steps;

import java.util.Set;
import org.ripewood.platform.problems.Refused;

/** What can happen to a step, and from where. */
enum StepTransition {
    REPORT("reported", StepState.REPORTED, Set.of(StepState.ASSIGNED, StepState.SENT_BACK)),
    SIGN_OFF("signed off", StepState.SIGNED_OFF, Set.of(StepState.REPORTED)),
    SEND_BACK("sent back", StepState.SENT_BACK, Set.of(StepState.REPORTED)),
    WITHDRAW(
            "withdrawn",
            StepState.WITHDRAWN,
            Set.of(StepState.ASSIGNED, StepState.REPORTED, StepState.SENT_BACK));

    private final String words;
    private final StepState to;

    // Only ever Set.of, which cannot be changed; the type alone does not say so.
    @SuppressWarnings("ImmutableEnumChecker")
    private final Set<StepState> from;

    StepTransition(String words, StepState to, Set<StepState> from) {
        this.words = words;
        this.to = to;
        this.from = from;
    }

    /**
     * The state it leads to.
     *
     * @throws Refused 409 when the step is not where the move begins
     */
    StepState next(StepState now) {
        if (!from.contains(now)) {
            throw Refused.conflict(
                    "The step is %s now and cannot be %s.".formatted(now.words(), words), null);
        }
        return to;
    }
}
