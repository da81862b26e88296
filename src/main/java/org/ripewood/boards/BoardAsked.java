package org.ripewood.boards;

import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Refused;

/**
 * Which trees of a board are asked for; null asks for all.
 *
 * @param reason code of a reason for holds, as {@link Board.HoldCount} has it
 * @param fact code of a fact whose evidence grows old
 * @param stage code of the tree's stage
 * @param withinWeeks evidence too old within so many weeks counts as growing old
 * @param unseenWeeks a student not seen for more than so many weeks is told
 */
public record BoardAsked(
        Board.@Nullable Headline headline,
        @Nullable String reason,
        @Nullable String fact,
        @Nullable String species,
        @Nullable Long student,
        @Nullable String stage,
        int withinWeeks,
        int unseenWeeks) {

    public static final int WITHIN_WEEKS = 4;
    public static final int UNSEEN_WEEKS = 8;
    private static final int MOST_WEEKS = 520;

    public BoardAsked {
        requireWeeks("withinWeeks", withinWeeks);
        requireWeeks("unseenWeeks", unseenWeeks);
        reason = kept(reason);
        fact = kept(fact);
        species = kept(species);
        stage = kept(stage);
    }

    /** All trees with that headline. */
    public static BoardAsked of(Board.@Nullable Headline headline) {
        return new BoardAsked(headline, null, null, null, null, null, WITHIN_WEEKS, UNSEEN_WEEKS);
    }

    /** Whether it leaves any tree out. */
    public boolean narrows() {
        return headline != null
                || reason != null
                || fact != null
                || species != null
                || student != null
                || stage != null;
    }

    private static @Nullable String kept(@Nullable String text) {
        return text == null || text.isBlank() ? null : text.strip();
    }

    private static void requireWeeks(String field, int weeks) {
        if (weeks < 0 || weeks > MOST_WEEKS) {
            throw Refused.invalid(
                    field, "expected 0 to %d weeks, found %d".formatted(MOST_WEEKS, weeks));
        }
    }
}
