package org.ripewood.classday;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Technique;

/**
 * What has no place of its own on the timetable: things to look at, work of less than ten minutes,
 * an instructor's look in passing.
 */
final class InBetweens {

    private InBetweens() {}

    static List<SessionPlan.InBetween> of(List<SessionPlan.Row> rows) {
        var list = new ArrayList<SessionPlan.InBetween>();
        for (var row : rows) {
            row.measureFirst().forEach(look -> list.add(told(row, beforeColon(look), null)));
            var technique = row.technique();
            if (technique != null) {
                add(list, row, technique);
            }
        }
        return list;
    }

    private static void add(
            List<SessionPlan.InBetween> list, SessionPlan.Row row, Technique technique) {
        if (DayJobs.isSmall(technique)) {
            list.add(told(row, technique.title(), Math.max(1, technique.studentMinutes())));
        } else if (DayJobs.passingMinutes(technique) > 0) {
            list.add(
                    new SessionPlan.InBetween(
                            row.student(),
                            row.treeId(),
                            row.tree(),
                            technique.title(),
                            DayJobs.passingMinutes(technique),
                            true));
        }
    }

    private static SessionPlan.InBetween told(
            SessionPlan.Row row, String what, @Nullable Integer minutes) {
        return new SessionPlan.InBetween(
                row.student(), row.treeId(), row.tree(), what, minutes, false);
    }

    /** What is looked at, without how. */
    private static String beforeColon(String look) {
        int colon = look.indexOf(':');
        return "Look: " + (colon < 0 ? look : look.substring(0, colon));
    }
}
