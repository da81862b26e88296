package org.ripewood.assess;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.assess.Occasions.Occasion;
import org.ripewood.core.agreement.Answer;
import org.ripewood.core.agreement.IccForm;
import org.ripewood.core.agreement.Interval;
import org.ripewood.core.agreement.IntraclassCorrelation;
import org.ripewood.core.agreement.MeanKappa;
import org.ripewood.core.agreement.PairwiseKappa;
import org.ripewood.core.agreement.Weighting;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Rubric;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;

/** How far the school's judges agree, rubric by rubric. */
@ApplicationScoped
public class Agreements {

    /** Enough for a large school's years; more would be compared in shorter spans. */
    private static final int MOST_JUDGEMENTS = 20_000;

    private final JudgementRows rows;
    private final CourseContent content;

    Agreements(JudgementRows rows, CourseContent content) {
        this.rows = rows;
        this.content = content;
    }

    /**
     * The agreement by each rubric of the content in force, in its order; instructors and
     * registrars only.
     *
     * <p>Compared are open judgements that nobody corrected, on occasions that two judges share.
     *
     * @param blindOnly only occasions on which somebody looked without seeing another's level
     */
    @Transactional
    public List<RubricAgreement> between(
            Actor actor, LocalDate from, LocalDate until, boolean blindOnly) {
        if (!actor.is(Role.INSTRUCTOR) && !actor.is(Role.REGISTRAR)) {
            throw Refused.forbidden("Only instructors and registrars may compare judges.");
        }
        if (until.isBefore(from)) {
            throw Refused.invalid(
                    "until", "expected a day not before %s, found %s".formatted(from, until));
        }
        var judged = rows.openBetween(from, until, MOST_JUDGEMENTS);
        if (judged.size() > MOST_JUDGEMENTS) {
            throw Refused.invalid(
                    "from",
                    "more than %d judgements lie between %s and %s; expected a shorter span"
                            .formatted(MOST_JUDGEMENTS, from, until));
        }
        var byRubric = judged.stream().collect(Collectors.groupingBy(row -> row.rubric));
        return content.inForce().rubrics().values().stream()
                .map(
                        rubric ->
                                of(
                                        rubric,
                                        byRubric.getOrDefault(rubric.code(), List.of()),
                                        blindOnly))
                .toList();
    }

    private static RubricAgreement of(
            Rubric rubric, List<JudgementEntity> byDay, boolean blindOnly) {
        // levels that an edited rubric has no longer cannot be compared with those it has
        var known = byDay.stream().filter(row -> rubric.has(row.levelGiven())).toList();
        var levels = Occasions.levels(known, blindOnly);
        var kappas =
                PairwiseKappa.ofAll(
                        rubric.levels().size(),
                        levels,
                        new Weighting.Quadratic(),
                        Interval.USUAL_CONFIDENCE);
        var pairs =
                kappas.stream()
                        .map(
                                pair ->
                                        new RubricAgreement.Pair(
                                                pair.one(),
                                                pair.other(),
                                                pair.kappa(),
                                                correlation(
                                                        rubric.feeds(),
                                                        levelsOf(levels, pair.one()),
                                                        levelsOf(levels, pair.other()))))
                        .toList();
        return new RubricAgreement(
                rubric.code(), known.size(), shared(levels), MeanKappa.of(kappas), pairs);
    }

    private static Map<Occasion, Integer> levelsOf(
            Map<Long, Map<Occasion, Integer>> levels, Long judge) {
        return Objects.requireNonNull(levels.get(judge));
    }

    private static int shared(Map<Long, Map<Occasion, Integer>> levels) {
        var looks = new HashMap<Occasion, Integer>();
        levels.values()
                .forEach(
                        ofJudge ->
                                ofJudge.keySet().forEach(at -> looks.merge(at, 1, Integer::sum)));
        return (int) looks.values().stream().filter(judges -> judges > 1).count();
    }

    /** The absolute agreement of single scores, as either judge might have looked alone. */
    private static @Nullable Answer<IntraclassCorrelation> correlation(
            Rubric.@Nullable Feeds feeds,
            Map<Occasion, Integer> one,
            Map<Occasion, Integer> other) {
        if (feeds == null) {
            return null;
        }
        var scores = new ArrayList<List<Double>>();
        one.forEach(
                (at, level) -> {
                    var others = other.get(at);
                    if (others != null) {
                        scores.add(
                                List.of(feeds.perLevel().get(level), feeds.perLevel().get(others)));
                    }
                });
        return IntraclassCorrelation.of(
                scores, IccForm.TWO_WAY_RANDOM_SINGLE, Interval.USUAL_CONFIDENCE);
    }
}
