package org.ripewood.core.bench;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A piece of work a tree could get on a class day.
 *
 * @param technique its code; unique among a tree's candidates
 * @param sureness how sure it is that the tree is ready for it on the day
 * @param usefulness from 0 to {@value Job#MOST_USEFUL}, more is more useful; how much it counts is
 *     decided outside
 * @param studentMinutes all the student's time at the tree, the instructor's included
 * @param instructorMinutes of the student's minutes those with an instructor
 * @param tools by name the minutes each is in use
 * @param materials by name how much is used up, in the material's own unit
 * @param irreversible whether something is cut that does not grow back
 * @param skill whether the student may do it
 */
public record Candidate(
        String technique,
        Sureness sureness,
        double usefulness,
        int studentMinutes,
        int instructorMinutes,
        Map<String, Integer> tools,
        Map<String, Double> materials,
        boolean irreversible,
        Skill skill) {

    /** How sure it is that the tree is ready. */
    public sealed interface Sureness {

        /** What its usefulness is multiplied by. */
        double probability();
    }

    /** Ready by its standing now. */
    public record Ready() implements Sureness {
        @Override
        public double probability() {
            return 1;
        }
    }

    /** Assigned by an instructor before the day. */
    public record Assigned() implements Sureness {
        @Override
        public double probability() {
            return 1;
        }
    }

    /**
     * Not ready yet, and expected to be by forecast.
     *
     * @param probability above 0, at most 1
     */
    public record Expected(double probability) implements Sureness {
        public Expected {
            if (!(probability > 0 && probability <= 1)) {
                throw new IllegalArgumentException(
                        "a probability lies above 0 and is at most 1, found " + probability);
            }
        }
    }

    /** Whether the student may do the work; whoever waives a lesson says shown. */
    public enum Skill {
        SHOWN,
        /** The lesson is taught on the day. */
        TAUGHT_TODAY,
        MISSING
    }

    public Candidate {
        JobIds.require("a technique", technique);
        if (!(usefulness >= 0 && usefulness <= Job.MOST_USEFUL)) {
            throw new IllegalArgumentException(
                    "usefulness runs from 0 to %s, found %s in %s"
                            .formatted(Job.MOST_USEFUL, usefulness, technique));
        }
        if (!(studentMinutes > 0 && studentMinutes <= Span.DAY_MINUTES)) {
            throw new IllegalArgumentException(
                    "work takes from 1 to %d minutes, found %d in %s"
                            .formatted(Span.DAY_MINUTES, studentMinutes, technique));
        }
        if (!(instructorMinutes >= 0 && instructorMinutes <= studentMinutes)) {
            throw new IllegalArgumentException(
                    "an instructor stays from 0 to %d minutes, found %d in %s"
                            .formatted(studentMinutes, instructorMinutes, technique));
        }
        tools = Map.copyOf(tools);
        materials = Map.copyOf(materials);
        new TreeMap<>(tools).forEach(Candidate::requireUse);
        new TreeMap<>(materials).forEach(Candidate::requireAmount);
    }

    private static void requireUse(String tool, int minutes) {
        if (!(minutes > 0 && minutes <= Span.DAY_MINUTES)) {
            throw new IllegalArgumentException(
                    "a tool is in use from 1 to %d minutes, found %d for %s"
                            .formatted(Span.DAY_MINUTES, minutes, tool));
        }
    }

    private static void requireAmount(String material, double amount) {
        if (!(amount > 0 && amount < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "an amount is more than 0, found %s of %s".formatted(amount, material));
        }
    }

    boolean assigned() {
        return sureness instanceof Assigned;
    }

    /** Its phases as they usually run, without tools; see {@link Job#usualPhases}. */
    public List<WorkPhase> usualPhases() {
        return Job.usualPhases(studentMinutes, instructorMinutes, irreversible);
    }
}
