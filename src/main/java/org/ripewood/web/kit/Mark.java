package org.ripewood.web.kit;

import org.ripewood.boards.Board.Headline;
import org.ripewood.core.progress.Verdict;
import org.ripewood.core.season.CareState;
import org.ripewood.steps.StepState;

/**
 * A state as it is shown: word, shape and tone together.
 *
 * @param tone class in the style sheet: go, held, season or unknown
 */
public record Mark(String word, String tone, String path, boolean filled, String dashes) {

    private static Mark of(String word, String tone, Shape shape) {
        return new Mark(word, tone, shape.path, shape.filled, shape.dashes);
    }

    public static Mark of(Verdict verdict) {
        return switch (verdict) {
            case READY -> of("Ready", "go", Shape.DISC);
            case HELD -> of("Held", "held", Shape.BAR);
            case MEASURE -> of("To measure", "unknown", Shape.BROKEN);
            case SEASON -> of("Out of season", "season", Shape.HALF);
            case LESSON -> of("To learn first", "season", Shape.TRIANGLE);
            case DONE -> of("Done", "go", Shape.CHECK);
            case NOT_NEEDED -> of("Not needed", "unknown", Shape.DASH);
        };
    }

    public static Mark of(Headline headline) {
        return switch (headline) {
            case SIGN_OFF -> of("Sign off", "go", Shape.DIAMOND);
            case UNDER_WAY -> of("Under way", "go", Shape.TAG);
            case READY -> of(Verdict.READY);
            case MEASURE -> of(Verdict.MEASURE);
            case LESSON -> of(Verdict.LESSON);
            case SEASON -> of(Verdict.SEASON);
            case HELD -> of(Verdict.HELD);
        };
    }

    public static Mark of(StepState state) {
        return switch (state) {
            case ASSIGNED -> of("To do", "go", Shape.TAG);
            case REPORTED -> of("Waits for sign-off", "season", Shape.DIAMOND);
            case SENT_BACK -> of("Sent back", "held", Shape.BACK);
            case SIGNED_OFF -> of("Signed off", "go", Shape.CHECK);
            case WITHDRAWN -> of("Withdrawn", "unknown", Shape.DASH);
            case FOUND_DONE -> of("Found done", "go", Shape.CHECK);
        };
    }

    public static Mark of(CareState state) {
        return switch (state) {
            case LATE -> of("Late", "held", Shape.BAR);
            case DUE -> of("Due", "go", Shape.TAG);
            case WAITING -> of("To come", "season", Shape.HALF);
            case DONE -> of("Done", "go", Shape.CHECK);
            case OVER -> of("Over", "unknown", Shape.DASH);
        };
    }

    /** The same shape and tone with another word. */
    public Mark saying(String other) {
        return new Mark(other, tone, path, filled, dashes);
    }
}
