package org.ripewood.standing;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.condition.TreeState;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.steps.Wording;

/**
 * Whether a tree may be dead: nearly all twigs dead, all foliage missing while it should bear some,
 * or a season without any growth. Whoever scratches the bark and finds green answers it, by
 * recording dead twigs. Bounds are common practice, no source.
 */
public final class AliveDoubt {

    /** Twigs nobody has looked at among so many dead ones make no tree alive. */
    private static final double NEARLY_ALL = 90;

    private static final double ALL = 100;

    private AliveDoubt() {}

    /**
     * What is told of such a tree before every step, in three sentences; empty for others, and for
     * trees that left the school.
     */
    public static Optional<String> of(TreeOnDay tree) {
        return tree.tree().left() ? Optional.empty() : sign(tree).map(AliveDoubt::told);
    }

    /** The sign that says so, with its day; empty for a tree that shows none. */
    private static Optional<String> sign(TreeOnDay tree) {
        var facts = tree.subject().facts();
        var twigs = facts.find(Fact.DIEBACK_PERCENT);
        if (twigs != null && number(twigs) >= NEARLY_ALL) {
            return Optional.of(told("Dead twigs", twigs));
        }
        var scratched = twigs == null ? null : twigs.observedOn();
        return Stream.of(
                        foliage(facts.find(Fact.FOLIAGE_LOSS_PERCENT), tree.state()),
                        growth(facts.find(Fact.SHOOT_EXTENSION_MM)),
                        growth(facts.find(Fact.SHOOT_EXTENSION_RATIO)))
                .flatMap(Optional::stream)
                .filter(sign -> isOpen(sign.seen().observedOn(), scratched))
                .findFirst()
                .map(sign -> told(sign.title(), sign.seen()));
    }

    /** A sign that somebody saw. */
    private record Sign(String title, Evidence seen) {}

    /** Twigs that were scratched that day or later have told more. */
    private static boolean isOpen(LocalDate seen, @Nullable LocalDate scratched) {
        return scratched == null || scratched.isBefore(seen);
    }

    /** Leaves that are down in their season are no sign. */
    private static Optional<Sign> foliage(@Nullable Evidence seen, TreeState state) {
        return Optional.ofNullable(seen)
                .filter(missing -> number(missing) >= ALL)
                .filter(missing -> !state.bareOn(missing.observedOn()))
                .map(missing -> new Sign("Missing foliage", missing));
    }

    private static Optional<Sign> growth(@Nullable Evidence seen) {
        return Optional.ofNullable(seen)
                .filter(grown -> number(grown) == 0)
                .map(none -> new Sign("Growth of the season", none));
    }

    private static double number(Evidence seen) {
        return seen.value() instanceof Value.Number number ? number.amount() : Double.NaN;
    }

    private static String told(String title, Evidence seen) {
        var what = number(seen) == 0 ? "none" : Wording.value(seen.fact(), seen.value());
        return "%s: %s, seen on %s".formatted(title, what, Wording.day(seen.observedOn()));
    }

    private static String told(String sign) {
        return ("Is it alive? %s. Scratch the bark, from the twigs down to the foot of the trunk: moist and green"
                        + " is alive. Do nothing else to it, and call your instructor.")
                .formatted(sign);
    }
}
