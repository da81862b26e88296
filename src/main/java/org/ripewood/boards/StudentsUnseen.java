package org.ripewood.boards;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.assess.Assessments;
import org.ripewood.people.Person;
import org.ripewood.records.RecordsUnchecked;
import org.ripewood.sessions.Sessions;
import org.ripewood.steps.ReportBook;

/**
 * Students who came to no session, reported nothing, observed nothing and were not judged for long,
 * in a number of queries that does not depend on how many they are.
 */
@ApplicationScoped
class StudentsUnseen {

    private final Sessions sessions;
    private final RecordsUnchecked recordsUnchecked;
    private final Assessments assessments;
    private final ReportBook reports;

    StudentsUnseen(
            Sessions sessions,
            RecordsUnchecked recordsUnchecked,
            Assessments assessments,
            ReportBook reports) {
        this.sessions = sessions;
        this.recordsUnchecked = recordsUnchecked;
        this.assessments = assessments;
        this.reports = reports;
    }

    /**
     * Those not seen for more than so many weeks, longest first.
     *
     * @param since when each joined: from then somebody never seen is reckoned
     */
    List<Board.Unseen> of(
            Collection<Person> students,
            Collection<Long> treeIds,
            Map<Long, LocalDate> since,
            LocalDate on,
            int weeks) {
        if (students.isEmpty()) {
            return List.of();
        }
        var ids = students.stream().map(Person::id).toList();
        var sights = new EnumMap<Board.Sight, Map<Long, LocalDate>>(Board.Sight.class);
        sights.put(Board.Sight.SESSION, sessions.lastAttended(ids, on));
        sights.put(Board.Sight.REPORT, reports.lastBy(ids, treeIds, on));
        sights.put(Board.Sight.OBSERVATION, recordsUnchecked.lastObservedBy(ids, treeIds, on));
        sights.put(Board.Sight.JUDGEMENT, assessments.lastJudged(ids, on));
        return students.stream()
                .map(student -> unseen(student, sights, since, on))
                .filter(unseen -> reckonedFrom(unseen, since).isBefore(on.minusWeeks(weeks)))
                .sorted(
                        Comparator.comparing((Board.Unseen one) -> reckonedFrom(one, since))
                                .thenComparing(Board.Unseen::name)
                                .thenComparing(Board.Unseen::personId))
                .toList();
    }

    private static LocalDate reckonedFrom(Board.Unseen unseen, Map<Long, LocalDate> since) {
        var last = unseen.lastOn();
        return last == null ? joined(unseen.personId(), since) : last;
    }

    /** Who joined on no known day is told at once. */
    private static LocalDate joined(long personId, Map<Long, LocalDate> since) {
        return since.getOrDefault(personId, LocalDate.EPOCH);
    }

    private static Board.Unseen unseen(
            Person student,
            Map<Board.Sight, Map<Long, LocalDate>> sights,
            Map<Long, LocalDate> since,
            LocalDate on) {
        @Nullable LocalDate last = null;
        Board.@Nullable Sight by = null;
        for (var entry : sights.entrySet()) {
            var day = entry.getValue().get(student.id());
            if (day != null && (last == null || day.isAfter(last))) {
                last = day;
                by = entry.getKey();
            }
        }
        var from = last == null ? joined(student.id(), since) : last;
        return new Board.Unseen(
                student.id(), student.name(), last, by, ChronoUnit.WEEKS.between(from, on));
    }
}
