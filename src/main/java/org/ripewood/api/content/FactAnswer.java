package org.ripewood.api.content;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.course.Content;

/**
 * What can be known of a tree, how it is measured and what may be written down.
 *
 * @param ages growth, days or never: by what evidence of it grows old
 */
record FactAnswer(
        String code,
        String title,
        String unit,
        String how,
        String kind,
        String scope,
        @Nullable Double least,
        @Nullable Double most,
        List<String> words,
        boolean recordable,
        String ages) {

    static FactAnswer of(Fact fact, Content content) {
        var text = content.text(fact);
        var number = fact.kind() == Fact.Kind.NUMBER;
        return new FactAnswer(
                fact.code(),
                text.title(),
                text.unit(),
                text.how(),
                fact.kind().name().toLowerCase(Locale.ROOT),
                fact.scope().name().toLowerCase(Locale.ROOT),
                number ? fact.least() : null,
                number ? fact.most() : null,
                fact.words(),
                fact.recordable(),
                text.ages().name().toLowerCase(Locale.ROOT));
    }
}
