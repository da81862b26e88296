package org.ripewood.core.progress;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What the engine has to know of a technique.
 *
 * @param species with {@code groups}: whom it is for; both empty means every species
 * @param purpose what it is to a tree's development
 * @param neededWhen null when every tree needs it
 * @param repeatAfterDays days after which it is due again; null when once is enough for a tree
 * @param after codes of techniques to be signed off first
 * @param stress the load it puts on a tree, 0 to 10; from 6 it is heavy work
 * @param recoveryDays days over which that load falls to nothing
 * @param quietDaysBefore days without heavy work it asks for beforehand
 * @param skillLesson code of the lesson whose skill the student must have shown; null for none
 */
public record TechniqueRule(
        String code,
        int stageOrder,
        Purpose purpose,
        Set<String> species,
        Set<String> groups,
        @Nullable Condition neededWhen,
        @Nullable Integer repeatAfterDays,
        List<String> after,
        List<Criterion> criteria,
        SeasonRule season,
        double stress,
        int recoveryDays,
        int quietDaysBefore,
        @Nullable DoseRule dose,
        @Nullable String skillLesson) {

    /** What a technique is to a tree's development. */
    public enum Purpose {
        /** Keeps a tree well; it moves nothing on. */
        CARE,
        /** Makes the material: as long as the tree needs it, nothing is styled. */
        DEVELOPMENT,
        /** Gives the tree its form, and waits until the material is there. */
        STYLING,
        /** Everything else: looks, choices, mending. */
        OTHER
    }

    /** Stress from which work counts as heavy (common practice, no source). */
    public static final double HEAVY_STRESS = 6;

    /** Stress up to which work counts as light (common practice, no source). */
    public static final double LIGHT_STRESS = 2;

    public TechniqueRule {
        species = Set.copyOf(species);
        groups = Set.copyOf(groups);
        after = List.copyOf(after);
        criteria = List.copyOf(criteria);
        if (!(stress >= 0 && stress <= 10)) {
            throw new IllegalArgumentException("stress runs from 0 to 10, found " + stress);
        }
        if (recoveryDays < 0 || quietDaysBefore < 0) {
            throw new IllegalArgumentException("days must not be negative in " + code);
        }
    }

    /** Whether it is a technique for the species at all. */
    public boolean isFor(Traits traits) {
        return (species.isEmpty() && groups.isEmpty()) || traits.isAnyOf(species, groups);
    }
}
