package org.ripewood.core.route;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which steps of a tree come before which: as the techniques say, and a step that works on a fact
 * before those of its own or a later stage that need the fact.
 *
 * <p>Where two steps of a stage each work on what the other one needs, the order found first
 * stands: facts that are not so yet go before those that would be lost.
 */
final class StepOrder {

    private final Map<String, StepAhead> steps = new HashMap<>();
    private final Map<String, Set<String>> before = new HashMap<>();

    StepOrder(List<StepAhead> ahead) {
        ahead.forEach(step -> steps.put(step.code(), step));
        for (var step : ahead) {
            var first = new LinkedHashSet<>(step.rule().after());
            first.retainAll(steps.keySet());
            before.put(step.code(), first);
        }
    }

    /** Puts one step before another, unless the other one already comes first. */
    void put(StepAhead first, StepAhead then) {
        if (mayPrecede(first, then)) {
            of(then.code()).add(first.code());
        }
    }

    /** The same where the first one is of a later stage. */
    void putWhateverTheStage(StepAhead first, StepAhead then) {
        if (!first.code().equals(then.code())
                && !leads(then.code(), first.code(), new HashSet<>())) {
            of(then.code()).add(first.code());
        }
    }

    /** Whether nothing says that the other one comes first. */
    private boolean mayPrecede(StepAhead first, StepAhead then) {
        return first.stage() <= then.stage()
                && !first.code().equals(then.code())
                && !leads(then.code(), first.code(), new HashSet<>());
    }

    /** Whether one step comes before another, by whatever chain or by its stage. */
    boolean precedes(StepAhead first, StepAhead then) {
        return leads(first.code(), then.code(), new HashSet<>())
                || (!then.isOpen() && first.stage() < then.stage() && mayPrecede(first, then));
    }

    private boolean leads(String first, String then, Set<String> seen) {
        for (var code : of(then)) {
            if (code.equals(first) || (seen.add(code) && leads(first, code, seen))) {
                return true;
            }
        }
        return false;
    }

    /** The codes of the steps right before one. */
    List<String> before(StepAhead step) {
        return List.copyOf(of(step.code()));
    }

    private Set<String> of(String code) {
        return before.computeIfAbsent(code, any -> new LinkedHashSet<>());
    }
}
