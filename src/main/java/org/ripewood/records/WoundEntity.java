package org.ripewood.records;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Source;

@Entity
@Table(name = "wound")
class WoundEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "wound_seq")
    @SequenceGenerator(name = "wound_seq", sequenceName = "wound_seq", allocationSize = 50)
    Long id;

    long treeId;
    String place;
    LocalDate madeOn;
    double firstWidthMm;
    double firstLengthMm;
    @Nullable Double heightMm;
    @Nullable Double bearingDegrees;
    boolean deadwoodByDesign;
    String source;
    long byId;
    Instant recordedAt;

    Wound toWound(List<Observation> readings) {
        return new Wound(
                id,
                treeId,
                place,
                madeOn,
                firstWidthMm,
                firstLengthMm,
                heightMm,
                bearingDegrees,
                deadwoodByDesign,
                byId,
                Source.valueOf(source),
                readings);
    }
}
