package org.ripewood.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.aftercare.Care;
import org.ripewood.aftercare.CareTask;
import org.ripewood.aftercare.MeasuringDay;
import org.ripewood.core.season.CareState;
import org.ripewood.course.Technique.Aftercare.Kind;
import org.ripewood.sessions.Attendance;
import org.ripewood.sessions.Session;

/** What is written by one library is read by another, and valid by RFC 5545. */
@Tag("fast")
class CalendarTextTest {

    private static final String SEED = "0b8f3c8e-6f0b-4a51-9d0e-1a2b3c4d5e6f";
    private static final LocalDate ON = LocalDate.of(2026, 3, 20);
    private static final Instant CHANGED = Instant.parse("2026-03-01T12:00:00Z");

    @ParameterizedTest
    @ValueSource(strings = {"UTC", "Pacific/Auckland", "America/Los_Angeles", "Asia/Kathmandu"})
    void wholeDaysAreTheSameDaysWhereverTheServiceRuns(String zone) {
        var before = TimeZone.getDefault();
        TimeZone.setDefault(TimeZone.getTimeZone(zone));
        try {
            var read = read(List.of(), task(CareState.DUE, "2026-03-18", "2026-03-24"));
            var event = read.event("care-12-shade-1");
            // the end is the day after the last: RFC 5545, 3.6.1
            assertThat(Reading.value(event, "DTSTART")).isEqualTo("20260318");
            assertThat(Reading.value(event, "DTEND")).isEqualTo("20260325");
            assertThat(read.text()).contains("DTSTART;VALUE=DATE:20260318");
        } finally {
            TimeZone.setDefault(before);
        }
    }

    @Test
    void careLeavesItsOwnerFreeAndSaysWhatItIs() {
        var event =
                read(List.of(), task(CareState.DUE, "2026-03-18", "2026-03-24"))
                        .event("care-12-shade-1");
        assertThat(Reading.value(event, "TRANSP")).isEqualTo("TRANSPARENT");
        assertThat(Reading.value(event, "SUMMARY"))
                .isEqualTo("Maple; \"old\", the \\ one – Größe 大きな木: Shade, and shelter");
        assertThat(Reading.value(event, "UID")).isEqualTo("care-12-shade-1-" + SEED);
        assertThat(Reading.value(event, "DTSTAMP")).isEqualTo("20260320T000000Z");
        assertThat(Reading.value(event, "URL")).isEqualTo("https://school.test/trees/7/checklist");
    }

    @Test
    void textIsEscaped() {
        var text = read(List.of(), task(CareState.DUE, "2026-03-18", "2026-03-24")).text();
        // RFC 5545, 3.3.11: backslash, semicolon and comma
        assertThat(text.replace("\r\n ", "")).contains("SUMMARY:Maple\\; \"old\"\\, the \\\\ one");
    }

    @Test
    void longCareStandsOnItsFirstDayAndLateCareOnToday() {
        var longCare = read(List.of(), task(CareState.DUE, "2026-03-18", "2026-04-10"));
        var event = longCare.event("care-12");
        assertThat(Reading.value(event, "DTSTART")).isEqualTo("20260318");
        assertThat(Reading.value(event, "DTEND")).isEqualTo("20260319");
        assertThat(Reading.value(event, "SUMMARY")).endsWith("(until 2026-04-10)");

        var late = read(List.of(), task(CareState.LATE, "2026-02-01", "2026-02-07"));
        assertThat(Reading.value(late.event("care-12"), "DTSTART")).isEqualTo("20260320");
        assertThat(Reading.value(late.event("care-12"), "SUMMARY")).contains(": late: ");
    }

    @Test
    void aMeasuringDayIsADay() {
        var day =
                new MeasuringDay(
                        7, "Elm", MeasuringDay.Subject.WOUNDS, ON.minusDays(100), ON.plusDays(20));
        var care = new Care(ON, List.of(), List.of(day), Map.of());
        var event = Reading.of(CalendarText.text(dates(List.of(), care))).event("measure-7-wounds");
        assertThat(Reading.value(event, "DTSTART")).isEqualTo("20260409");
        assertThat(Reading.value(event, "SUMMARY")).isEqualTo("Elm: measure the wounds again");
    }

