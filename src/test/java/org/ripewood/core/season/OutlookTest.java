package org.ripewood.core.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class OutlookTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 4, 20);
    private static final Outlook.Expected SKEWED =
            new Outlook.Expected(
                    LocalDate.of(2027, 6, 1), LocalDate.of(2027, 8, 1), LocalDate.of(2028, 7, 1));

    @Test
    void itsThreeDaysAreItsTenthHalfAndNineTenths() {
        assertThat(SKEWED.dayAt(0.1, TODAY)).contains(SKEWED.earliest());
        assertThat(SKEWED.dayAt(0.5, TODAY)).contains(SKEWED.likely());
        assertThat(SKEWED.dayAt(0.9, TODAY)).contains(LocalDate.of(2028, 7, 1));
    }

    @Test
    void betweenAndBeyondThemItFollowsANormalCurve() {
        // Φ⁻¹(0.975) = 1.959964 (standard normal table), so 1.5294 times the nine-tenths' distance.
        var day = SKEWED.dayAt(0.975, TODAY).orElseThrow();
        assertThat((double) ChronoUnit.DAYS.between(SKEWED.likely(), day))
                .isCloseTo(335 * 1.959964 / 1.281552, within(1.0));
    }

    @Test
    void noDayLiesBeforeTheDayAskedFrom() {
        assertThat(SKEWED.dayAt(0.001, LocalDate.of(2027, 5, 20)))
                .contains(LocalDate.of(2027, 5, 20));
        assertThat(new Outlook.Already().dayAt(0.5, TODAY)).contains(TODAY);
    }

    @Test
    void whatLiesBeyondReachIsNotSaid() {
        var open = new Outlook.Expected(SKEWED.earliest(), SKEWED.likely(), null);
        assertThat(open.dayAt(0.4, TODAY)).isPresent();
        assertThat(open.dayAt(0.9, TODAY)).isEmpty();
        assertThat(open.dayAt(0.8999, TODAY).orElseThrow())
                .isAfter(TODAY.plusYears(Outlook.REACH_YEARS).minusYears(1));
        var wide = new Outlook.Expected(TODAY.plusYears(5), TODAY.plusYears(25), null);
        assertThat(wide.dayAt(0.8999, TODAY).orElseThrow()).isAfter(TODAY.plusYears(60));
        assertThat(new Outlook.Unsaid("Nobody has measured it.").dayAt(0.5, TODAY)).isEmpty();
    }

    @Test
    void ofSeveralTheLatestCountsTenthByTenth() {
        var soon = Outlook.Expected.on(LocalDate.of(2027, 7, 1));
        var never = new Outlook.Unsaid("It has stalled.");
        assertThat(Outlook.allOf(List.of())).isEqualTo(new Outlook.Already());
        assertThat(Outlook.allOf(List.of(new Outlook.Already(), soon))).isEqualTo(soon);
        assertThat(Outlook.allOf(List.of(SKEWED, soon)))
                .isEqualTo(
                        new Outlook.Expected(
                                LocalDate.of(2027, 7, 1), SKEWED.likely(), SKEWED.latest()));
        assertThat(Outlook.allOf(List.of(SKEWED, never, soon))).isEqualTo(never);
        var open = new Outlook.Expected(SKEWED.earliest(), SKEWED.likely(), null);
        assertThat(((Outlook.Expected) Outlook.allOf(List.of(open, SKEWED))).latest()).isNull();
    }

    /** Of several all have likely come about when the last of them has. */
    @Test
    void whatIsLikelySoUnseenStaysSoOnlyUntilSomethingLaterIsWaitedFor() {
        var longAgo = new Outlook.Expected(TODAY, TODAY, null, TODAY.minusYears(3));
        var lately = new Outlook.Expected(TODAY, TODAY, TODAY, TODAY.minusYears(1));
        assertThat(Outlook.allOf(List.of(longAgo, new Outlook.Already()))).isEqualTo(longAgo);
        var both = (Outlook.Expected) Outlook.allOf(List.of(longAgo, lately));
        assertThat(both.likelySince()).isEqualTo(TODAY.minusYears(1));
        var later = Outlook.Expected.on(TODAY.plusYears(1));
        assertThat(((Outlook.Expected) Outlook.allOf(List.of(longAgo, later))).likelySince())
                .isNull();
        assertThatThrownBy(() -> new Outlook.Expected(TODAY, TODAY, TODAY, TODAY))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("since before today");
    }

    @Test
    void daysOutOfOrderAreRefused() {
        var early = SKEWED.earliest();
        var late = SKEWED.likely();
        assertThatThrownBy(() -> new Outlook.Expected(late, early, null))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SKEWED.dayAt(1, TODAY))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("between 0 and 1");
    }
}
