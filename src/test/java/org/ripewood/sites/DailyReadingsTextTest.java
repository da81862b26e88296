package org.ripewood.sites;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.core.season.DailyReadings;
import org.ripewood.core.season.DayReading;

@Tag("fast")
class DailyReadingsTextTest {

    private static final LocalDate TODAY = LocalDate.of(2024, 6, 30);

    private static final DayReading FIRST_OF_MAY =
            new DayReading(LocalDate.of(2024, 5, 1), -3.5, 12);

    private static ReadingsInText read(String text) throws IOException {
        return DailyReadingsText.read(new StringReader(text), TODAY);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "date,tmin,tmax\n2024-05-01,-3.5,12\n",
                "\uFEFFDate,TMin,TMax\r\n2024-05-01,-3.5,12\r\n",
                "2024-05-01,-3.5,12",
                "\n\ndate;maximum;minimum\n2024/05/01;12,0;-3,5\n",
                "date\train\tmax\tmin\n20240501\t0\t12\t\u22123,5",
                "date,tmax,tmin\n\"2024-05-01\", 12 , -3.5\n",
                "X1,20240501,TMIN,-35,,,S,0700\nX1,20240501,TMAX,120,,,S,0700",
                "ID,DATE,ELEMENT,DATA_VALUE,M_FLAG,Q_FLAG,S_FLAG,OBS_TIME\n"
                        + "X1,20240501,TMAX,120,,,S,\nX1,20240501,PRCP,7,,,S,\nX1,20240501,TMIN,-35,,,S,"
            })
    void everyLayoutGivesTheSameDay(String text) throws IOException {
        var read = read(text);
        assertThat(read.faults()).isEmpty();
        assertThat(read.readings()).containsExactly(FIRST_OF_MAY);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2024-02-30,1,2 | 2024-02-30 | a date such as",
                "soon,1,2 | soon | a date such as",
                "0024-05-01,1,2 | 0024-05-01 | a day from 1700-01-01",
                "2024-07-01,1,2 | 2024-07-01 | to 2024-06-30",
                "2024-05-02,mild,2 | mild | a temperature",
                "2024-05-02,1,NaN | NaN | a temperature",
                "2024-05-02,1,1e1 | 1e1 | a temperature",
                "2024-05-02,5,4.9 | minimum 5.0, maximum 4.9 | not above",
                "2024-05-02,-90.1,4 | minimum -90.1, maximum 4.0 | from -90 to 60",
                "2024-05-02,50,88 | minimum 50.0, maximum 88.0 | from -90 to 60",
                "2024-05-01,1,2 | 2024-05-01 | one reading a day",
                "2024-05-02,1 | 2024-05-02,1 | at least 3 columns",
                "2024-05-02,\"1,2 | 2024-05-02,\"1,2 | quotation marks"
            })
    void aFaultIsToldWithItsLineAndHidesNothing(String line, String found, String expected)
            throws IOException {
        var read = read("date,tmin,tmax\n2024-05-01,-3.5,12\n" + line + "\n2024-04-30,1,2\n");
        assertThat(read.faults()).hasSize(1);
        var fault = read.faults().get(0);
        assertThat(fault.line()).isEqualTo(3);
        assertThat(fault.found()).isEqualTo(found);
        assertThat(fault.expected()).contains(expected);
        assertThat(read.readings())
                .containsExactly(new DayReading(LocalDate.of(2024, 4, 30), 1, 2), FIRST_OF_MAY);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "\uFEFF",
                "\n \n",
                "day,low,high\n2024-05-01,1,2",
                "STATION,DATE,TMAX,TMIN\nX1,2024-05-01,120,-35",
                "{\"date\":1}",
                "\"",
                "2024-05-01"
            })
    void anUnknownLayoutIsOneFault(String text) throws IOException {
        var read = read(text);
        assertThat(read.readings()).isEmpty();
        assertThat(read.faults()).hasSize(1);
        assertThat(read.faults().get(0).expected()).contains("date, tmin, tmax", "GHCN-Daily");
    }

    @Test
    void aDayWithoutValuesIsAGapAndHalfADayIsCounted() throws IOException {
        var read = read("date,tmin,tmax\n2024-05-01,,\n2024-05-02,3,\n2024-05-03,,4\n");
        assertThat(read.faults()).isEmpty();
        assertThat(read.readings()).isEmpty();
        assertThat(read.incomplete()).isEqualTo(2);
    }

    @Test
    void doubtfulValuesOfAStationAreLeftOutAndCounted() throws IOException {
        var read =
                read(
                        """
                        X1,20240501,TMIN,-35,,,S,
                        X1,20240501,TMAX,120,,,S,
                        X1,20240502,TMIN,-35,,I,S,
                        X1,20240502,TMAX,120,,,S,
                        X1,20240503,TMIN,-9999,,,S,
                        X1,20240504,TMIN,150,,,S,
                        X1,20240504,TMAX,120,,,S,
                        X2,20240505,TMAX,120,,,S,
                        X1,20240501,TMAX,130,,,S,
                        X1,20240506,TMAX
                        """);
        assertThat(read.readings()).containsExactly(FIRST_OF_MAY);
        assertThat(read.flagged()).isEqualTo(1);
        assertThat(read.incomplete()).isEqualTo(1);
        assertThat(read.faults())
                .extracting(ReadingsFault::line, ReadingsFault::found)
                .containsExactly(
                        tuple(7L, "minimum 15.0, maximum 12.0"),
                        tuple(8L, "X2"),
                        tuple(9L, "TMAX of 2024-05-01"),
                        tuple(10L, "X1,20240506,TMAX"));
    }

    /** NOAA daily summaries, public domain; the file's source and hash stand in its README. */
    @Test
    void anOpenFileIsReadWhole() throws IOException {
        var stream = getClass().getResourceAsStream("/weather/noaa-daily-2012-2015.csv");
        try (var reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
            var read = DailyReadingsText.read(reader, TODAY);
            assertThat(read.faults()).isEmpty();
            assertThat(read.readings()).hasSize(1_461);
            var readings = DailyReadings.alone(read.readings());
            assertThat(readings.minCelsius(LocalDate.of(2013, 12, 7))).isEqualTo(-7.1);
        }
    }

    @Test
    void aHundredThousandLinesAreReadAndAllTheirFaultsCounted() throws IOException {
        var text = new StringBuilder("date,tmin,tmax\n");
        var first = LocalDate.of(1750, 1, 1);
        for (int i = 0; i < 100_000; i++) {
            text.append(first.plusDays(i)).append(i % 10 == 0 ? ",9,1\n" : ",1,9\n");
        }
        var read = read(text.toString());
        assertThat(read.readings()).hasSize(90_000);
        assertThat(read.faultCount()).isEqualTo(10_000);
        assertThat(read.faults()).hasSize(ReadingsInText.LISTED);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void noiseIsNeverMoreThanFaults(long seed) throws IOException {
        var random = new SplittableRandom(seed);
        var letters = "0123456789-.,;\"\t\n\r TMINX\uFEFF\0é";
        for (int i = 0; i < 500; i++) {
            var text = new StringBuilder("date,tmin,tmax\n2024-05-01,-3.5,12\n");
            for (int k = random.nextInt(200); k > 0; k--) {
                text.append(letters.charAt(random.nextInt(letters.length())));
            }
            assertThat(read(text.toString()).readings())
                    .as("seed %d, %s", seed, text)
                    .contains(FIRST_OF_MAY);
        }
    }
}