    /**
     * Summer time in Berlin begins on 29 March 2026, the last Sunday (EU directive 2000/84/EC):
     * half past nine is 8:30 UTC the day before and 7:30 the day after.
     */
    @Test
    void classTimesKeepToTheClockAcrossSummerTime() {
        var before = classDate(1, LocalDate.of(2026, 3, 28), null, false, false);
        var after = classDate(2, LocalDate.of(2026, 3, 30), null, false, false);
        var read = read(List.of(before, after));
        assertThat(Reading.value(read.event("session-1-"), "DTSTART"))
                .isEqualTo("20260328T083000Z");
        assertThat(Reading.value(read.event("session-2-"), "DTSTART"))
                .isEqualTo("20260330T073000Z");
        assertThat(Reading.value(read.event("session-2-"), "DTEND")).isEqualTo("20260330T103000Z");
    }

    @Test
    void aClassDateSaysWhatItIsAndWhichTreesOneBrings() {
        var event = read(List.of(classDate(5, ON, null, false, false))).event("session-5-");
        assertThat(Reading.value(event, "SUMMARY"))
                .isEqualTo("Foundations: Wiring, and what waits");
        assertThat(Reading.value(event, "LOCATION")).isEqualTo("Long table, upper yard");
        assertThat(Reading.value(event, "DESCRIPTION")).isEqualTo("You bring: Elm; Oak.");
        assertThat(Reading.value(event, "STATUS")).isEqualTo("CONFIRMED");
        assertThat(Reading.value(event, "SEQUENCE")).isEqualTo("4");
        assertThat(Reading.value(event, "LAST-MODIFIED")).isEqualTo("20260301T120000Z");
        assertThat(Reading.value(event, "TRANSP")).isEmpty();
    }

    @Test
    void whatIsCalledOffOrWithdrawnStaysAsCancelled() {
        var off = new Session.Cancellation("Stan is ill.", 9, CHANGED);
        var read =
                read(
                        List.of(
                                classDate(5, ON, off, false, false),
                                classDate(6, ON, null, false, true)));
        assertThat(Reading.value(read.event("session-5-"), "STATUS")).isEqualTo("CANCELLED");
        assertThat(Reading.value(read.event("session-6-"), "STATUS")).isEqualTo("CANCELLED");
        // the reason may speak of others, and a calendar is read by other services
        assertThat(read.text()).doesNotContain("ill");
    }

    @Test
    void whoTeachesIsToldHowManyTreesComeAndNotWhose() {
        var event = read(List.of(classDate(5, ON, null, true, false))).event("session-5-");
        assertThat(Reading.value(event, "DESCRIPTION")).isEqualTo("You teach. Trees that come: 7.");
    }

    @Test
    void anEmptyCalendarIsOneToo() {
        assertThat(
                        CalendarText.text(
                                dates(List.of(), new Care(ON, List.of(), List.of(), Map.of()))))
                .contains("BEGIN:VCALENDAR")
                .contains("VERSION:2.0")
                .contains("PRODID:")
                // RFC 7986, 5.7
                .contains("REFRESH-INTERVAL;VALUE=DURATION:PT6H\r\n")
                .endsWith("END:VCALENDAR\r\n");
    }

    private static Reading read(List<Dates.ClassDate> classDates, CareTask... tasks) {
        return Reading.of(
                CalendarText.text(
                        dates(classDates, new Care(ON, List.of(tasks), List.of(), Map.of()))));
    }

    private static Dates dates(List<Dates.ClassDate> classDates, Care care) {
        return new Dates(
                SEED,
                "https://school.test",
                Instant.parse("2026-03-20T00:00:00Z"),
                classDates,
                care);
    }

    private static CareTask task(CareState state, String from, String to) {
        return new CareTask(
                "12-shade-1",
                7,
                "Maple; \"old\", the \\ one – Größe 大きな木",
                "root_pruning_repot",
                "Repot",
                ON.minusDays(40),
                "Shade, and shelter.",
                Kind.SHADE,
                LocalDate.parse(from),
                LocalDate.parse(to),
                state,
                false,
                null);
    }

    private static Dates.ClassDate classDate(
            long id,
            LocalDate day,
            Session.@Nullable Cancellation cancelled,
            boolean teaches,
            boolean withdrawn) {
        var zone = ZoneId.of("Europe/Berlin");
        var starts = LocalTime.of(9, 30);
        var ends = LocalTime.of(12, 30);
        var session =
                new Session(
                        id,
                        4,
                        3,
                        day,
                        starts,
                        ends,
                        "wiring-branches",
                        "Long table, upper yard",
                        List.of(9L),
                        List.of(),
                        CHANGED,
                        cancelled,
                        null,
                        List.of(),
                        null);
        return new Dates.ClassDate(
                new Attendance(session, "Foundations", teaches, List.of(), 7, withdrawn),
                DateGatherer.moment(day, starts, zone),
                DateGatherer.moment(day, ends, zone),
                "Wiring, and what waits",
                List.of("Elm", "Oak"));
    }
}
