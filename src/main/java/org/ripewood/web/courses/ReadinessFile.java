package org.ripewood.web.courses;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.CsvText;
import org.ripewood.readiness.ReadinessSheet;
import org.ripewood.readiness.ReadinessSheet.Cell;

/** The rows of a readiness sheet as a file for a spreadsheet; one column a group of work. */
final class ReadinessFile {

    private ReadinessFile() {}

    static String of(ReadinessSheet sheet) {
        var headings =
                new ArrayList<>(
                        List.of(
                                "Tree",
                                "Species",
                                "Student",
                                "Stage",
                                "Next styling",
                                "State",
                                "Free on"));
        sheet.works().forEach(work -> headings.add(work.title()));
        return CsvText.of(
                headings, sheet.rows().items().stream().map(ReadinessFile::cells).toList());
    }

    private static List<@Nullable Object> cells(ReadinessSheet.Row row) {
        var next = row.next();
        var cells = new ArrayList<@Nullable Object>();
        cells.add(row.label());
        cells.add(row.species());
        cells.add(row.keeper());
        cells.add(row.stage().title());
        cells.add(next == null ? null : next.title());
        cells.add(next == null ? null : ReadinessFormat.word(next.state()));
        cells.add(row.freeOn());
        row.cells().forEach(cell -> cells.add(told(cell)));
        return cells;
    }

    /** {@code "held: wound 9.5 of 8 mm; April 2027"}. */
    private static String told(Cell cell) {
        var rest =
                Stream.of(words(cell), cell.lifts())
                        .filter(Objects::nonNull)
                        .filter(text -> !text.isBlank())
                        .collect(Collectors.joining("; "));
        var word = ReadinessFormat.word(cell.state());
        return rest.isEmpty() ? word : word + ": " + rest;
    }

    private static String words(Cell cell) {
        return Stream.of(cell.words(), cell.number())
                .filter(Objects::nonNull)
                .collect(Collectors.joining(" "));
    }
}
