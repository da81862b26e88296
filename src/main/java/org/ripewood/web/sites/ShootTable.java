package org.ripewood.web.sites;

import java.util.ArrayList;
import java.util.List;
import org.ripewood.core.growth.ReferenceShoots;
import org.ripewood.core.growth.SchoolLevel;
import org.ripewood.core.growth.ShootLengths;

/**
 * What a species' shoots are held against, content and school line by line.
 *
 * @param wanted whether the school's record counts
 */
record ShootTable(List<Line> lines, boolean wanted) {

    /**
     * One line.
     *
     * @param weak millimetres; the others likewise
     * @param rests what it rests on, in words
     */
    record Line(String where, long weak, long healthy, long strong, String rests) {}

    static ShootTable of(ReferenceShoots shoots, String source, boolean wanted) {
        var lines = new ArrayList<Line>();
        for (boolean ground : new boolean[] {false, true}) {
            var where = ground ? "In the ground" : "In a pot";
            lines.add(line(where + ", content", shoots.content(), ground, source));
            if (wanted) {
                lines.add(
                        line(
                                where + ", in force",
                                shoots.lengths(ground),
                                ground,
                                rests(shoots.level(ground))));
            }
        }
        return new ShootTable(List.copyOf(lines), wanted);
    }

    private static Line line(String where, ShootLengths told, boolean ground, String rests) {
        return new Line(
                where,
                Math.round(told.weak()),
                Math.round(told.healthy(ground)),
                Math.round(told.strong(ground)),
                rests);
    }

    private static String rests(SchoolLevel level) {
        if (!level.isEnough()) {
            return "the content alone: too few of the school's trees were measured";
        }
        return "%s, %d trees of the school and %d %s"
                .formatted(
                        moved(level.factor()),
                        level.trees(),
                        level.seasons(),
                        level.seasons() == 1 ? "season" : "seasons");
    }

    private static String moved(double factor) {
        long percent = Math.round(100 * (factor - 1));
        return percent == 0
                ? "as the content says"
                : "%d %% %s".formatted(Math.abs(percent), percent > 0 ? "longer" : "shorter");
    }
}
