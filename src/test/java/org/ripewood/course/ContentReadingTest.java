package org.ripewood.course;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class ContentReadingTest {

    @Test
    void theContentInTheJarHasNoFault() {
        assertThat(new Editing().faults()).isEmpty();
    }

    /** Every word has an address of its own, and is told in the order of the alphabet. */
    @Test
    void theGlossaryTellsTheWordsOfTheTrade() {
        var terms = ContentInJar.read().glossary();
        assertThat(terms).hasSizeGreaterThan(60);
        assertThat(terms).extracting(Content.Term::code).doesNotHaveDuplicates();
        assertThat(terms)
                .extracting(term -> term.word().toLowerCase(java.util.Locale.ROOT))
                .isSorted();
        assertThat(terms)
                .filteredOn(term -> term.also().contains("nebari"))
                .singleElement()
                .satisfies(
                        term -> {
                            assertThat(term.code()).isEqualTo("root-flare");
                            assertThat(term.techniques()).contains("root_flare_exposure");
                        });
    }

    @Test
    void contentWithoutAGlossaryHasNone() {
        var content = new Editing().remove("glossary.yaml").read().content();
        assertThat(content).isNotNull();
        assertThat(content.glossary()).isEmpty();
    }
}
