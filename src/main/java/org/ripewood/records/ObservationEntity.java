package org.ripewood.records;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;

@Entity
@Table(name = "observation")
class ObservationEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "observation_seq")
    @SequenceGenerator(
            name = "observation_seq",
            sequenceName = "observation_seq",
            allocationSize = 50)
    Long id;

    long treeId;
    String fact;
    @Nullable Double numberValue;
    @Nullable Boolean flagValue;
    @Nullable String wordValue;
    LocalDate observedOn;
    String source;
    long byId;
    Instant recordedAt;
    @Nullable String note;
    @Nullable Long woundId;
    @Nullable Long branchId;

    @Column(name = "at_height_mm")
    @Nullable Double heightMm;

    @Nullable Long supersededBy;

    void setValue(Value value) {
        numberValue = value instanceof Value.Number number ? number.amount() : null;
        flagValue = value instanceof Value.Flag flag ? flag.set() : null;
        wordValue = value instanceof Value.Word word ? word.word() : null;
    }

    private Value value() {
        if (numberValue != null) {
            return Value.of(numberValue.doubleValue());
        }
        if (flagValue != null) {
            return Value.of(flagValue.booleanValue());
        }
        if (wordValue != null) {
            return Value.of(wordValue);
        }
        throw new IllegalStateException("entry %d has no value".formatted(id));
    }

    Observation toObservation() {
        return new Observation(
                id,
                treeId,
                Fact.find(fact).orElseThrow(() -> new IllegalStateException("no fact " + fact)),
                value(),
                observedOn,
                Source.valueOf(source),
                byId,
                recordedAt,
                note,
                woundId,
                branchId,
                heightMm,
                supersededBy);
    }
}
