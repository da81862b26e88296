package org.ripewood.core.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("fast")
class CareStateTest {

    private static final Span SPAN = new Span(LocalDate.of(2025, 6, 10), LocalDate.of(2025, 6, 12));

    @ParameterizedTest
    @CsvSource({
        "2025-06-09, WAITING",
        "2025-06-10, DUE",
        "2025-06-12, DUE",
        "2025-06-13, LATE",
        "2025-06-20, LATE",
        "2025-06-21, OVER"
    })
    void itsDaysDecide(LocalDate on, CareState state) {
        assertThat(CareState.of(SPAN, LocalDate.of(2025, 6, 20), on)).isEqualTo(state);
    }

    @Test
    void whatIsKeptUpIsNeverLate() {
        assertThat(CareState.of(SPAN, SPAN.to(), SPAN.to().plusDays(1))).isEqualTo(CareState.OVER);
    }

    @Test
    void spansMeetOnACommonDay() {
        assertThat(SPAN.meets(new Span(SPAN.to(), SPAN.to().plusDays(3)))).isTrue();
        assertThat(SPAN.meets(new Span(SPAN.to().plusDays(1), SPAN.to().plusDays(3)))).isFalse();
        assertThat(SPAN.meets(new Span(SPAN.from().minusDays(3), SPAN.from().minusDays(1))))
                .isFalse();
        assertThatThrownBy(() -> new Span(SPAN.to(), SPAN.from()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2025-06-10");
    }
}
