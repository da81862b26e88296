package org.ripewood.records;

import java.time.LocalDate;
import java.util.List;
import org.ripewood.core.growth.AgedVigour;
import org.ripewood.core.growth.ShootGrade;
import org.ripewood.core.growth.VigourGrade;
import org.ripewood.core.growth.VigourIndex;
import org.ripewood.core.progress.Fact;

/** What was measured of a tree's strength, as grades; shoots by how they compare with before. */
final class StrengthSeen {

    static final List<Fact> FACTS =
            List.of(
                    Fact.DIEBACK_PERCENT,
                    Fact.FOLIAGE_LOSS_PERCENT,
                    Fact.LEAF_COLOUR_GRADE,
                    Fact.SHOOT_EXTENSION_RATIO);

    private StrengthSeen() {}

    /**
     * The grade of a value.
     *
     * @param fact one of {@link #FACTS}
     */
    static AgedVigour.Seen of(Fact fact, double amount, LocalDate on) {
        return switch (fact) {
            case DIEBACK_PERCENT -> seen(VigourGrade.DIEBACK, VigourIndex.diebackGrade(amount), on);
            case FOLIAGE_LOSS_PERCENT ->
                    seen(VigourGrade.FOLIAGE, VigourIndex.lossGrade(amount), on);
            case LEAF_COLOUR_GRADE -> seen(VigourGrade.COLOUR, amount, on);
            case SHOOT_EXTENSION_RATIO ->
                    seen(
                            VigourGrade.SHOOT,
                            new ShootGrade(null, amount, false, null).value().orElseThrow(),
                            on);
            default -> throw new IllegalArgumentException("tells no strength: " + fact);
        };
    }

    private static AgedVigour.Seen seen(VigourGrade of, double grade, LocalDate on) {
        return new AgedVigour.Seen(of, grade, on);
    }
}
