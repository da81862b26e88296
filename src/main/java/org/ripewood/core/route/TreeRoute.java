package org.ripewood.core.route;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.DoseRule;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.LoadBudget;
import org.ripewood.core.progress.Opening;
import org.ripewood.core.progress.Openings;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Requirement;
import org.ripewood.core.progress.Rulebook;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Subject;
import org.ripewood.core.progress.TechniqueRule;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Verdict;
import org.ripewood.core.season.Outlook;

/**
 * The route of a tree as the rulebook judges it today.
 *
 * <p>A criterion that is not met waits for its own outlook; what nobody has looked at lately is
 * assumed to be found met; what cannot be forecast, and skills, are assumed to be there at the
 * start of the next growing season. All of that is told in {@link Route#unsaid}. Order, load,
 * quiet, heavy works, doses and seasons are simulated. Criteria that are met today are taken to
 * stay so, but for clocks: days since a work that comes first on this route begin with it.
 */
public final class TreeRoute {

    /** The vigour taken for the budget of loads where it is not known: a middling tree. */
    private static final double MIDDLING_VIGOUR = 50;

    private final Map<String, TechniqueRule> rules;
    private final Map<String, Fact> clocks;
    private final Subject subject;
    private final Openings openings;

    private TreeRoute(
            Collection<TechniqueRule> techniques,
            Map<String, Fact> clocks,
            Subject subject,
            Openings openings) {
        this.rules =
                techniques.stream()
                        .collect(Collectors.toMap(TechniqueRule::code, Function.identity()));
        this.clocks = clocks;
        this.subject = subject;
        this.openings = openings;
    }

    /**
     * Simulates a tree's way to a goal stage; see {@link Route#simulate} for method and limits.
     *
     * @param techniques those the rulebook was compiled from
     * @param clocks technique code to the fact whose days its work begins anew
     * @throws IllegalArgumentException when the species is not in the rulebook, or draws are out of
     *     range
     */
    public static Route simulate(
            Rulebook rulebook,
            Collection<TechniqueRule> techniques,
            Map<String, Fact> clocks,
            Subject subject,
            LocalDate on,
            int goalStageOrder,
            int draws,
            long seed) {
        var openings = rulebook.openings(subject, on);
        var tree = new TreeRoute(techniques, clocks, subject, openings);
        double vigour = subject.facts().number(Fact.VIGOUR_INDEX);
        double budget = LoadBudget.of(Double.isNaN(vigour) ? MIDDLING_VIGOUR : vigour);
        return Route.simulate(
                new RouteStart(on, subject.ledger(), budget, subject.stages()),
                tree.steps(),
                goalStageOrder,
                draws,
                seed);
    }

    private List<RouteStep> steps() {
        var steps = new ArrayList<RouteStep>();
        for (var standing : openings.standings()) {
            var rule = rules.get(standing.technique());
            if (rule != null) {
                steps.add(step(rule, standing));
            }
        }
        return steps;
    }

    private RouteStep step(TechniqueRule rule, Standing standing) {
        var settled =
                standing.verdict() == Verdict.DONE || standing.verdict() == Verdict.NOT_NEEDED;
        var waits = new ArrayList<Wait>();
        var lags = new ArrayList<Lag>();
        var open = rule.season().openStages(subject.traits(), subject.place());
        if (!settled) {
            openings.of(rule.code())
                    .ifPresent(opening -> opening.waits().forEach(wait -> add(waits, wait)));
            lags.addAll(lags(rule, standing));
            if (open.isEmpty()) {
                waits.add(flowers());
            }
        }
        return new RouteStep(
                rule.code(),
                rule.stageOrder(),
                rule.after(),
                open.isEmpty() ? RouteStep.ANY_TIME : open,
                rule.stress(),
                rule.recoveryDays(),
                rule.quietDaysBefore(),
                dose(rule.dose()),
                waits,
                lags,
                subject.signedOff().get(rule.code()),
                settled ? 0 : 1,
                0);
    }

    private static Wait flowers() {
        return new Wait(
                Fact.FLOWER_STAGE.code(),
                "season",
                new Outlook.Unsaid("Its season goes by the flowers, which are not forecast."),
                Wait.Assumption.MET_NEXT_SEASON);
    }

    private static void add(List<Wait> waits, Opening.Wait wait) {
        var reason = wait.reason();
        var assumption =
                reason.truth() == Truth.UNKNOWN
                        ? Wait.Assumption.MET_WHEN_LOOKED_AT
                        : Wait.Assumption.MET_NEXT_SEASON;
        if (reason instanceof Reason.OfCriterion criterion) {
            var fact = criterion.criterion().fact().code();
            waits.add(new Wait(fact, reason.key(), wait.outlook(), assumption));
        } else if (!(reason instanceof Reason.OfOrder)
                && wait.outlook() instanceof Outlook.Unsaid) {
            waits.add(new Wait(reason.key(), reason.key(), wait.outlook(), assumption));
        }
    }

    /** Clocks that a technique before this one begins anew. */
    private List<Lag> lags(TechniqueRule rule, Standing standing) {
        var before = before(rule, new HashSet<>());
        var lags = new ArrayList<Lag>();
        for (var reason : standing.reasons()) {
            if (reason instanceof Reason.OfCriterion criterion
                    && criterion.required() instanceof Requirement.AtLeast least) {
                for (var code : before) {
                    if (clocks.get(code) == criterion.criterion().fact()) {
                        int days = (int) Math.min(Lag.LONGEST_DAYS, Math.ceil(least.bound()));
                        lags.add(
                                Lag.sure(
                                        code,
                                        criterion.criterion().fact().code(),
                                        Math.max(0, days)));
                    }
                }
            }
        }
        return lags;
    }

    private Set<String> before(TechniqueRule rule, Set<String> found) {
        for (var code : rule.after()) {
            var other = rules.get(code);
            if (found.add(code) && other != null) {
                before(other, found);
            }
        }
        return found;
    }

    /** A tree may bear less than the technique's own limit, or more. */
    private @Nullable DoseRule dose(@Nullable DoseRule dose) {
        return dose == null
                ? null
                : dose.forTree(subject.traits(), subject.facts().number(Fact.VIGOUR_INDEX));
    }
}
