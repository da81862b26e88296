package org.ripewood.readiness;

import java.util.Comparator;

/** Orders of rows; trees that are alike stand by name. */
final class ReadinessOrder {

    private static final Comparator<TreeRead> BY_NAME =
            Comparator.comparing((TreeRead tree) -> tree.day().tree().label())
                    .thenComparing(tree -> tree.day().tree().id());

    private static final int LAST = 9;

    private ReadinessOrder() {}

    static Comparator<TreeRead> of(ReadinessAsked.Sort sort) {
        return switch (sort) {
            case HELD -> Comparator.comparingInt(ReadinessOrder::rank).thenComparing(BY_NAME);
            case SOONEST ->
                    Comparator.<TreeRead, Boolean>comparing(tree -> !tree.heldFromStyling())
                            .thenComparing(
                                    TreeRead::freeOn,
                                    Comparator.nullsLast(Comparator.naturalOrder()))
                            .thenComparing(BY_NAME);
            case NAME -> BY_NAME;
        };
    }

    private static int rank(TreeRead tree) {
        var styling = tree.styling();
        if (styling == null) {
            return LAST;
        }
        return switch (styling.verdict()) {
            case HELD -> tree.heldByTheTree() ? 0 : 1;
            case MEASURE -> 2;
            case LESSON -> 3;
            case SEASON -> 4;
            case READY -> 5;
            case DONE, NOT_NEEDED -> 6;
        };
    }
}
