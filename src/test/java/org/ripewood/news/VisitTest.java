package org.ripewood.news;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** When one visit ends and the next begins. */
@Tag("fast")
class VisitTest {

    private static final Instant BEFORE = Instant.parse("2026-11-20T09:00:00Z");
    private static final Instant BEGAN = Instant.parse("2026-12-01T09:00:00Z");
    private static final Instant SIGNED_IN = BEGAN.minusSeconds(5);

    private final Visit visit = new Visit(BEFORE, BEGAN);

    @Test
    void aReloadIsTheSameVisit() {
        assertThat(visit.at(BEGAN, SIGNED_IN)).isEqualTo(visit);
        assertThat(visit.at(BEGAN.plus(Duration.ofMinutes(59)), SIGNED_IN)).isEqualTo(visit);
        assertThat(visit.at(BEGAN.plus(Duration.ofMinutes(59)), null)).isEqualTo(visit);
    }

    @Test
    void afterAnHourTheNextBeginsAndTellsFromWhenTheLastBegan() {
        var later = BEGAN.plus(Visit.LASTS);
        assertThat(visit.at(later, SIGNED_IN)).isEqualTo(new Visit(BEGAN, later));
        assertThat(visit.at(later, null)).isEqualTo(new Visit(BEGAN, later));
    }

    @Test
    void whoSignsInAnewBeginsTheNext() {
        var soon = BEGAN.plusSeconds(60);
        assertThat(visit.at(soon, soon.minusSeconds(1))).isEqualTo(new Visit(BEGAN, soon));
    }

    /** Two browsers signed in before do not push each other's visit on. */
    @Test
    void anotherBrowserThatWasSignedInBeforeIsTheSameVisit() {
        assertThat(visit.at(BEGAN.plusSeconds(60), BEFORE)).isEqualTo(visit);
    }

    @Test
    void theFirstVisitTellsOfNothingBeforeIt() {
        assertThat(Visit.first(BEGAN)).isEqualTo(new Visit(BEGAN, BEGAN));
    }
}
