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
}
