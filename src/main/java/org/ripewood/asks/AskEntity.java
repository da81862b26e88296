package org.ripewood.asks;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** Something asked. */
@Entity
@Table(name = "ask")
class AskEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "ask_seq")
    @SequenceGenerator(name = "ask_seq", sequenceName = "ask_seq", allocationSize = 50)
    @Nullable Long id;

    long treeId;
    String technique;

    @Enumerated(EnumType.STRING)
    AskKind kind;

    @Nullable String words;
    long byId;
    Instant askedAt;

    /** When it was answered or taken back. */
    @Nullable Instant closedAt;

    /** Tree, technique and kind while it is open, null afterwards; unique. */
    @Nullable String openFor;

    void close(Instant at) {
        closedAt = at;
        openFor = null;
    }

    static String openFor(long treeId, String technique, AskKind kind) {
        return treeId + "/" + technique + "/" + kind;
    }
}
