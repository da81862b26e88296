package org.ripewood.web.judgements;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.ripewood.assess.RubricAgreement;
import org.ripewood.core.agreement.AgreementBand;
import org.ripewood.core.agreement.Answer;
import org.ripewood.core.agreement.Interval;
import org.ripewood.core.agreement.MeanKappa;
import org.ripewood.core.agreement.WeightedKappa;
import org.ripewood.course.Rubric;

/**
 * How far judges agree, in words.
 *
 * @param compared rubrics by which two judges have looked at the same
 * @param alone rubrics by which nobody has
 */
public record AgreementPageModel(
        LocalDate from,
        LocalDate until,
        boolean unswayed,
        List<Compared> compared,
        List<String> alone) {

    /** One rubric; the line over all pairs, and a line a pair. */
    public record Compared(String title, int shared, Line overall, List<Line> pairs) {}

    /**
     * A measure in words.
     *
     * @param tone of the mark: go from substantial on, held below moderate
     * @param because why there is none; then everything else is empty
     */
    public record Line(
            String who,
            @Nullable String value,
            @Nullable String band,
            String tone,
            @Nullable String range,
            @Nullable Long looks,
            @Nullable String correlation,
            List<String> remarks,
            @Nullable String because) {}

    static AgreementPageModel of(
            LocalDate from,
            LocalDate until,
            boolean unswayed,
            List<RubricAgreement> found,
            Map<String, Rubric> rubrics,
            Map<Long, String> names) {
        return new AgreementPageModel(
                from,
                until,
                unswayed,
                found.stream()
                        .filter(one -> one.shared() > 0)
                        .map(one -> compared(one, title(rubrics, one), names))
                        .toList(),
                found.stream()
                        .filter(one -> one.shared() == 0)
                        .map(one -> title(rubrics, one))
                        .toList());
    }

    private static String title(Map<String, Rubric> rubrics, RubricAgreement one) {
        return Objects.requireNonNull(rubrics.get(one.rubric())).title();
    }

    private static Compared compared(RubricAgreement one, String title, Map<Long, String> names) {
        var pairs =
                one.pairs().stream()
                        .map(pair -> line(pair, names))
                        .sorted(Comparator.comparing(Line::who))
                        .toList();
        return new Compared(title, one.shared(), overall(one), pairs);
    }

    private static Line overall(RubricAgreement one) {
        var who = "All pairs of judges";
        if (one.overall() instanceof Answer.Available<MeanKappa> all) {
            var mean = all.value();
            var band = AgreementBand.of(mean.value());
            return new Line(
                    who,
                    two(mean.value()),
                    band.words(),
                    tone(band),
                    null,
                    mean.pairs(),
                    null,
                    all.remarks(),
                    null);
        }
        return missing(who, one.overall(), null);
    }

    private static Line line(RubricAgreement.Pair pair, Map<Long, String> names) {
        var who =
                "%s and %s"
                        .formatted(
                                names.getOrDefault(pair.oneId(), "somebody"),
                                names.getOrDefault(pair.otherId(), "somebody"));
        var correlation = correlation(pair);
        if (pair.kappa() instanceof Answer.Available<WeightedKappa> two) {
            var kappa = two.value();
            return new Line(
                    who,
                    two(kappa.value()),
                    kappa.band().words(),
                    tone(kappa.band()),
                    range(kappa.interval()),
                    kappa.pairs(),
                    correlation,
                    two.remarks(),
                    null);
        }
        return missing(who, pair.kappa(), correlation);
    }

    private static @Nullable String correlation(RubricAgreement.Pair pair) {
        var answer = pair.correlation();
        return answer == null
                ? null
                : answer.find()
                        .map(icc -> "%s, %s".formatted(two(icc.value()), range(icc.interval())))
                        .orElse(null);
    }

    private static Line missing(String who, Answer<?> answer, @Nullable String correlation) {
        var because = ((Answer.NotAvailable<?>) answer).because();
        return new Line(who, null, null, "unknown", null, null, correlation, List.of(), because);
    }

    private static String tone(AgreementBand band) {
        return switch (band) {
            case ALMOST_PERFECT, SUBSTANTIAL -> "go";
            case MODERATE -> "season";
            case FAIR, SLIGHT, POOR -> "held";
        };
    }

    private static String range(Interval interval) {
        return "%s to %s".formatted(two(interval.lower()), two(interval.upper()));
    }

    private static String two(double value) {
        return String.format(Locale.ROOT, "%.2f", value).replace("-", "−");
    }
}
