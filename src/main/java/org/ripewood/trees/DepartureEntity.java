package org.ripewood.trees;

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
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** That a tree left the school; whether it is back is told by the tree itself. */
@Entity
@Table(name = "tree_departure")
class DepartureEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "tree_departure_seq")
    @SequenceGenerator(
            name = "tree_departure_seq",
            sequenceName = "tree_departure_seq",
            allocationSize = 50)
    Long id;

    long treeId;
    LocalDate leftOn;

    @Enumerated(EnumType.STRING)
    Departure.How how;

    @Nullable String note;
    long byId;
    Instant recordedAt;

    /** Without the words of somebody who is hidden. */
    Departure toDeparture(Set<Long> hidden) {
        var words = FormerKeepers.words(hidden, byId, note);
        return new Departure(id, treeId, leftOn, how, words, byId, recordedAt);
    }
}
