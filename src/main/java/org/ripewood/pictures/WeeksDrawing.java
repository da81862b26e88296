package org.ripewood.pictures;

import java.time.LocalDate;
import java.util.List;

/**
 * How many trees could do each technique, week by week.
 *
 * @param of whose trees, such as a course
 * @param from first day of the first week
 * @param trees how many there are
 */
public record WeeksDrawing(String of, LocalDate from, int trees, List<Row> rows) {

    /** A technique; all rows have as many weeks. */
    public record Row(String title, List<Week> weeks) {
        public Row {
            weeks = List.copyOf(weeks);
        }

        int most() {
            return weeks.stream().mapToInt(Week::likely).max().orElse(0);
        }
    }

    /** Trees that could in one case of ten, in every second, in nine of ten. */
    public record Week(int possible, int likely, int sure) {
        public Week {
            if (!(sure >= 0 && likely >= sure && possible >= likely)) {
                throw new IllegalArgumentException(
                        "no more trees surely than likely, no more likely than possibly,"
                                + " found %d, %d, %d".formatted(sure, likely, possible));
            }
        }
    }

    /**
     * @throws IllegalArgumentException for trees below 0, and when rows differ in their weeks
     */
    public WeeksDrawing {
        rows = List.copyOf(rows);
        if (trees < 0 || rows.stream().map(row -> row.weeks().size()).distinct().count() > 1) {
            throw new IllegalArgumentException(
                    "0 trees or more and rows of as many weeks are drawn, found %d trees"
                            .formatted(trees));
        }
    }

    int weeks() {
        return rows.isEmpty() ? 0 : rows.get(0).weeks().size();
    }
}
