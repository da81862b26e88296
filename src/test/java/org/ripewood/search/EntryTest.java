package org.ripewood.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.course.ContentInJar;

/** What answers to which words, and in what order, on the content in the jar. */
@Tag("fast")
class EntryTest {

    private static final List<Entry> ALL = ContentEntries.of(ContentInJar.read());

    private static List<String> titles(String words) {
        var asked = Letters.words(words);
        return ALL.stream()
                .filter(entry -> entry.rank(asked) >= 0)
                .sorted(Comparator.comparingInt(entry -> entry.rank(asked)))
                .map(entry -> entry.hit().title())
                .toList();
    }

    @Test
    void aWholeNameComesBeforeAPartAndBothBeforeTheText() {
        assertThat(titles("callus").get(0)).isEqualTo("callus");
        assertThat(titles("wire").subList(0, 3)).allMatch(title -> title.matches("(?i).*wire.*"));
        assertThat(titles("wire")).contains("Wire the primary branches", "Wiring branches");
    }

    @Test
    void latinCommonAndOtherNamesAreFound() {
        assertThat(titles("palmatum")).contains("Japanese maple");
        assertThat(titles("JAPANESE mapl")).contains("Japanese maple");
        assertThat(titles("nebari")).contains("root flare");
        assertThat(titles("backbudding")).contains("back-budding");
        assertThat(titles("back budding")).contains("back-budding");
    }

    @Test
    void everyWordHasToBeFound() {
        assertThat(titles("wire helicopter")).isEmpty();
        assertThat(titles("branches primary")).contains("Wire the primary branches");
    }

    /** One letter is in every other word, so it finds beginnings only. */
    @Test
    void fewLettersFindBeginningsOnly() {
        assertThat(titles("ji")).contains("jin", "Make a jin").doesNotContain("Fuji");
        assertThat(titles("in")).noneMatch(title -> title.equals("jin"));
    }

    @Test
    void everythingTaughtIsFoundByItsOwnName() {
        assertThat(ALL).hasSizeGreaterThan(74 + 36 + 38 + 27 + 60);
        assertThat(ALL)
                .allSatisfy(
                        entry ->
                                assertThat(entry.rank(Letters.words(entry.hit().title())))
                                        .isZero());
    }
}
