package org.ripewood.asks;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** An answer to something asked. */
@Entity
@Table(name = "ask_answer")
class AnswerEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "ask_answer_seq")
    @SequenceGenerator(
            name = "ask_answer_seq",
            sequenceName = "ask_answer_seq",
            allocationSize = 50)
    @Nullable Long id;

    long askId;
    @Nullable String words;
    @Nullable Long stepId;
    long byId;
    Instant answeredAt;

    Ask.Answer told() {
        return new Ask.Answer(words, stepId, byId, answeredAt);
    }
}
