package org.ripewood.web.catalogue;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Criterion;
import org.ripewood.core.progress.Strength;
import org.ripewood.course.Content;
import org.ripewood.steps.Wording;

/**
 * One thing a technique waits for, in words.
 *
 * @param asked what it must be for most trees
 * @param others what it must be for some kinds of tree
 * @param fresh how old evidence may be; null when it does not age
 * @param how it is measured
 */
record CriterionLine(
        String title,
        String asked,
        List<String> others,
        String strength,
        @Nullable String fresh,
        String why,
        String how) {

    static CriterionLine of(Criterion criterion, Content content) {
        var text = content.text(criterion.fact());
        return new CriterionLine(
                text.title(),
                Wording.required(criterion.fact(), criterion.requirement()),
                criterion.overrides().stream()
                        .map(
                                one ->
                                        "%s: %s"
                                                .formatted(
                                                        Kinds.told(
                                                                one.groups(),
                                                                one.species(),
                                                                content),
                                                        Wording.required(
                                                                criterion.fact(),
                                                                one.requirement())))
                        .toList(),
                strength(criterion),
                fresh(criterion),
                criterion.why(),
                text.how());
    }

    private static String strength(Criterion criterion) {
        var parts =
                Stream.of(
                        criterion.strength() == Strength.MUST
                                ? "Never waived: the health of a tree or a person stands behind it."
                                : "An instructor may waive it with a reason.",
                        criterion.instructorsEye() ? "An instructor has to have looked." : "",
                        criterion.onTheDay() ? "It is looked at when the work begins." : "");
        return String.join(" ", parts.filter(part -> !part.isEmpty()).toList());
    }

    private static @Nullable String fresh(Criterion criterion) {
        var days = criterion.freshDays();
        return days == null
                ? null
                : switch (criterion.ages()) {
                    case GROWTH -> "%d days of growth".formatted(days);
                    case DAYS -> "%d days".formatted(days);
                    case NEVER -> null;
                };
    }
}
