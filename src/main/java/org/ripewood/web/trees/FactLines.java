package org.ripewood.web.trees;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.course.Content;
import org.ripewood.course.FactText;

/** Facts under their headings. */
final class FactLines {

    /** What is known of a fact. */
    record Known(FactText text, Evidence evidence) {}

    /** A fact that can be recorded, and how to look. */
    record Recordable(Fact fact, FactText text) {}

    /** A heading and what stands under it. */
    record Block<T>(String title, List<T> lines) {}

    private FactLines() {}

    /** What is known of a tree; clocks that never ran are left out. */
    static List<Block<Known>> known(Content content, Facts facts) {
        return blocks(
                facts.all().stream().filter(FactLines::ran),
                Evidence::fact,
                found -> new Known(content.text(found.fact()), found));
    }

    static List<Block<Recordable>> recordable(Content content) {
        return blocks(
                Arrays.stream(Fact.values()).filter(Fact::recordable),
                Function.identity(),
                fact -> new Recordable(fact, content.text(fact)));
    }

    private static boolean ran(Evidence found) {
        return !(found.fact().unit().equals("d")
                && found.value() instanceof Value.Number days
                && days.amount() >= WorkLedger.NEVER_DAYS);
    }

    private static <S, T> List<Block<T>> blocks(
            Stream<S> all, Function<S, Fact> fact, Function<S, T> line) {
        var list = all.toList();
        return Arrays.stream(FactGroup.values())
                .map(
                        group ->
                                new Block<T>(
                                        group.title,
                                        list.stream()
                                                .filter(s -> FactGroup.of(fact.apply(s)) == group)
                                                .map(line)
                                                .toList()))
                .filter(block -> !block.lines().isEmpty())
                .toList();
    }
}
