package org.ripewood.web.courses;

import io.quarkus.qute.TemplateExtension;
import java.util.List;
import org.ripewood.boards.Board;
import org.ripewood.web.kit.HeadlineCount;

/** A course's board as its counts are shown. */
@TemplateExtension
final class BoardFormat {

    private BoardFormat() {}

    /** Headlines that lead any tree, most urgent first. */
    static List<HeadlineCount> counts(Board board) {
        return HeadlineCount.of(board.byHeadline());
    }

    static String word(Board.Sight sight) {
        return switch (sight) {
            case SESSION -> "at a class";
            case REPORT -> "by a report";
            case OBSERVATION -> "by an observation of theirs";
            case JUDGEMENT -> "at a judgement";
        };
    }

    static int total(Board board) {
        return board.byHeadline().values().stream().mapToInt(Integer::intValue).sum();
    }
}
