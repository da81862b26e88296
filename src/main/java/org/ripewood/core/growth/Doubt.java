package org.ripewood.core.growth;

/**
 * Why a value just measured is asked about before it is kept.
 *
 * @param words the value, what was there before and when, and one guess at what happened
 */
public record Doubt(Oddity oddity, String words) {

    /** What is odd about a value. */
    public enum Oddity {
        /** Measured higher up than the tree is high. */
        ABOVE,
        /** Off by ten or a hundred times: the decimal point, or centimetres for millimetres. */
        SLIP,
        /** A trunk that has become thinner. */
        FELL,
        /** A trunk that has thickened more than trunks do in a year. */
        JUMPED,
        /** Thicker than below and above, and never seen so before. */
        BULGE,
        /** A wound that has opened. */
        WIDER,
        /** A shoot longer than shoots grow in a season. */
        LONG,
        /** A strength judged higher than what was seen of the tree allows. */
        STRONGER,
        /** Foliage missed on a tree that bears none in its season. */
        LEAFLESS
    }
}
