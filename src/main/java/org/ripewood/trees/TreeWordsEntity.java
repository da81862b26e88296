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
import org.jspecify.annotations.Nullable;

/** What somebody said of a tree after it was entered; never edited, the latest of a kind counts. */
@Entity
@Table(name = "tree_words")
class TreeWordsEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "tree_words_seq")
    @SequenceGenerator(
            name = "tree_words_seq",
            sequenceName = "tree_words_seq",
            allocationSize = 50)
    Long id;

    long treeId;

    @Enumerated(EnumType.STRING)
    EarlierWords.Kind kind;

    /** Null where nothing is said any more. */
    @Nullable String words;

    long byId;
    Instant recordedAt;
}
