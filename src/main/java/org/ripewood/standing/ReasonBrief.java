package org.ripewood.standing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Criterion;
import org.ripewood.core.progress.DoseRule;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Requirement;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.course.Content;
import org.ripewood.course.FactText;
import org.ripewood.steps.Wording;

/**
 * A reason in at most five words, and where it is a number what there is of what was asked for:
 * {@code "wound 9.5 of 8 mm"}. The full sentence is {@link ReasonText}'s.
 */
public final class ReasonBrief {

    /**
     * A reason in a few words.
     *
     * @param words at most five
     * @param number what there is, of what, and the unit: {@code "9.5 of 8 mm"}; null when it is no
     *     number
     */
    public record Brief(String words, @Nullable String number) {

        /** Both behind each other. */
        public String told() {
            return number == null ? words : words + " " + number;
        }
    }

    private static final int MOST_DECIMALS = 4;
    private static final int MOST_WORDS_OF_A_LESSON = 4;

    private final Content content;

    public ReasonBrief(Content content) {
        this.content = content;
    }

    public Brief of(Reason reason) {
        if (reason instanceof Reason.OfCriterion criterion) {
            return ofCriterion(criterion);
        }
        if (reason instanceof Reason.OfOrder order) {
            return new Brief("after " + shortTitle(order.technique()), null);
        }
        if (reason instanceof Reason.OfDevelopment development) {
            return new Brief("first " + shortTitle(development.technique()), null);
        }
        if (reason instanceof Reason.OfNeed need) {
            return new Brief("look: " + missing(need), null);
        }
        if (reason instanceof Reason.OfLoad load) {
            return load.truth() == Truth.UNKNOWN
                    ? new Brief(words(Fact.VIGOUR_INDEX) + " not known", null)
                    : load.asksForStrength()
                            ? new Brief("too weak for this work", null)
                            : number(
                                    "load with this work",
                                    load.left() + load.added(),
                                    load.budget(),
                                    "");
        }
        if (reason instanceof Reason.OfQuiet quiet) {
            return number("rest", quiet.daysSinceHeavy(), quiet.required(), "days");
        }
        if (reason instanceof Reason.OfHeavy) {
            return new Brief("heavy work this season", null);
        }
        if (reason instanceof Reason.OfDose dose) {
            var what =
                    dose.kind() == DoseRule.Kind.FOLIAGE
                            ? "foliage with this work"
                            : "roots with this work";
            return number(what, 100 * (dose.taken() + dose.planned()), 100 * dose.limit(), "%");
        }
        if (reason instanceof Reason.OfSkill skill) {
            return new Brief(lesson(skill.lesson()), null);
        }
        if (reason instanceof Reason.OfSeason season) {
            return new Brief(
                    season.truth() == Truth.UNKNOWN ? "look: flowers" : "out of season", null);
        }
        return new Brief(reason instanceof Reason.OfDone ? "done" : "not for this species", null);
    }

    private Brief ofCriterion(Reason.OfCriterion reason) {
        var fact = reason.criterion().fact();
        var evidence = reason.evidence();
        return switch (reason.look()) {
            case MISSING -> new Brief(words(fact) + " not known", null);
            case STALE -> new Brief(words(fact) + ": look again", null);
            case PROVISIONAL -> new Brief("instructor looks: " + words(fact), null);
            case MET, NOT_MET, ON_THE_DAY -> seen(reason, evidence);
        };
    }

    private Brief seen(Reason.OfCriterion reason, @Nullable Evidence evidence) {
        var criterion = reason.criterion();
        var text = content.text(criterion.fact()).brief();
        var value = evidence == null ? null : evidence.value();
        var bound = bound(reason.required());
        if (value instanceof Value.Number number && bound != null && bound == 0) {
            return new Brief(text.words(), Wording.number(number.amount()) + ", none allowed");
        }
        if (value instanceof Value.Number number && bound != null) {
            if ("d".equals(text.unit()) && number.amount() >= WorkLedger.NEVER_DAYS) {
                return new Brief(text.words() + ": never", null);
            }
            return number(
                    text.words(),
                    text.times() * number.amount(),
                    text.times() * bound,
                    unit(text.unit()));
        }
        return new Brief(said(criterion, text, value), null);
    }

    private static String said(Criterion criterion, FactText.Brief text, @Nullable Value value) {
        if (value instanceof Value.Flag flag) {
            var said = flag.set() ? text.whenTrue() : text.whenFalse();
            return said != null
                    ? said
                    : "%s: %s".formatted(text.words(), flag.set() ? "yes" : "no");
        }
        if (value instanceof Value.Word word) {
            return "none".equals(word.word())
                    ? "no " + text.words()
                    : "%s: %s".formatted(text.words(), word.word());
        }
        return value == null
                ? text.words() + " not known"
                : "%s: %s".formatted(text.words(), Wording.value(criterion.fact(), value));
    }

    private static @Nullable Double bound(Requirement required) {
        if (required instanceof Requirement.AtLeast atLeast) {
            return atLeast.bound();
        }
        return required instanceof Requirement.AtMost atMost ? atMost.bound() : null;
    }

    /** {@code "d"} is how the rules write a day. */
    private static String unit(String unit) {
        return "d".equals(unit) ? "days" : unit;
    }

    private static Brief number(String words, double found, double asked, String unit) {
        return new Brief(words, amounts(found, asked) + (unit.isEmpty() ? "" : "\u00A0" + unit));
    }

    /**
     * As few decimals as leave the two apart, so that nothing that fails looks as if it were met:
     * none from 20 on, else one, and more when both would be told the same.
     */
    private static String amounts(double found, double asked) {
        int least = decimalsOf(asked);
        for (int decimals = Math.abs(found) >= 20 ? least : Math.max(1, least); ; decimals++) {
            var there = rounded(found, decimals);
            var wanted = rounded(asked, Math.max(decimals, least));
            if (!there.equals(wanted) || decimals == MOST_DECIMALS) {
                return there + " of " + wanted;
            }
        }
    }

    /** What is asked for was written by hand, and is told as it was. */
    private static int decimalsOf(double asked) {
        var plain = BigDecimal.valueOf(asked).setScale(MOST_DECIMALS, RoundingMode.HALF_UP);
        return Math.max(0, plain.stripTrailingZeros().scale());
    }

    private static String rounded(double amount, int decimals) {
        var rounded = BigDecimal.valueOf(amount).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private String missing(Reason.OfNeed need) {
        return need.missing().isEmpty() ? "tree" : words(need.missing().get(0));
    }

    private String words(Fact fact) {
        return content.text(fact).brief().words();
    }

    /** In the middle of a sentence. */
    private String shortTitle(String technique) {
        var title = content.shortTitleOf(technique);
        return Character.toLowerCase(title.charAt(0)) + title.substring(1);
    }

    /** With the lesson's title where there is room for it. */
    private String lesson(String code) {
        var lesson = content.lessons().get(code);
        return lesson == null || lesson.title().split(" ", -1).length > MOST_WORDS_OF_A_LESSON
                ? "lesson first"
                : "lesson: " + lesson.title();
    }
}
