package org.ripewood.assess;

import static java.util.Objects.requireNonNull;

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

/** Edited while a draft; once signed only the marks of what became of it are added. */
@Entity
@Table(name = "rubric_judgement")
class JudgementEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "rubric_judgement_seq")
    @SequenceGenerator(
            name = "rubric_judgement_seq",
            sequenceName = "rubric_judgement_seq",
            allocationSize = 50)
    @Nullable Long id;

    @Version long version;
    String rubric;
    @Nullable Long treeId;
    @Nullable Long studentId;
    long byId;

    // level is a word of SQL's own
    @Column(name = "level_no")
    @Nullable Integer level;

    LocalDate judgedOn;
    @Nullable String note;
    Instant keptAt;
    @Nullable String contentRevision;
    @Nullable Instant signedAt;
    @Nullable Instant openedAt;
    boolean secondWanted;
    boolean blind;
    @Nullable Long corrects;
    @Nullable Long supersededBy;
    @Nullable Long observationId;

    /** Judge, rubric and subject while a draft, null afterwards; unique in the database. */
    @Nullable String draftOf;

    long id() {
        return requireNonNull(id);
    }

    Judged of() {
        return treeId == null ? Judged.student(requireNonNull(studentId)) : Judged.tree(treeId);
    }

    int levelGiven() {
        return requireNonNull(level);
    }

    Judgement told() {
        return new Judgement(
                id(),
                version,
                rubric,
                of(),
                byId,
                level,
                judgedOn,
                note,
                keptAt,
                signedAt,
                openedAt,
                secondWanted,
                blind,
                corrects,
                supersededBy,
                observationId);
    }
}
