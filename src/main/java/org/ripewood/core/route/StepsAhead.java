package org.ripewood.core.route;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.Openings;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Rulebook;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Subject;
import org.ripewood.core.progress.TechniqueRule;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Verdict;
import org.ripewood.core.season.Outlook;

/**
 * Which techniques are still to be done on a tree: those its rulebook says today, and those that
 * the work on them makes needed, such as choosing a leader after a chop.
 *
 * <p>Care is not among them, since a tree is never done with it; nor is what would follow from care
 * nobody has begun, such as taking off a branch that might be kept.
 */
final class StepsAhead {

    /** A window that is open comes round again within a year, and spring may be late. */
    private static final int NEXT_WINDOW_DAYS = 400;

    private final Rulebook rulebook;
    private final RouteRules rules;
    private final Subject subject;
    private final LocalDate on;
    private final Map<String, TechniqueRule> byCode = new HashMap<>();
    private final Map<String, StepAhead> ahead = new LinkedHashMap<>();

    private StepsAhead(Rulebook rulebook, RouteRules rules, Subject subject, LocalDate on) {
        this.rulebook = rulebook;
        this.rules = rules;
        this.subject = subject;
        this.on = on;
        rules.techniques().forEach(rule -> byCode.put(rule.code(), rule));
    }

    /**
     * Those steps, in telling order as far as they are needed today, what follows from them last.
     */
    static List<StepAhead> of(
            Rulebook rulebook, RouteRules rules, Subject subject, LocalDate on, Openings openings) {
        var all = new StepsAhead(rulebook, rules, subject, on);
        var later = new ArrayList<Standing>();
        for (var standing : openings.standings()) {
            var rule = all.byCode.get(standing.technique());
            if (rule == null || rule.purpose() == TechniqueRule.Purpose.CARE) {
                continue;
            }
            if (needed(standing)) {
                all.add(rule, standing, openings, subject.facts(), true);
            } else if (notNeededToday(standing)) {
                later.add(standing);
            }
        }
        all.addWhatFollows(later);
        return List.copyOf(all.ahead.values());
    }

    private static boolean needed(Standing standing) {
        return standing.verdict() != Verdict.DONE && standing.verdict() != Verdict.NOT_NEEDED;
    }

    private static boolean notNeededToday(Standing standing) {
        return standing.verdict() == Verdict.NOT_NEEDED
                && standing.reasons().stream().anyMatch(Reason.OfNeed.class::isInstance);
    }

    private List<Effect> effects(TechniqueRule rule) {
        return rules.effects().getOrDefault(rule.code(), List.of());
    }

    private void add(
            TechniqueRule rule,
            Standing standing,
            Openings openings,
            Facts facts,
            boolean neededToday) {
        openings.of(rule.code())
                .ifPresent(
                        opening ->
                                ahead.put(
                                        rule.code(),
                                        new StepAhead(
                                                rule,
                                                effects(rule),
                                                rules.unsettles()
                                                        .getOrDefault(rule.code(), Set.of()),
                                                rules.goesAfter()
                                                        .getOrDefault(rule.code(), List.of()),
                                                rules.wounding().contains(rule.code()),
                                                rules.clocks().get(rule.code()),
                                                standing,
                                                opening.waits(),
                                                facts,
                                                neededToday ? opens(opening.outlook()) : null)));
    }

    private @Nullable LocalDate opens(Outlook outlook) {
        if (outlook instanceof Outlook.Already) {
            return on;
        }
        return outlook instanceof Outlook.Expected expected
                        && !expected.likely().isAfter(on.plusDays(NEXT_WINDOW_DAYS))
                ? expected.likely()
                : null;
    }

    /** What comes of one step may make the next one needed, so it goes on until nothing does. */
    private void addWhatFollows(List<Standing> notNeeded) {
        Set<String> left = new HashSet<>();
        notNeeded.forEach(standing -> left.add(standing.technique()));
        boolean found = true;
        while (found) {
            found = false;
            for (var standing : notNeeded) {
                var rule = byCode.get(standing.technique());
                if (rule != null && left.contains(rule.code()) && follows(rule)) {
                    left.remove(rule.code());
                    found = true;
                }
            }
        }
    }

    private boolean follows(TechniqueRule rule) {
        for (var step : List.copyOf(ahead.values())) {
            if (step.stage() <= rule.stageOrder() && makesNeeded(step, rule)) {
                var then = subject.with(with(step.leaves())).withSignedOff(step.code(), on);
                var openings = rulebook.openings(then, on);
                openings.standings().stream()
                        .filter(standing -> standing.technique().equals(rule.code()))
                        .filter(StepsAhead::needed)
                        .findFirst()
                        .ifPresent(standing -> add(rule, standing, openings, then.facts(), false));
                return ahead.containsKey(rule.code());
            }
        }
        return false;
    }

    private boolean makesNeeded(StepAhead step, TechniqueRule rule) {
        var need = rule.neededWhen();
        if (need == null || step.leaves().isEmpty()) {
            return false;
        }
        return need.holds(with(step.leaves())) == Truth.YES && !isUndone(step, rule);
    }

    /** Whether a step in between takes the need away again. */
    private boolean isUndone(StepAhead step, TechniqueRule rule) {
        return ahead.values().stream()
                .filter(
                        other ->
                                !other.code().equals(step.code())
                                        && other.stage() <= rule.stageOrder())
                .filter(other -> other.stage() >= step.stage() && !other.effects().isEmpty())
                .anyMatch(
                        other ->
                                rule.neededWhen() != null
                                        && rule.neededWhen().holds(with(both(step, other)))
                                                == Truth.NO);
    }

    private static List<Effect> both(StepAhead first, StepAhead then) {
        var late = then.leaves().stream().map(Effect::fact).collect(Collectors.toSet());
        return Stream.concat(
                        first.leaves().stream().filter(effect -> !late.contains(effect.fact())),
                        then.leaves().stream())
                .toList();
    }

    /** The facts as they are after effects. */
    private Facts with(List<Effect> effects) {
        var changed = effects.stream().map(Effect::fact).collect(Collectors.toSet());
        var evidence = new ArrayList<Evidence>();
        subject.facts().all().stream()
                .filter(known -> !changed.contains(known.fact()))
                .forEach(evidence::add);
        effects.forEach(
                effect ->
                        evidence.add(
                                Evidence.derived(effect.fact(), effect.becomes(), on, "the work")));
        return Facts.of(evidence);
    }
}
