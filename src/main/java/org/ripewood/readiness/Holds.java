package org.ripewood.readiness;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Opening;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Truth;

/** What holds a technique, told apart by what it takes to be rid of it. */
public final class Holds {

    private Holds() {}

    /** A reason that holds, and is more than a turn, a season or a lesson to wait for. */
    public static boolean byItself(Reason reason) {
        return reason.truth() == Truth.NO
                && !(reason instanceof Reason.OfOrder
                        || reason instanceof Reason.OfDevelopment
                        || reason instanceof Reason.OfSeason
                        || reason instanceof Reason.OfSkill);
    }

    /**
     * A reason that holds until the tree has changed. A plan that nobody has made yet holds too,
     * but it is made in a minute: the tree does not stand in the way.
     */
    static boolean byTheTree(Reason reason) {
        return byItself(reason)
                && !(reason instanceof Reason.OfCriterion asked
                        && asked.criterion().fact().untilSaid() != null);
    }

    /** A load the tree is too weak for is told by its vigour, where that is told as well. */
    static boolean isToldByVigour(Reason reason, Opening opening) {
        return isToldByVigour(reason, opening.waits().stream().map(Opening.Wait::reason).toList());
    }

    /** The same among the reasons of a standing. */
    public static boolean isToldByVigour(Reason reason, Collection<Reason> reasons) {
        return reason instanceof Reason.OfLoad load
                && load.asksForStrength()
                && reasons.stream()
                        .anyMatch(
                                other ->
                                        other instanceof Reason.OfCriterion asked
                                                && asked.criterion().fact() == Fact.VIGOUR_INDEX
                                                && asked.truth() == Truth.NO);
    }

    /** Whether anything but a turn, a season or a lesson holds it. */
    public static boolean byItself(Standing standing) {
        return standing.reasons().stream().anyMatch(Holds::byItself);
    }

    /**
     * What a filter asks for a reason by: the fact it is about, or the kind of rest it asks for.
     */
    public static String code(Reason reason) {
        if (reason instanceof Reason.OfCriterion criterion) {
            return criterion.criterion().fact().code();
        }
        return reason instanceof Reason.OfDose dose
                ? "dose_" + dose.kind().name().toLowerCase(Locale.ROOT)
                : reason.key();
    }

    /** Titles by code of what holds a technique by itself. */
    static Map<String, String> of(Standing standing, Function<Reason, String> title) {
        var found = new TreeMap<String, String>();
        for (var reason : standing.reasons()) {
            if (byItself(reason)) {
                found.computeIfAbsent(code(reason), code -> title.apply(reason));
            }
        }
        return found;
    }
}
