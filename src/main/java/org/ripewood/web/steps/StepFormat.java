package org.ripewood.web.steps;

import io.quarkus.qute.TemplateExtension;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Technique;
import org.ripewood.course.Technique.Ask;
import org.ripewood.steps.Step;
import org.ripewood.steps.StepState;

/** Steps and what their reports must state, as pages show them. */
@TemplateExtension
final class StepFormat {

    private StepFormat() {}

    static boolean reportable(Step step) {
        return step.state() == StepState.ASSIGNED || step.state() == StepState.SENT_BACK;
    }

    static boolean reported(Step step) {
        return step.state() == StepState.REPORTED;
    }

    static boolean withdrawable(Step step) {
        return reportable(step) || reported(step);
    }

    /** What was said last about the step: by whoever sent it back, or when it was assigned. */
    static @Nullable String lastNote(Step step) {
        var events = step.events();
        for (int i = events.size() - 1; i >= 0; i--) {
            if (events.get(i).note() != null) {
                return events.get(i).note();
            }
        }
        return step.note();
    }

    static boolean asksFor(Technique technique, String ask) {
        return technique.asks().contains(Ask.valueOf(ask));
    }

    static String evidenceHint(Technique technique) {
        return technique.evidence().isEmpty()
                ? "So that your instructor can judge it."
                : "Your instructor looks for: " + String.join(" ", technique.evidence());
    }

    /** A code with its words apart. */
    static String spaced(String code) {
        return code.replace('-', ' ').replace('_', ' ').toLowerCase(Locale.ROOT);
    }
}
