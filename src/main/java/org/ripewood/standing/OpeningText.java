package org.ripewood.standing;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Opening;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.season.Outlook;
import org.ripewood.course.Content;
import org.ripewood.steps.StepBrief;
import org.ripewood.steps.Wording;

/** Puts into words when something will be so, in the titles of the content. */
public final class OpeningText {

    private final Content content;
    private final ReasonText reasons;
    private final Map<String, StepBrief> open;

    /**
     * @param open open steps by technique: what is in hand is told as that, not as ready
     */
    public OpeningText(Content content, ReasonText reasons, Map<String, StepBrief> open) {
        this.content = content;
        this.reasons = reasons;
        this.open = open;
    }

    public OpeningView tell(Opening opening) {
        var waits = opening.waits().stream().map(this::tell).toList();
        var outlook = opening.outlook();
        if (outlook instanceof Outlook.Expected expected) {
            return new OpeningView(
                    expected.earliest(),
                    expected.likely(),
                    expected.latest(),
                    "Expected " + OutlookWords.when(expected) + "." + measure(opening),
                    waits);
        }
        var sentence = outlook instanceof Outlook.Already ? "Can be done now." : unsaid(waits);
        return new OpeningView(null, null, null, sentence, waits);
    }

    private OpeningView.Wait tell(Opening.Wait wait) {
        var reason = wait.reason();
        var title = reasons.titleOf(reason);
        if (wait.outlook() instanceof Outlook.Expected expected) {
            return new OpeningView.Wait(
                    reason.key(),
                    title,
                    expected.earliest(),
                    expected.likely(),
                    expected.latest(),
                    byItself(expected));
        }
        return new OpeningView.Wait(reason.key(), title, null, null, null, because(wait, title));
    }

    private static String byItself(Outlook.Expected expected) {
        var since = expected.likelySince();
        return since == null
                ? "Should be met on its own " + OutlookWords.when(expected) + "."
                : "Likely met " + OutlookWords.unseen(since) + ".";
    }

    /** What has likely come about unseen has to be measured before anything is done. */
    private String measure(Opening opening) {
        var unseen =
                opening.waits().stream()
                        .filter(
                                wait ->
                                        wait.outlook() instanceof Outlook.Expected expected
                                                && expected.likelySince() != null)
                        .map(wait -> reasons.titleOf(wait.reason()))
                        .distinct()
                        .toList();
        return unseen.isEmpty() ? "" : " Measure first: %s.".formatted(Wording.list(unseen, "and"));
    }

    /** The first thing that stands in the way, and how many more; each is told with its reason. */
    private static String unsaid(List<OpeningView.Wait> waits) {
        var unsaid = waits.stream().filter(wait -> wait.likely() == null).toList();
        if (unsaid.isEmpty()) {
            return "No date yet.";
        }
        int more = unsaid.size() - 1;
        return "No date yet. %s%s"
                .formatted(
                        unsaid.get(0).sentence(),
                        more == 0
                                ? ""
                                : " And %s.".formatted(Wording.counted(more, "more reason")));
    }

    private String because(Opening.Wait wait, String title) {
        var reason = wait.reason();
        if (reason instanceof Reason.OfOrder order) {
            return turn(reason, order.technique(), wait.before());
        }
        if (reason instanceof Reason.OfDevelopment development) {
            return turn(reason, development.technique(), wait.before());
        }
        if (reason instanceof Reason.OfSkill) {
            return "%s has to be shown to an instructor first.".formatted(title);
        }
        if (reason instanceof Reason.OfNeed need) {
            var missing = need.missing().stream().map(fact -> content.text(fact).title()).toList();
            return "Look at this first: %s.".formatted(Wording.list(missing, "and"));
        }
        if (reason instanceof Reason.OfCriterion criterion) {
            return switch (criterion.look()) {
                case MISSING -> "Look at this first: %s.".formatted(title);
                case STALE -> "Look at this again: %s.".formatted(title);
                case PROVISIONAL -> "An instructor has to look at this: %s.".formatted(title);
                case MET, NOT_MET, ON_THE_DAY -> because(wait.outlook());
            };
        }
        return because(wait.outlook());
    }

    /** The reason itself, and how the technique stands that comes first. */
    private String turn(Reason reason, String technique, @Nullable Opening before) {
        var told = reasons.tell(reason, "").sentence();
        var stands = stands(technique, before);
        return stands == null
                ? told
                : "%s; %s.".formatted(told.substring(0, told.length() - 1), stands);
    }

    private @Nullable String stands(String technique, @Nullable Opening before) {
        var step = open.get(technique);
        if (step != null) {
            return switch (step.state()) {
                case REPORTED -> "it is reported and waits for an instructor's sign-off";
                case SENT_BACK -> "it was sent back and has to be put right";
                default -> "it is assigned";
            };
        }
        if (before == null) {
            return null;
        }
        if (before.outlook() instanceof Outlook.Expected expected) {
            return "it is expected " + OutlookWords.when(expected);
        }
        return before.outlook() instanceof Outlook.Already ? "it is ready" : null;
    }

    private static String because(Outlook outlook) {
        var because = outlook instanceof Outlook.Unsaid unsaid ? unsaid.because() : "";
        return because.endsWith(".") ? because : because + ".";
    }
}
