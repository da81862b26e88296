package org.ripewood.course;

import java.time.MonthDay;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.Verdict;

/**
 * A tree on a day of the year, a technique somebody asks for, and what a teacher says of it. All
 * days count back from the day of the case.
 *
 * @param topic code of the file it stands in
 * @param name names it within its topic
 * @param file and {@code line} say where it stands
 * @param skills lessons whose skill the keeper has shown; null when the keeper is no student
 * @param verdicts what the teacher accepts
 * @param against what must be told against it; of each entry one is enough
 * @param notAgainst what must not be told against it
 * @param waivable whether an instructor must be able to let all pass that is against it; null where
 *     it does not matter
 * @param stages the stages the tree may be said to be in, by code; empty where it does not matter
 * @param why the teacher's reason
 */
public record JudgementCase(
        String topic,
        String name,
        String title,
        String file,
        int line,
        String species,
        Climate climate,
        MonthDay day,
        Tree tree,
        @Nullable Set<String> skills,
        String technique,
        Set<Verdict> verdicts,
        List<Set<String>> against,
        List<Set<String>> notAgainst,
        @Nullable Boolean waivable,
        Set<String> stages,
        String why,
        String source) {

    /** Reasons that are neither of a fact nor of a technique to be done first. */
    public static final Set<String> OTHER_REASONS =
            Set.of("load", "quiet", "heavy", "dose", "skill", "season", "needed", "species");

    public JudgementCase {
        skills = skills == null ? null : Set.copyOf(skills);
        verdicts = Set.copyOf(verdicts);
        against = List.copyOf(against);
        notAgainst = List.copyOf(notAgainst);
        stages = Set.copyOf(stages);
    }

    /** Topic and name, which name it among all cases. */
    public String code() {
        return topic + "/" + name;
    }

    /**
     * A type of climate.
     *
     * @param minCelsius twelve monthly means of the daily minimum, January first
     * @param maxCelsius likewise of the maximum
     */
    public record Climate(
            String code,
            String title,
            double latitude,
            List<Double> minCelsius,
            List<Double> maxCelsius) {
        public Climate {
            minCelsius = List.copyOf(minCelsius);
            maxCelsius = List.copyOf(maxCelsius);
        }
    }

    /**
     * What is known of the tree.
     *
     * @param container null when nobody said what it stands in
     * @param signedOff techniques signed off, with all that follows from it
     * @param works work done without a sign-off of its own
     */
    public record Tree(
            List<Known> known,
            List<Mark> profile,
            List<Cut> wounds,
            List<Grown> branches,
            @Nullable Stay container,
            List<Done> signedOff,
            List<Done> works) {
        public Tree {
            known = List.copyOf(known);
            profile = List.copyOf(profile);
            wounds = List.copyOf(wounds);
            branches = List.copyOf(branches);
            signedOff = List.copyOf(signedOff);
            works = List.copyOf(works);
        }
    }

    /** A fact as somebody saw it. */
    public record Known(Fact fact, Value value, int daysAgo, Source eye) {}

    /** A diameter of the trunk at a height above the root flare, in mm. */
    public record Mark(double heightMm, double diameterMm, int daysAgo) {}

    /** A wound, as wide and long as it was made. */
    public record Cut(
            int madeDaysAgo,
            double widthMm,
            double lengthMm,
            boolean deadwoodByDesign,
            List<Look> looks) {
        public Cut {
            looks = List.copyOf(looks);
        }
    }

    /** A reading of a wound. */
    public record Look(int daysAgo, double openMm, Source eye) {}

    /**
     * A branch.
     *
     * @param role what it is there for, in the words of the record
     * @param diameterMm and {@code trunkMm} at its node; null when not measured
     */
    public record Grown(
            String name,
            String role,
            @Nullable Double diameterMm,
            @Nullable Double trunkMm,
            int daysAgo) {}

    /** What the tree stands in. */
    public record Stay(String kind, int sinceDaysAgo) {}

    /** Work done; shares are null where it took what is usual. */
    public record Done(
            String technique,
            int daysAgo,
            @Nullable Double foliageShare,
            @Nullable Double rootShare) {}
}
