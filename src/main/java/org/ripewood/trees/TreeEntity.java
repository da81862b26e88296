package org.ripewood.trees;

import jakarta.persistence.Column;
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

    /** As was said at its entry; what is said later stands in rows of its own. */
    @Column(updatable = false)
    @Nullable String origin;

    @Column(updatable = false)
    @Nullable String note;

    /** How often something else was said, which raises the version. */
    long wordsRevision;

    long byId;
    Instant recordedAt;

    /** Null while it is at the school. */
    @Nullable LocalDate leftOn;

    /** Without words, for those of whom nobody knows whether they may read them. */
    Tree toTree() {
        return toTree(null, null);
    }

    Tree toTree(@Nullable String toldOrigin, @Nullable String toldNote) {
        return new Tree(
                id,
                version,
                label,
                species,
                keeperId,
                siteId,
                cameOn,
                toldOrigin,
                toldNote,
                leftOn);
    }
}
