package org.ripewood.archive;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** A file's own numbers for rows: 1 for the first row of a table, 2 for the second, and so on. */
final class LocalNumbers {

    private final long[] ids;
    private final int[] numbers;

    private LocalNumbers(long[] ids, int[] numbers) {
        this.ids = ids;
        this.numbers = numbers;
    }

    /**
     * Numbers for rows as they stand in a file.
     *
     * @param inOrder their ids in the database; twelve bytes a row, as a school has many
     */
    static LocalNumbers of(long[] inOrder) {
        boolean ascending =
                IntStream.range(1, inOrder.length).allMatch(at -> inOrder[at - 1] < inOrder[at]);
        if (ascending) {
            return new LocalNumbers(
                    inOrder.clone(), IntStream.rangeClosed(1, inOrder.length).toArray());
        }
        var places =
                IntStream.range(0, inOrder.length)
                        .boxed()
                        .sorted(Comparator.comparingLong(at -> inOrder[at]))
                        .mapToInt(Integer::intValue)
                        .toArray();
        return new LocalNumbers(
                Arrays.stream(places).mapToLong(at -> inOrder[at]).toArray(),
                Arrays.stream(places).map(at -> at + 1).toArray());
    }

    /** The number of a row; 0 when the file has no such row. */
    int of(long id) {
        int at = Arrays.binarySearch(ids, id);
        return at < 0 ? 0 : numbers[at];
    }
}
