package org.ripewood.standing;

import java.util.Locale;

/** What holds a step, shortly enough for one line. */
public final class HeldBy {

    private HeldBy() {}

    /** A fact with its number rather than a turn to wait for; empty when nothing holds it. */
    public static String shortly(TechniqueStanding told) {
        var reasons =
                told.against().stream().filter(reason -> reason.truth().equals("NO")).toList();
        return reasons.stream()
                .filter(reason -> reason.look() != null)
                .findFirst()
                .or(() -> reasons.stream().findFirst())
                .map(HeldBy::shortly)
                .orElse("");
    }

    private static String shortly(ReasonView reason) {
        var observed = reason.observed();
        return reason.look() == null || observed == null
                ? lowerFirst(withoutPoint(reason.sentence()))
                : "%s %s, asked for is %s"
                        .formatted(lowerFirst(reason.title()), observed, reason.required());
    }

    private static String lowerFirst(String text) {
        return text.isEmpty()
                ? text
                : text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }

    private static String withoutPoint(String text) {
        return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
    }
}
