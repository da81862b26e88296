package org.ripewood.steps;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Requirement;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.WorkLedger;

/** Numbers, days and values as they stand in a sentence. */
public final class Wording {

    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    private static final DateTimeFormatter MONTH =
            DateTimeFormatter.ofPattern("MMMM uuuu", Locale.ENGLISH);

    private static final double MEAN_YEAR_DAYS = 365.25;
    private static final double MEAN_MONTH_DAYS = MEAN_YEAR_DAYS / 12;

    private Wording() {}

    public static String day(LocalDate day) {
        return DAY.format(day);
    }

    public static String month(LocalDate day) {
        return MONTH.format(day);
    }

    /** Two decimals at most, none that say nothing. */
    public static String number(double amount) {
        var rounded = BigDecimal.valueOf(amount).setScale(2, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    public static String percent(double share) {
        return Math.round(share * 100) + " %";
    }

    public static String days(long days) {
        return counted(days, "day");
    }

    /** So exactly as a length of time years ahead can be told: {@code "about 14 months"}. */
    public static String span(long days) {
        if (days < 60) {
            return "about " + days(days);
        }
        long months = Math.round(days / MEAN_MONTH_DAYS);
        return months < 24
                ? "about " + counted(months, "month")
                : "about %s years".formatted(tenths(days / MEAN_YEAR_DAYS));
    }

    private static String tenths(double amount) {
        return number(Math.round(amount * 10) / 10.0);
    }

    /** {@code "1 step"}, {@code "3 steps"}. */
    public static String counted(long count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    public static String value(Fact fact, Value value) {
        if (value instanceof Value.Number number) {
            return amount(fact, number.amount());
        }
        if (value instanceof Value.Flag flag) {
            return flag.set() ? "yes" : "no";
        }
        return ((Value.Word) value).word();
    }

    public static String required(Fact fact, Requirement required) {
        if (required instanceof Requirement.AtLeast atLeast) {
            return "at least " + amount(fact, atLeast.bound());
        }
        if (required instanceof Requirement.AtMost atMost) {
            return "at most " + amount(fact, atMost.bound());
        }
        if (required instanceof Requirement.Is is) {
            return value(fact, is.value());
        }
        var words = ((Requirement.OneOf) required).words();
        return list(fact.words().stream().filter(words::contains).toList(), "or");
    }

    /** {@code "a, b and c"}. */
    public static String list(List<String> parts, String last) {
        if (parts.size() < 2) {
            return String.join("", parts);
        }
        var front = String.join(", ", parts.subList(0, parts.size() - 1));
        return front + " " + last + " " + parts.get(parts.size() - 1);
    }

    private static String amount(Fact fact, double amount) {
        return fact.unit().equals("d") && amount >= WorkLedger.NEVER_DAYS
                ? "never"
                : withUnit(fact, number(amount));
    }

    /** A number of a fact with its unit, the number spelt as it is given. */
    public static String withUnit(Fact fact, String number) {
        return switch (fact.unit()) {
            case "" -> number;
            case "°" -> number + "°";
            case "d" -> plural(number, "day");
            case "months" -> plural(number, "month");
            default -> number + " " + fact.unit();
        };
    }

    private static String plural(String number, String unit) {
        return number + " " + unit + ("1".equals(number) ? "" : "s");
    }
}
