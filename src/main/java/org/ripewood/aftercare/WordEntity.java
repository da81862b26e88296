package org.ripewood.aftercare;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What somebody said of a task; never overwritten, the latest of a task stands. */
@Entity
@Table(name = "aftercare_word")
class WordEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "aftercare_word_seq")
    @SequenceGenerator(
            name = "aftercare_word_seq",
            sequenceName = "aftercare_word_seq",
            allocationSize = 50)
    @Nullable Long id;

    long treeId;
    long workId;
    String task;
    int times;

    /** Counts the words on one task, so that of two who speak at once the second is refused. */
    int number;

    @Enumerated(EnumType.STRING)
    Saying what;

    LocalDate onDay;
    @Nullable String note;
    long byId;
    Instant recordedAt;

    TaskKey key() {
        return new TaskKey(workId, task, times);
    }

    boolean says(Saying other, LocalDate on, @Nullable String otherNote) {
        return what == other && onDay.equals(on) && Objects.equals(note, otherNote);
    }
}
