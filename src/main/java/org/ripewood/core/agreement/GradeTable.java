package org.ripewood.core.agreement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * How often two judges gave each pair of grades to the same thing.
 *
 * @param counts square: rows the first judge's grade from 0, columns the second's
 */
public record GradeTable(List<List<Long>> counts) {

    /** No school counts further, and sums of counts up to here stay exact. */
    private static final long MOST = 1_000_000_000L;

    /**
     * @throws IllegalArgumentException without a grade, when it is not square, or a count is not 0
     *     to 1e9
     */
    public GradeTable {
        counts = counts.stream().map(List::copyOf).toList();
        if (counts.isEmpty()) {
            throw new IllegalArgumentException("expected at least one grade, found none");
        }
        for (var row : counts) {
            if (row.size() != counts.size()) {
                throw new IllegalArgumentException(
                        "expected %d counts in each row, found %d"
                                .formatted(counts.size(), row.size()));
            }
            for (long count : row) {
                if (!(count >= 0 && count <= MOST)) {
                    throw new IllegalArgumentException(
                            "a count lies between 0 and %d, found %d".formatted(MOST, count));
                }
            }
        }
    }

    /**
     * The table of two lists of grades.
     *
     * @param grades how many grades there are; those given lie from 0 to one less
     * @param one the first judge's, paired with the second's by their place
     * @throws IllegalArgumentException when the lists differ in length or a grade does not exist
     */
    public static GradeTable ofLists(int grades, List<Integer> one, List<Integer> other) {
        if (one.size() != other.size()) {
            throw new IllegalArgumentException(
                    "expected lists of one length, found %d and %d"
                            .formatted(one.size(), other.size()));
        }
        if (grades < 1) {
            throw new IllegalArgumentException("expected at least one grade, found " + grades);
        }
        var counts = new long[grades][grades];
        for (int i = 0; i < one.size(); i++) {
            counts[required(one.get(i), grades)][required(other.get(i), grades)]++;
        }
        return of(counts);
    }

    /**
     * The table of what both judged; what only one of them judged is left out.
     *
     * @param <T> what was judged
     * @param grades how many grades there are; those given lie from 0 to one less
     * @throws IllegalArgumentException when a grade does not exist
     */
    public static <T> GradeTable ofJudgements(
            int grades, Map<T, Integer> one, Map<T, Integer> other) {
        var ones = new ArrayList<Integer>();
        var others = new ArrayList<Integer>();
        one.forEach(
                (judged, grade) -> {
                    var second = other.get(judged);
                    if (second != null) {
                        ones.add(grade);
                        others.add(second);
                    }
                });
        return ofLists(grades, ones, others);
    }

    /** The table of plain counts, rows the first judge's grades. */
    public static GradeTable of(long[][] counts) {
        return new GradeTable(
                Arrays.stream(counts).map(row -> Arrays.stream(row).boxed().toList()).toList());
    }

    private static int required(int grade, int grades) {
        if (grade < 0 || grade >= grades) {
            throw new IllegalArgumentException(
                    "a grade lies between 0 and %d, found %d".formatted(grades - 1, grade));
        }
        return grade;
    }

    public int grades() {
        return counts.size();
    }

    /** How many things both judged. */
    public long pairs() {
        return counts.stream().flatMap(List::stream).mapToLong(Long::longValue).sum();
    }

    /** Share of the pairs with these grades; only where there are pairs. */
    double[][] shares() {
        double pairs = pairs();
        return counts.stream()
                .map(row -> row.stream().mapToDouble(count -> count / pairs).toArray())
                .toArray(double[][]::new);
    }
}
