package org.ripewood.asks;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Something asked of the instructors at a technique of a tree.
 *
 * @param title what the technique is called
 * @param words null for who asked for the step without a word more, and for readers who do not
 *     reach the former keeper who wrote them
 * @param answer null while nobody has answered
 * @param takenBack whether whoever asked took it back
 */
public record Ask(
        long id,
        long treeId,
        String technique,
        String title,
        AskKind kind,
        @Nullable String words,
        long byId,
        Instant askedAt,
        @Nullable Answer answer,
        boolean takenBack) {

    /**
     * An answer.
     *
     * @param words null when the step was assigned
     * @param stepId the step that was assigned; null when it was answered in words
     */
    public record Answer(
            @Nullable String words, @Nullable Long stepId, long byId, Instant answeredAt) {}

    /** Whether it waits for an answer. */
    public boolean open() {
        return answer == null && !takenBack;
    }
}
