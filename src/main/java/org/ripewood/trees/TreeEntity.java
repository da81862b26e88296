package org.ripewood.trees;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "tree")
class TreeEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "tree_seq")
    @SequenceGenerator(name = "tree_seq", sequenceName = "tree_seq", allocationSize = 50)
    Long id;

    @Version long version;
    String label;
    String species;
    long keeperId;
    long siteId;
    LocalDate cameOn;
    @Nullable String origin;
    @Nullable String note;
    long byId;
    Instant recordedAt;

    /** Null while it is at the school. */
    @Nullable LocalDate leftOn;

    Tree toTree() {
        return new Tree(
                id, version, label, species, keeperId, siteId, cameOn, origin, note, leftOn);
    }
}
