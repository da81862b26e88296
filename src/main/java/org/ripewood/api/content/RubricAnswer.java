package org.ripewood.api.content;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Rubric;

/**
 * A rubric with its levels in words.
 *
 * @param subject tree or student
 * @param feeds the fact a judgement becomes
 * @param shows the skills a judgement shows
 */
record RubricAnswer(
        String code,
        String title,
        String subject,
        String question,
        List<Rubric.Level> levels,
        @Nullable Feeds feeds,
        Rubric.@Nullable Shows shows,
        String source) {

    /** The fact's code, and its value for each level. */
    record Feeds(String fact, List<Double> perLevel) {}

    static RubricAnswer of(Rubric rubric) {
        var feeds = rubric.feeds();
        return new RubricAnswer(
                rubric.code(),
                rubric.title(),
                rubric.subject().name().toLowerCase(Locale.ROOT),
                rubric.question(),
                rubric.levels(),
                feeds == null ? null : new Feeds(feeds.fact().code(), feeds.perLevel()),
                rubric.shows(),
                rubric.source());
    }
}
