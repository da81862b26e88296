package org.ripewood.classday;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.bench.Span;
import org.ripewood.course.Content;
import org.ripewood.course.Lesson;
import org.ripewood.materials.StockSnapshot;
import org.ripewood.sessions.Session;

/**
 * A class day as it is known: who comes, what their trees do, when there are breaks.
 *
 * @param choices of every tree that comes, in the order of the benches
 * @param lessonAt when all are taught together; several spans where a break falls into it
 * @param stock of the school on that day
 * @param takes what work takes of it
 */
record DayRead(
        Session session,
        String courseName,
        Content content,
        @Nullable Lesson lesson,
        List<TreeChoice> choices,
        Map<Long, String> names,
        List<Span> breaks,
        List<Span> lessonAt,
        StockSnapshot stock,
        DayTakes takes) {

    /** The same with what was chosen. */
    DayRead with(List<TreeChoice> chosen) {
        return new DayRead(
                session,
                courseName,
                content,
                lesson,
                chosen,
                names,
                breaks,
                lessonAt,
                stock,
                takes);
    }

    /** Tools of which the school counts how many it has, by name in small letters. */
    Map<String, Integer> toolCounts() {
        var counts = new HashMap<String, Integer>();
        stock.tools().forEach((name, count) -> counts.merge(lower(name), count, Integer::sum));
        return counts;
    }

    private static String lower(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    /** The chosen work of all trees. */
    List<DayJobs.Chosen> chosen() {
        var chosen = new ArrayList<DayJobs.Chosen>();
        for (var choice : choices) {
            for (var taken : choice.chosen()) {
                chosen.add(
                        new DayJobs.Chosen(
                                choice.enrolment().personId(),
                                choice.enrolment().treeId(),
                                content.technique(taken.option().technique()),
                                taken.usefulness()));
            }
        }
        return chosen;
    }

    /** The work of a plan in force: what is done of it meanwhile is no option any more. */
    List<DayJobs.Chosen> chosenIn(DayTimetable plan) {
        var persons =
                session.enrolments().stream()
                        .collect(
                                Collectors.toMap(
                                        Session.Enrolment::treeId, Session.Enrolment::personId));
        var usefulness = new HashMap<String, Double>();
        chosen().forEach(
                        one ->
                                usefulness.put(
                                        DayJobs.id(one.treeId(), one.technique().code()),
                                        one.usefulness()));
        var seen = new HashSet<String>();
        var chosen = new ArrayList<DayJobs.Chosen>();
        plan.slots()
                .forEach(
                        slot ->
                                add(
                                        slot.treeId(),
                                        slot.technique(),
                                        persons,
                                        usefulness,
                                        seen,
                                        chosen));
        plan.leftOut()
                .forEach(
                        left ->
                                add(
                                        left.treeId(),
                                        left.technique(),
                                        persons,
                                        usefulness,
                                        seen,
                                        chosen));
        return chosen;
    }

    private void add(
            long treeId,
            String technique,
            Map<Long, Long> persons,
            Map<String, Double> usefulness,
            HashSet<String> seen,
            List<DayJobs.Chosen> chosen) {
        var id = DayJobs.id(treeId, technique);
        var person = persons.get(treeId);
        var known = content.techniques().get(technique);
        if (person != null && known != null && seen.add(id)) {
            chosen.add(
                    new DayJobs.Chosen(
                            person, treeId, known, usefulness.getOrDefault(id, DONE_MEANWHILE)));
        }
    }

    /** Work that is an option no more is mostly done; it is kept before what has not begun. */
    private static final double DONE_MEANWHILE = 900;
}
