package org.ripewood.core.progress;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.GrowingDays;

/**
 * One thing a technique waits for.
 *
 * @param freshDays days evidence stays good; null when it does not age
 * @param onTheDay looked at when the work begins: what nobody has seen lately holds nothing up, and
 *     what was seen not to be so does
 * @param instructorsEye a student's own evidence cannot meet it, though it can fail it
 * @param overrides other requirements for some species: one naming the species wins over one naming
 *     a group, and of equals the later
 * @param why the sentence that teaches why
 * @param ages by what its days of freshness are counted
 */
public record Criterion(
        Fact fact,
        Requirement requirement,
        @Nullable Integer freshDays,
        Strength strength,
        boolean onTheDay,
        boolean instructorsEye,
        List<Variant> overrides,
        String why,
        Ages ages) {

    /** By what evidence of a fact grows old. */
    public enum Ages {
        /** By growing days: what changes as the tree grows, and not while it rests. */
        GROWTH,
        /** By days of the calendar: what comes and goes whatever the tree does. */
        DAYS,
        /** Not at all: plans, wishes, and what the record itself knows. */
        NEVER;

        /** Days that count since something was seen; 0 when that was not before {@code on}. */
        public long between(LocalDate seenOn, LocalDate on, GrowingDays growing) {
            return switch (this) {
                case GROWTH -> growing.between(seenOn, on);
                case DAYS -> Math.max(0, ChronoUnit.DAYS.between(seenOn, on));
                case NEVER -> 0;
            };
        }
    }

    /** Another requirement for some species. */
    public record Variant(Set<String> species, Set<String> groups, Requirement requirement) {
        public Variant {
            species = Set.copyOf(species);
            groups = Set.copyOf(groups);
        }
    }

    /** A criterion whose evidence ages in days of the calendar. */
    public Criterion(
            Fact fact,
            Requirement requirement,
            @Nullable Integer freshDays,
            Strength strength,
            boolean onTheDay,
            boolean instructorsEye,
            List<Variant> overrides,
            String why) {
        this(
                fact,
                requirement,
                freshDays,
                strength,
                onTheDay,
                instructorsEye,
                overrides,
                why,
                Ages.DAYS);
    }

    public Criterion {
        overrides = List.copyOf(overrides);
        requireFit(fact, requirement);
        overrides.forEach(override -> requireFit(fact, override.requirement()));
        if (freshDays != null && freshDays < 1) {
            throw new IllegalArgumentException("freshness is at least a day, found " + freshDays);
        }
    }

    /** Names the criterion within its technique, for waivers and stored decisions. */
    public String key() {
        return fact.code() + "." + requirement.kind();
    }

    /**
     * The last day on which evidence is good; null when it does not grow old.
     *
     * @param growing of the tree's kind at its place
     */
    public @Nullable LocalDate goodUntil(LocalDate seenOn, GrowingDays growing) {
        if (freshDays == null || ages == Ages.NEVER) {
            return null;
        }
        return ages == Ages.DAYS
                ? seenOn.plusDays(freshDays)
                : growing.lastWithin(seenOn, freshDays);
    }

    /** The requirement as it stands for a species. */
    Requirement requirementFor(Traits traits) {
        Requirement byGroup = requirement;
        Requirement bySpecies = null;
        for (var override : overrides) {
            if (override.species().contains(traits.species())) {
                bySpecies = override.requirement();
            } else if (traits.isAnyOf(Set.of(), override.groups())) {
                byGroup = override.requirement();
            }
        }
        return bySpecies != null ? bySpecies : byGroup;
    }

    private static void requireFit(Fact fact, Requirement requirement) {
        if (!requirement.fits(fact.kind())) {
            throw new IllegalArgumentException(
                    "%s is a %s and cannot be held against %s"
                            .formatted(fact.code(), fact.kind(), requirement));
        }
    }
}
