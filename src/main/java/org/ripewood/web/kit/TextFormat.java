package org.ripewood.web.kit;

import io.quarkus.qute.TemplateExtension;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ripewood.accounts.ApiToken;
import org.ripewood.boards.Board.Headline;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.Verdict;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.course.Technique;
import org.ripewood.platform.problems.Fault;
import org.ripewood.readiness.ReadinessSheet;
import org.ripewood.records.Observation;
import org.ripewood.records.Wound;
import org.ripewood.standing.ReasonView;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.steps.StepState;

/** How values are written on pages and on paper. */
@TemplateExtension
public final class TextFormat {

    private static final DateTimeFormatter LONG =
            DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.UK);
    private static final DateTimeFormatter WITH_WEEKDAY =
            DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.UK);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.UK);

    private TextFormat() {}

    public static String day(LocalDate date) {
        return LONG.format(date);
    }

    static String weekday(LocalDate date) {
        return WITH_WEEKDAY.format(date);
    }

    static String clock(LocalTime time) {
        return CLOCK.format(time);
    }

    static String moment(Instant instant) {
        var local = instant.atZone(ZoneId.systemDefault());
        return LONG.format(local) + ", " + CLOCK.format(local);
    }

    /** As many decimals as matter at the bench: none for whole numbers, at most two. */
    public static String plain(double amount) {
        var rounded = BigDecimal.valueOf(amount).setScale(2, RoundingMode.HALF_UP);
        return rounded.stripTrailingZeros().toPlainString();
    }

    /** So many of a thing, such as "1 row" and "2 rows". */
    static String counted(Number number, String one) {
        return number + " " + one + (number.longValue() == 1 ? "" : "s");
    }

    public static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    public static String text(Evidence evidence) {
        return text(evidence.fact(), evidence.value());
    }

    public static String text(Observation observation) {
        return text(observation.fact(), observation.value());
    }

    private static String text(Fact fact, Value value) {
        if (value instanceof Value.Number number) {
            if (fact.unit().equals("d") && number.amount() >= WorkLedger.NEVER_DAYS) {
                return "never";
            }
            return fact.unit().isEmpty()
                    ? plain(number.amount())
                    : plain(number.amount()) + " " + unit(fact);
        }
        return typed(value);
    }

    /** A value as it is typed into a form. */
    public static String typed(Value value) {
        if (value instanceof Value.Number number) {
            return BigDecimal.valueOf(number.amount()).stripTrailingZeros().toPlainString();
        }
        return value instanceof Value.Flag flag
                ? (flag.set() ? "yes" : "no")
                : ((Value.Word) value).word();
    }

    /** The unit as people say it. */
    public static String unit(Fact fact) {
        return fact.unit().equals("d") ? "days" : fact.unit();
    }

    static String words(ApiToken.Scope scope) {
        return switch (scope) {
            case READ -> "reads";
            case READ_AND_WRITE -> "reads and writes";
        };
    }

    static String word(Source source) {
        return sourceWord(source.name());
    }

    static String sourceWord(String source) {
        return switch (source) {
            case "STUDENT" -> "student";
            case "INSTRUCTOR" -> "instructor";
            case "DERIVED" -> "from the record";
            case "FORECAST" -> "forecast";
            default -> source.toLowerCase(Locale.ROOT);
        };
    }

    /** What a text says it is about: the words before its first colon. */
    static String beforeColon(String text) {
        return text.split(":", 2)[0].strip();
    }

    /** What a text says about it: the words after its first colon; empty when it has none. */
    static String afterColon(String text) {
        var parts = text.split(":", 2);
        return parts.length == 2 ? parts[1].strip() : "";
    }

    /** Small letters for the words of a closed list, such as roles. */
    public static String small(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** First letter large, for headings. */
    public static String titled(Enum<?> word) {
        var small = small(word);
        return small.substring(0, 1).toUpperCase(Locale.ROOT) + small.substring(1);
    }

    static Mark mark(Verdict verdict) {
        return Mark.of(verdict);
    }

    static Mark mark(Headline headline) {
        return Mark.of(headline);
    }

    static Mark mark(StepState state) {
        return Mark.of(state);
    }

    static Ring ring(ReasonView reason) {
        return Ring.of(reason.truth(), reason.howFar());
    }

    static Ring ring(ReadinessSheet.Cell cell) {
        return Ring.of(cell.truth(), cell.howFar());
    }

    static Ring ring(TechniqueStanding standing) {
        return switch (standing.verdict()) {
            case READY, DONE -> Ring.of("YES", 1);
            case MEASURE -> Ring.of("UNKNOWN", standing.howFar());
            case HELD, SEASON, LESSON, NOT_NEEDED -> Ring.of("NO", standing.howFar());
        };
    }

    /** How far a wound has closed; deadwood by design has nothing to close. */
    static Ring ring(Wound wound) {
        if (wound.deadwoodByDesign() || wound.openMm() <= 0) {
            return new Ring(100, true, wound.deadwoodByDesign() ? "deadwood by design" : "closed");
        }
        var closed = Math.max(0, 1 - wound.openMm() / wound.firstWidthMm());
        return Ring.ofClosure(closed);
    }

    static String tone(Wound wound) {
        return wound.deadwoodByDesign() ? "unknown" : wound.openMm() <= 0 ? "go" : "held";
    }

    /** The tone of a reason: may go on, held, season, not known. */
    static String tone(ReasonView reason) {
        return switch (reason.truth()) {
            case "YES" -> "go";
            case "UNKNOWN" -> "unknown";
            default -> reason.key().equals("season") ? "season" : "held";
        };
    }

    static String word(ReasonView reason) {
        if (reason.met()) {
            return "Met";
        }
        return switch (reason.look() == null ? reason.truth() : reason.look()) {
            case "MISSING" -> "Not measured";
            case "STALE" -> "Measured too long ago";
            case "PROVISIONAL" -> "Seen by the student only; an instructor has to look";
            case "UNKNOWN" -> "Not known";
            default -> "Not met";
        };
    }

    /** Whether a fault is of a place in a file that was sent, and of no field. */
    static boolean inFile(Fault fault) {
        return fault.field().contains("/") || fault.field().endsWith(".json");
    }

    /**
     * A field's name with its words apart, for the list of what was wrong; a file's as they are.
     */
    static String fieldWords(Fault fault) {
        if (inFile(fault)) {
            return fault.field();
        }
        var words =
                fault.field()
                        .replaceAll("Ids?(\\[.*)?$", "")
                        .replaceAll("[._\\[\\]]+", " ")
                        .replaceAll("(?<=[a-z])(?=[A-Z])", " ");
        return words.strip().toLowerCase(Locale.ROOT);
    }

    /** Name of the form field that waives a reason. */
    static String waiverField(ReasonView reason) {
        return "waivers." + reason.key();
    }

    /** The teaching text, cut at its blank lines. */
    static List<String> paragraphs(Technique technique) {
        return List.of(technique.teaching().strip().split("\\n\\s*\\n"));
    }

    /** Day, source and person of the evidence, as far as known. */
    static @Nullable String evidence(ReasonView reason) {
        var day = reason.evidenceDay();
        if (day == null) {
            return null;
        }
        var source = reason.source() == null ? "" : ", " + sourceWord(reason.source());
        var by = reason.by() == null || reason.by().isBlank() ? "" : ", " + reason.by();
        return day(day) + source + by;
    }
}
