package org.ripewood.readiness;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.season.Outlook;

/** When a reason goes, as exactly as it is known; the spans are chosen here, no source. */
@Tag("fast")
class LiftTest {

    private static final LocalDate ON = LocalDate.of(2026, 11, 30);

    @Test
    void aSureDayNearbyIsTheDay() {
        assertThat(words(9, 9, 9)).isEqualTo("9 December");
    }

    @Test
    void aSureDayFurtherAwayIsItsMonth() {
        assertThat(words(140, 145, 150)).isEqualTo("April 2027");
    }

    @Test
    void aMonthThatIsNotSureIsAboutThatMonth() {
        assertThat(words(60, 145, 300)).isEqualTo("about April 2027");
    }

    @Test
    void whatMayTakeAYearMoreOrLessIsAboutAYear() {
        assertThat(words(200, 600, 900)).isEqualTo("about 2028");
    }

    @Test
    void whatHasNoEndIsAYearOrLater() {
        var open = new Outlook.Expected(ON.plusDays(300), ON.plusDays(800), null);
        assertThat(Lift.of(open, ON).words()).isEqualTo("2029 or later");
    }

    @Test
    void whatIsLikelySoAlreadyIsToBeMeasured() {
        var unseen = new Outlook.Expected(ON, ON, ON.plusDays(90), ON.minusDays(200));
        assertThat(Lift.of(unseen, ON).words()).isEqualTo("Likely by now: measure");
    }

    @Test
    void whatNobodyCanSayHasNoDate() {
        var lift = Lift.of(new Outlook.Unsaid("Not known."), ON);
        assertThat(lift.words()).isEqualTo("No date yet");
        assertThat(lift.on()).isNull();
    }

    private static String words(int earliest, int likely, int latest) {
        var expected =
                new Outlook.Expected(
                        ON.plusDays(earliest), ON.plusDays(likely), ON.plusDays(latest));
        var lift = Lift.of(expected, ON);
        assertThat(lift.on()).isEqualTo(ON.plusDays(likely));
        return lift.words();
    }
}
