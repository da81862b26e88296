package org.ripewood.core.progress;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What comes before one technique for one species: techniques to be signed off first, and work on
 * the material that the tree may still need.
 *
 * <p>A technique that a tree does not need and never had is passed over. Passing it over skips the
 * work and not what the work stands on: its own predecessors are asked instead, and its criteria on
 * {@link #MATERIAL} are handed on. Otherwise a tree of three branches and no trunk could be wired,
 * because nothing is left to choose among its branches.
 */
final class CompiledOrder {

    /** Facts that tell how far the material has come. */
    static final Set<Fact> MATERIAL =
            Set.copyOf(
                    EnumSet.of(
                            Fact.TRUNK_BASE_SHARE,
                            Fact.REVERSE_TAPER,
                            Fact.LEADER_SHARE,
                            Fact.ROOT_FLARE_EXPOSED,
                            Fact.ROOT_GAP_DEG,
                            Fact.ROOT_SPREAD_DEG,
                            Fact.CIRCLING_TURN,
                            Fact.FIRM_IN_CONTAINER,
                            Fact.FRONT_MARK,
                            Fact.BRANCH_PLAN,
                            Fact.LARGEST_OPENING_MM));

    /** A technique before this one, with what it hands on when it is passed over. */
    private static final class Before {
        final int position;
        final boolean direct;
        final int[] after;
        final CompiledCriterion[] handedOn;
        final int[] keys;

        Before(
                int position,
                boolean direct,
                int[] after,
                CompiledCriterion[] handedOn,
                int[] keys) {
            this.position = position;
            this.direct = direct;
            this.after = after;
            this.handedOn = handedOn;
            this.keys = keys;
        }
    }

    private final Before[] before;
    private final int[] development;

    private CompiledOrder(Before[] before, int[] development) {
        this.before = before;
        this.development = development;
    }

    /**
     * @param rule of the technique
     * @param own its own criteria, which win over the same criterion handed on
     * @param earlier everything that may come before it, by position
     * @param development positions of the techniques that make the material
     */
    static CompiledOrder compile(
            TechniqueRule rule,
            CompiledCriterion[] own,
            Map<String, CompiledTechnique> earlier,
            int[] development) {
        var keys = new HashMap<String, Integer>();
        var ownKeys = new HashSet<String>();
        for (var criterion : own) {
            ownKeys.add(criterion.key());
        }
        var before = new ArrayList<Before>();
        var seen = new HashSet<String>();
        var queue = new ArrayList<>(rule.after());
        for (int i = 0; i < queue.size(); i++) {
            if (seen.add(queue.get(i))) {
                var technique = find(queue.get(i), earlier);
                var direct = rule.after().contains(queue.get(i));
                before.add(before(technique, direct, ownKeys, keys, earlier));
                queue.addAll(technique.rule().after());
            }
        }
        // whoever comes after it is asked before it, since that decides whether it is asked at all
        before.sort(Comparator.<Before>comparingInt(one -> one.position).reversed());
        return new CompiledOrder(before.toArray(Before[]::new), development);
    }

    private static Before before(
            CompiledTechnique technique,
            boolean direct,
            Set<String> ownKeys,
            Map<String, Integer> keys,
            Map<String, CompiledTechnique> earlier) {
        var handedOn = new ArrayList<CompiledCriterion>();
        for (var criterion : technique.criteria()) {
            if (MATERIAL.contains(criterion.fact()) && !ownKeys.contains(criterion.key())) {
                handedOn.add(criterion);
            }
        }
        var ids =
                handedOn.stream()
                        .mapToInt(
                                criterion ->
                                        keys.computeIfAbsent(criterion.key(), key -> keys.size()))
                        .toArray();
        return new Before(
                technique.position(),
                direct,
                positions(technique.rule().after(), earlier),
                handedOn.toArray(CompiledCriterion[]::new),
                ids);
    }

    /** The rulebook has put every technique behind those that come before it. */
    private static CompiledTechnique find(String code, Map<String, CompiledTechnique> earlier) {
        return Objects.requireNonNull(earlier.get(code), code);
    }

    private static int[] positions(List<String> codes, Map<String, CompiledTechnique> earlier) {
        return codes.stream().mapToInt(code -> find(code, earlier).position()).toArray();
    }

    /** Whether all of what comes first is there. */
    Truth truth(EvaluationContext moment) {
        if (development.length > 0 && !moment.materialNeeds(development).isEmpty()) {
            return Truth.NO;
        }
        return before.length == 0 ? Truth.YES : predecessors(moment, null, false);
    }

    /**
     * Adds a reason for each thing that comes first.
     *
     * @param all those that are there too
     */
    void tell(List<Reason> reasons, EvaluationContext moment, boolean all) {
        if (before.length > 0) {
            predecessors(moment, reasons, all);
        }
        if (development.length > 0) {
            reasons.addAll(moment.materialNeeds(development));
        }
    }

    private Truth predecessors(
            EvaluationContext moment, @Nullable List<Reason> reasons, boolean all) {
        var truth = Truth.YES;
        BitSet asked = null;
        BitSet told = null;
        for (var one : before) {
            if (!one.direct && (asked == null || !asked.get(one.position))) {
                continue;
            }
            var technique = moment.techniques[one.position];
            var first = technique.truthAsPredecessor(moment);
            truth = truth.and(first);
            if (reasons != null && (all || first != Truth.YES)) {
                reasons.add(technique.asPredecessor(first));
            }
            if (!technique.isPassedOver(moment)) {
                continue;
            }
            if (asked == null || told == null) {
                asked = new BitSet(moment.techniques.length);
                told = new BitSet();
            }
            for (int position : one.after) {
                asked.set(position);
            }
            truth = truth.and(handedOn(one, told, moment, reasons, all));
        }
        return truth;
    }

    /** The criteria that a technique hands on, but for those that another has handed on before. */
    private static Truth handedOn(
            Before one,
            BitSet told,
            EvaluationContext moment,
            @Nullable List<Reason> reasons,
            boolean all) {
        var truth = Truth.YES;
        for (int i = 0; i < one.handedOn.length; i++) {
            if (!told.get(one.keys[i])) {
                told.set(one.keys[i]);
                truth = truth.and(one.handedOn[i].truth(moment));
                if (reasons != null) {
                    one.handedOn[i].tell(reasons, moment, all);
                }
            }
        }
        return truth;
    }
}
