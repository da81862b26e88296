package org.ripewood.course;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ContentReadingTest {

    @Test
    void theContentInTheJarHasNoFault() {
        assertThat(new Editing().faults()).isEmpty();
    }
}
