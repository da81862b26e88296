package org.ripewood.lists;

import java.util.List;

/**
 * What became of a list.
 *
 * @param rows how many it has
 * @param entered how many were entered; 0 after a dry run
 * @param good rows nothing is wrong with, each in words
 * @param faults all that is wrong, by line
 */
public record ListOutcome(
        ListKind kind,
        Choice choice,
        int rows,
        int entered,
        List<GoodRow> good,
        List<ListFault> faults) {

    /** A row nothing is wrong with. */
    public record GoodRow(int line, String words) {}

    public ListOutcome {
        good = List.copyOf(good);
        faults = List.copyOf(faults);
    }
}
