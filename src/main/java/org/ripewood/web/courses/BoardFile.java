package org.ripewood.web.courses;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.boards.Board;
import org.ripewood.platform.CsvText;
import org.ripewood.web.kit.Mark;

/** The rows of a board as a file for a spreadsheet. */
final class BoardFile {

    private static final List<String> HEADINGS =
            List.of(
                    "Tree",
                    "Species",
                    "Student",
                    "Stage",
                    "State",
                    "Technique",
                    "What it is about",
                    "Opens");

    private BoardFile() {}

    static String of(Board board) {
        return CsvText.of(HEADINGS, board.rows().items().stream().map(BoardFile::cells).toList());
    }

    private static List<@Nullable Object> cells(Board.Row row) {
        return Arrays.asList(
                row.label(),
                row.species(),
                row.keeper(),
                row.stage(),
                Mark.of(row.headline()).word(),
                row.techniqueTitle(),
                row.sentence(),
                row.opening());
    }
}
