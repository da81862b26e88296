package org.ripewood.api.content;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.PlainValue;
import org.ripewood.core.progress.Condition;
import org.ripewood.core.progress.Criterion;
import org.ripewood.core.progress.DoseRule;
import org.ripewood.core.progress.Requirement;
import org.ripewood.core.progress.SeasonRule;
import org.ripewood.core.progress.TechniqueRule;
import org.ripewood.core.season.StageRange;
import org.ripewood.core.season.WeatherRule;

/** A technique's rules in the terms of the content files, so that what is read matches them. */
@JsonInclude(JsonInclude.Include.NON_NULL)
record RuleTerms(
        Whom appliesTo,
        @Nullable NeededWhen neededWhen,
        @Nullable Integer repeatAfterDays,
        List<String> after,
        List<CriterionTerms> criteria,
        Season season,
        double stress,
        int recoveryDays,
        int quietDaysBefore,
        @Nullable Dose dose,
        @Nullable String skillLesson) {

    /** Both lists empty means every species. */
    record Whom(List<String> groups, List<String> species) {}

    /** Exactly one of the comparisons is given. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Comparison(
            @Nullable Double atLeast,
            @Nullable Double atMost,
            @Schema(description = "true, false, a word or a number") @Nullable Object is,
            @Nullable List<String> oneOf) {

        static Comparison of(Requirement requirement) {
            if (requirement instanceof Requirement.AtLeast bound) {
                return new Comparison(bound.bound(), null, null, null);
            }
            if (requirement instanceof Requirement.AtMost bound) {
                return new Comparison(null, bound.bound(), null, null);
            }
            if (requirement instanceof Requirement.Is exactly) {
                return new Comparison(null, null, PlainValue.of(exactly.value()), null);
            }
            if (requirement instanceof Requirement.OneOf any) {
                return new Comparison(null, null, null, sorted(any.words()));
            }
            throw new IllegalStateException("a requirement nobody put in words: " + requirement);
        }
    }

    /** One of: all, any, not, or a fact with its comparison. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record NeededWhen(
            @Nullable List<NeededWhen> all,
            @Nullable List<NeededWhen> any,
            @Nullable NeededWhen not,
            @Nullable String fact,
            @Nullable Comparison holds) {

        static NeededWhen of(Condition condition) {
            if (condition instanceof Condition.All all) {
                return new NeededWhen(each(all.parts()), null, null, null, null);
            }
            if (condition instanceof Condition.Any any) {
                return new NeededWhen(null, each(any.parts()), null, null, null);
            }
            if (condition instanceof Condition.Not not) {
                return new NeededWhen(null, null, of(not.part()), null, null);
            }
            if (condition instanceof Condition.Test test) {
                var holds = Comparison.of(test.requirement());
                return new NeededWhen(null, null, null, test.fact().code(), holds);
            }
            throw new IllegalStateException("a condition nobody put in words: " + condition);
        }

        private static List<NeededWhen> each(List<Condition> parts) {
            return parts.stream().map(NeededWhen::of).toList();
        }
    }

    @JsonInclude(JsonInclude.Include.NON_NULL)
    record CriterionTerms(
            String fact,
            Comparison asks,
            @Nullable Integer freshDays,
            String strength,
            boolean instructorsEye,
            List<Variant> overrides,
            String why) {

        /** Other comparisons for some species; the most specific wins. */
        record Variant(Whom whom, Comparison asks) {}

        static CriterionTerms of(Criterion criterion) {
            return new CriterionTerms(
                    criterion.fact().code(),
                    Comparison.of(criterion.requirement()),
                    criterion.freshDays(),
                    word(criterion.strength()),
                    criterion.instructorsEye(),
                    criterion.overrides().stream().map(CriterionTerms::variant).toList(),
                    criterion.why());
        }

        private static Variant variant(Criterion.Variant variant) {
            return new Variant(
                    whom(variant.groups(), variant.species()),
                    Comparison.of(variant.requirement()));
        }
    }

    /**
     * BBCH stages such as 91-03; with neither windows nor clock any time.
     *
     * @param clock the kind of work it is, whose season stands with the species
     * @param growingDaysLeft days of growth that must be left before frost
     * @param notWhileFrozen wood or ball
     * @param nearDangerousCold whether it is open only near the cold a species is sheltered from
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Season(
            boolean anyTime,
            @Nullable String clock,
            List<Window> windows,
            List<Avoid> avoid,
            @Nullable Integer growingDaysLeft,
            @Nullable String notWhileFrozen,
            boolean nearDangerousCold,
            String why) {

        record Window(Whom whom, List<String> stages) {}

        record Avoid(Whom whom, List<String> stages, String why) {}

        static Season of(SeasonRule rule) {
            var clock = rule.clock();
            var weather = rule.weather();
            var frozen = weather.notWhileFrozen();
            return new Season(
                    rule.anyStage(),
                    clock == null ? null : clock.code(),
                    rule.windows().stream()
                            .map(w -> new Window(whom(w.groups(), w.species()), spell(w.stages())))
                            .toList(),
                    rule.avoid().stream()
                            .map(
                                    a ->
                                            new Avoid(
                                                    whom(a.groups(), a.species()),
                                                    spell(a.stages()),
                                                    a.why()))
                            .toList(),
                    weather.growingDaysLeft() == 0 ? null : weather.growingDaysLeft(),
                    frozen == WeatherRule.Frozen.NOTHING ? null : word(frozen),
                    weather.nearDangerousCold(),
                    rule.why());
        }

        private static List<String> spell(List<StageRange> stages) {
            return stages.stream().map(StageRange::toString).toList();
        }
    }

    /**
     * Shares of the whole, 0 to 1.
     *
     * @param limits of some trees; the first that fits counts
     * @param startsAnew whether the season's count begins again in new leaf
     */
    record Dose(
            String kind,
            double typicalShare,
            double limitShare,
            List<Limit> limits,
            boolean startsAnew) {

        /** Another limit, from a vigour on; 0 for any. */
        record Limit(Whom whom, double share, double fromVigour) {}

        static Dose of(DoseRule rule) {
            return new Dose(
                    word(rule.kind()),
                    rule.typicalShare(),
                    rule.limitShare(),
                    rule.limits().stream().map(Dose::limit).toList(),
                    rule.startsAnew());
        }

        private static Limit limit(DoseRule.Limit limit) {
            return new Limit(
                    whom(limit.groups(), limit.species()), limit.share(), limit.fromVigour());
        }
    }

    static RuleTerms of(TechniqueRule rule) {
        var needed = rule.neededWhen();
        var dose = rule.dose();
        return new RuleTerms(
                whom(rule.groups(), rule.species()),
                needed == null ? null : NeededWhen.of(needed),
                rule.repeatAfterDays(),
                rule.after(),
                rule.criteria().stream().map(CriterionTerms::of).toList(),
                Season.of(rule.season()),
                rule.stress(),
                rule.recoveryDays(),
                rule.quietDaysBefore(),
                dose == null ? null : Dose.of(dose),
                rule.skillLesson());
    }

    private static Whom whom(Set<String> groups, Set<String> species) {
        return new Whom(sorted(groups), sorted(species));
    }

    private static List<String> sorted(Collection<String> codes) {
        return codes.stream().sorted().toList();
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
