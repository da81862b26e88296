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
        @Nullable Shows shows,
        String source) {

    /** What is judged. */
    public enum Subject {
        TREE,
        STUDENT
    }

    public record Level(int level, String word, String description) {}

    /** The fact a judgement becomes evidence of; one value per level. */
    public record Feeds(Fact fact, List<Double> perLevel) {}

    /**
     * The lessons whose skill a student has shown at a level or a higher one, and has not at a
     * lower.
     */
    public record Shows(List<String> lessons, int fromLevel) {
        public Shows {
            lessons = List.copyOf(lessons);
        }
    }

    /** Whether this is a level of the rubric. */
    public boolean has(int level) {
        return level >= 0 && level < levels.size();
    }
}
