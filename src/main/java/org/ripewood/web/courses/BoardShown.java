package org.ripewood.web.courses;

import io.quarkus.qute.TemplateExtension;
import java.util.Arrays;
import java.util.List;
import org.ripewood.boards.Board;
import org.ripewood.boards.Board.Headline;
import org.ripewood.web.kit.Mark;

/** A course's board as its counts are shown. */
@TemplateExtension
final class BoardShown {

    /** A headline and how many trees it leads. */
    public record Count(Headline headline, int trees) {
        public Mark mark() {
            return Mark.of(headline);
        }
    }

    private BoardShown() {}

    /** Headlines that lead any tree, most urgent first. */
    static List<Count> counts(Board board) {
        return Arrays.stream(Headline.values())
                .map(headline -> new Count(headline, board.byHeadline().getOrDefault(headline, 0)))
                .filter(count -> count.trees() > 0)
                .toList();
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
