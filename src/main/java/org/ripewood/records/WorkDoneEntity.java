package org.ripewood.records;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Work;

@Entity
@Table(name = "work_done")
class WorkDoneEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "work_done_seq")
    @SequenceGenerator(name = "work_done_seq", sequenceName = "work_done_seq", allocationSize = 50)
    Long id;

    long treeId;
    String technique;
    LocalDate doneOn;
    double stress;
    int recoveryDays;
    double foliageShare;
    double rootShare;
    @Nullable String clock;
    long byId;
    Instant recordedAt;
    @Nullable String note;

    WorkDone toWorkDone() {
        var work = new Work(technique, doneOn, stress, recoveryDays, foliageShare, rootShare);
        return new WorkDone(id, treeId, work, clock, byId, note);
    }
}
