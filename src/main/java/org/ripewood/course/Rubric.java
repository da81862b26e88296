package org.ripewood.course;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;

/** Levels described in words, by which a tree or a student's skill is judged. */
public record Rubric(
        String code,
        String title,
        Subject subject,
        String question,
        List<Level> levels,
        @Nullable Feeds feeds,
        String source) {

    /** What is judged. */
    public enum Subject {
        TREE,
        STUDENT
    }

    public record Level(int level, String word, String description) {}

    /** The fact a judgement becomes evidence of; one value per level. */
    public record Feeds(Fact fact, List<Double> perLevel) {}
}
