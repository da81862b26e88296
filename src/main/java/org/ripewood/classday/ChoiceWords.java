package org.ripewood.classday;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.ripewood.core.bench.ChoiceReason;
import org.ripewood.course.Content;

/** Says why a piece of work was chosen, or was not. */
final class ChoiceWords {

    private final Content content;

    ChoiceWords(Content content) {
        this.content = content;
    }

    /** All reasons, a sentence each; what goes without saying is left out. */
    String of(List<ChoiceReason> reasons) {
        return reasons.stream()
                .map(this::of)
                .filter(sentence -> !sentence.isEmpty())
                .collect(Collectors.joining(" "));
    }

    /**
     * What would have been chosen before, and why it was not; empty where nothing would.
     *
     * @param technique one that was not chosen
     */
    String before(String technique, List<ChoiceReason> reasons) {
        var tooLittle =
                reasons.stream()
                        .filter(reason -> !(reason instanceof ChoiceReason.AnotherFirst))
                        .toList();
        var barred =
                reasons.stream()
                        .anyMatch(
                                reason ->
                                        reason instanceof ChoiceReason.Dropped
                                                || reason instanceof ChoiceReason.SkillMissing);
        return barred || tooLittle.isEmpty() || tooLittle.size() == reasons.size()
                ? ""
                : "It stands in for “%s”, which is more useful: %s"
                        .formatted(title(technique), small(of(tooLittle)));
    }

    private static String small(String sentence) {
        return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
    }

    String title(String technique) {
        return content.titleOf(technique);
    }

    private String of(ChoiceReason reason) {
        return reason instanceof ChoiceReason.For speaksFor
                ? speaksFor(speaksFor)
                : against((ChoiceReason.Against) reason);
    }

    private String speaksFor(ChoiceReason.For reason) {
        if (reason instanceof ChoiceReason.Pinned) {
            return "Pinned.";
        }
        if (reason instanceof ChoiceReason.TaughtToday) {
            return "Today's lesson teaches it.";
        }
        if (reason instanceof ChoiceReason.FitsBeside beside) {
            return "There is room for it beside “%s”.".formatted(title(beside.technique()));
        }
        if (reason instanceof ChoiceReason.AssignedBefore
                || reason instanceof ChoiceReason.MostUseful) {
            return "";
        }
        throw new IllegalStateException("no words for " + reason);
    }

    private String against(ChoiceReason.Against reason) {
        if (reason instanceof ChoiceReason.Dropped) {
            return "Dropped by an instructor.";
        }
        if (reason instanceof ChoiceReason.NotPossible) {
            return "Pinned, but it cannot be done on this tree that day.";
        }
        if (reason instanceof ChoiceReason.SkillMissing) {
            return "The student has not shown the skill, and the day's lesson does not teach it.";
        }
        if (reason instanceof ChoiceReason.AnotherFirst first) {
            return "“%s” is chosen for this tree.".formatted(title(first.technique()));
        }
        if (reason instanceof ChoiceReason.NotTried) {
            return "Other work was found first.";
        }
        return tooLittle(reason);
    }

    private static String tooLittle(ChoiceReason.Against reason) {
        if (reason instanceof ChoiceReason.ToolMissing tool) {
            return "The school has no %s.".formatted(tool.tool());
        }
        if (reason instanceof ChoiceReason.ToolTaken tool) {
            return "Every %s is in use: %d minutes are asked for, %d are left."
                    .formatted(tool.tool(), tool.needed(), tool.left());
        }
        if (reason instanceof ChoiceReason.StudentTime time) {
            return "The student has %d minutes left beside other work, and it takes %d."
                    .formatted(time.left(), time.needed());
        }
        if (reason instanceof ChoiceReason.InstructorTime time) {
            return "Instructors have %d minutes left beside other work, and it asks for %d."
                    .formatted(time.left(), time.needed());
        }
        if (reason instanceof ChoiceReason.MaterialShort material) {
            return "Of %s %s is asked for and %s is left."
                    .formatted(
                            material.material(), plain(material.needed()), plain(material.left()));
        }
        throw new IllegalStateException("no words for " + reason);
    }

    private static String plain(double amount) {
        return BigDecimal.valueOf(amount).stripTrailingZeros().toPlainString();
    }
}
