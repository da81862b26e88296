package org.ripewood.core.bench;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A tree a student brings to a class day, what could be done with it, and what the instructor
 * wishes. To swap one piece for another is to drop the one and to pin the other.
 *
 * @param tree names it; unique on the day
 * @param student who brings it
 * @param candidates each technique once
 * @param pinned codes of techniques the instructor wants to be done
 * @param dropped codes of techniques the instructor does not want
 */
public record TreeWork(
        String tree,
        String student,
        List<Candidate> candidates,
        Set<String> pinned,
        Set<String> dropped) {

    /** More wishes than this for one tree on one day are a mistake. */
    public static final int MOST_PINNED = 5;

    public TreeWork {
        JobIds.require("a tree", tree);
        JobIds.require("a student", student);
        candidates = List.copyOf(candidates);
        pinned = Set.copyOf(pinned);
        dropped = Set.copyOf(dropped);
        JobIds.requireDifferent("candidates for " + tree, candidates, Candidate::technique);
        if (pinned.size() > MOST_PINNED) {
            throw new IllegalArgumentException(
                    "at most %d pieces are pinned, found %s for %s"
                            .formatted(MOST_PINNED, new TreeSet<>(pinned), tree));
        }
        for (var code : new TreeSet<>(pinned)) {
            if (dropped.contains(code)) {
                throw new IllegalArgumentException(
                        "%s is both pinned and dropped for %s".formatted(code, tree));
            }
        }
    }

    /** A tree nobody has wishes for. */
    public static TreeWork of(String tree, String student, List<Candidate> candidates) {
        return new TreeWork(tree, student, candidates, Set.of(), Set.of());
    }

    boolean pins(Candidate candidate) {
        return pinned.contains(candidate.technique());
    }
}
