package org.ripewood.classday;

import static java.util.Objects.requireNonNull;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embeddable;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.bench.Timetable;
import org.ripewood.core.bench.WorkPhase;

/** A timetable as it was laid out; the highest revision is in force, none is changed. */
@Entity
@Table(name = "day_timetable")
class TimetableEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "day_timetable_seq")
    @SequenceGenerator(
            name = "day_timetable_seq",
            sequenceName = "day_timetable_seq",
            allocationSize = 50)
    @Nullable Long id;

    long sessionId;
    int revision;
    int fromMinute;

    @Enumerated(EnumType.STRING)
    Timetable.Found found;

    int finishMinute;
    int waitingMinutes;
    long cost;
    long leastCost;
    int jobs;
    int mostJobs;
    long madeBy;
    Instant madeAt;

    @ElementCollection
    @CollectionTable(name = "day_slot", joinColumns = @JoinColumn(name = "timetable_id"))
    @OrderColumn(name = "position")
    List<SlotRow> slots = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "day_left_out", joinColumns = @JoinColumn(name = "timetable_id"))
    @OrderColumn(name = "position")
    List<LeftOutRow> leftOut = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "day_arrival", joinColumns = @JoinColumn(name = "timetable_id"))
    @OrderColumn(name = "position")
    List<ArrivalRow> arrivals = new ArrayList<>();

    /** A phase in its place. */
    @Embeddable
    static class SlotRow {
        long treeId;
        String technique;
        int phase;

        @Enumerated(EnumType.STRING)
        WorkPhase.Kind kind;

        boolean cuts;
        @Nullable Long instructorId;
        int fromMinute;
        int toMinute;
    }

    /** Work without a place. */
    @Embeddable
    static class LeftOutRow {
        long treeId;
        String technique;
        String because;
    }

    /** A student who came late, or, without a minute, is not there. */
    @Embeddable
    static class ArrivalRow {
        long personId;
        @Nullable Integer atMinute;
    }

    DayTimetable told() {
        return new DayTimetable(
                requireNonNull(id),
                sessionId,
                revision,
                fromMinute,
                slots.stream()
                        .map(
                                slot ->
                                        new DayTimetable.Slot(
                                                slot.treeId,
                                                slot.technique,
                                                slot.phase,
                                                slot.kind,
                                                slot.cuts,
                                                slot.instructorId,
                                                slot.fromMinute,
                                                slot.toMinute))
                        .toList(),
                leftOut.stream()
                        .map(
                                left ->
                                        new DayTimetable.LeftOut(
                                                left.treeId, left.technique, left.because))
                        .toList(),
                arrivals.stream()
                        .map(row -> new DayTimetable.Arrival(row.personId, row.atMinute))
                        .toList(),
                finishMinute,
                waitingMinutes,
                new Timetable.Worth(jobs, mostJobs, cost, leastCost, found),
                madeBy,
                madeAt);
    }
}
