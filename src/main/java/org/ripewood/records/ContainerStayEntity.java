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

@Entity
@Table(name = "container_stay")
class ContainerStayEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "container_stay_seq")
    @SequenceGenerator(
            name = "container_stay_seq",
            sequenceName = "container_stay_seq",
            allocationSize = 50)
    Long id;

    long treeId;
    String kind;
    @Nullable String description;
    @Nullable Double litres;
    LocalDate since;
    long byId;
    Instant recordedAt;

    ContainerStay toStay() {
        return new ContainerStay(id, treeId, kind, description, litres, since);
    }
}
