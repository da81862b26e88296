package org.ripewood.standing;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ripewood.steps.Wording;

/** A reason in one sentence; made from the stored view alone, so that old decisions still speak. */
final class ReasonSentence {

    private ReasonSentence() {}

    static String of(ReasonView reason) {
        var look = reason.look();
        if (look != null) {
            return ofCriterion(reason, look);
        }
        var key = reason.key();
        if (key.startsWith("after.")) {
            return ofOrder(reason);
        }
        if (key.startsWith("needs.")) {
            return "“%s” is still needed, and comes before styling.".formatted(reason.title());
        }
        if ("needed".equals(key) || "species".equals(key)) {
            return reason.why();
        }
        return switch (key) {
            case "season" ->
                    "%s: %s; needed: %s."
                            .formatted(reason.title(), known(reason), reason.required());
            case "done" -> ofDone(reason);
            case "heavy" ->
                    "%s: %s; needed: %s."
                            .formatted(reason.title(), known(reason), reason.required());
            case "skill" -> "%s: %s to an instructor.".formatted(reason.title(), known(reason));
            default -> "%s: %s; %s.".formatted(reason.title(), known(reason), reason.required());
        };
    }

    private static String ofDone(ReasonView reason) {
        var again = "once".equals(reason.required()) ? "once is enough" : reason.required();
        return "%s: %s, %s.".formatted(reason.title(), known(reason), again);
    }

    private static String ofCriterion(ReasonView reason, String look) {
        return switch (look) {
            case "MISSING" ->
                    "%s is not known yet; needed: %s.".formatted(reason.title(), reason.required());
            case "STALE" ->
                    "%s is too old to go by; needed: %s."
                            .formatted(seen(reason), reason.required());
            case "ON_THE_DAY" ->
                    "%s is looked at on the day; needed: %s."
                            .formatted(reason.title(), reason.required());
            case "PROVISIONAL" ->
                    "%s by the student's own eye; an instructor has to look."
                            .formatted(seen(reason));
            default -> "%s; needed: %s.".formatted(seen(reason), reason.required());
        };
    }

    private static String ofOrder(ReasonView reason) {
        return switch (reason.truth()) {
            case "YES" -> "“%s” is signed off, or not needed here.".formatted(reason.title());
            case "NO" -> "“%s” has to be signed off first.".formatted(reason.title());
            default ->
                    "“%s” comes first, and it is not known whether this tree needs it."
                            .formatted(reason.title());
        };
    }

    /** {@code "Largest open wound 24 mm on 3 May 2026"}; a word or a yes is set off by a colon. */
    private static String seen(ReasonView reason) {
        var observed = known(reason);
        var mark = Character.isDigit(observed.charAt(0)) ? " " : ": ";
        // What never was has no day.
        var day = "never".equals(observed) ? null : reason.evidenceDay();
        return reason.title() + mark + observed + on(day);
    }

    private static String known(ReasonView reason) {
        var observed = reason.observed();
        return observed == null || observed.isEmpty() ? "not known" : observed;
    }

    private static String on(@Nullable LocalDate day) {
        return day == null ? "" : " on " + Wording.day(day);
    }
}
