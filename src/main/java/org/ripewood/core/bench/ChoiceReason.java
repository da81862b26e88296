package org.ripewood.core.bench;

/** Why a piece of work was chosen, or was not; put into words elsewhere. */
public sealed interface ChoiceReason {

    /** Speaks for it: it was chosen. */
    sealed interface For extends ChoiceReason {}

    /** Speaks against it: it was not chosen. */
    sealed interface Against extends ChoiceReason {}

    /** The instructor wants it. */
    record Pinned() implements For {}

    /** An instructor assigned it before. */
    record AssignedBefore() implements For {}

    /** Its lesson is taught today. */
    record TaughtToday() implements For {}

    /** Of what fits, it and the other chosen work are the most useful. */
    record MostUseful() implements For {}

    /** There is room for it beside more useful work on the same tree. */
    record FitsBeside(String technique) implements For {}

    /** The instructor does not want it. */
    record Dropped() implements Against {}

    /** The instructor wants it, and it is nothing the tree is ready for or expected to be. */
    record NotPossible() implements Against {}

    /** The student has not shown the skill, and its lesson is not taught today. */
    record SkillMissing() implements Against {}

    /** None of this tool is there. */
    record ToolMissing(String tool) implements Against {}

    /**
     * All of this tool are in use for too long.
     *
     * @param left minutes beside the chosen work
     */
    record ToolTaken(String tool, int needed, int left) implements Against {}

    /**
     * The student has too little time left.
     *
     * @param left minutes beside the chosen work
     */
    record StudentTime(int needed, int left) implements Against {}

    /**
     * Instructors have too little time left.
     *
     * @param left minutes beside the chosen work
     */
    record InstructorTime(int needed, int left) implements Against {}

    /**
     * There is too little of a material.
     *
     * @param left beside the chosen work
     */
    record MaterialShort(String material, double needed, double left) implements Against {
        public double shortBy() {
            return needed - left;
        }
    }

    /**
     * The tree has its work: another piece is chosen. Where this one is worth more, what there is
     * too little of for it is told, too.
     */
    record AnotherFirst(String technique) implements Against {}

    /** The search came to its limit before it could tell whether this would be better. */
    record NotTried() implements Against {}
}
