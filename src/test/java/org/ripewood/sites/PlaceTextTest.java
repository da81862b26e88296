package org.ripewood.sites;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.platform.problems.Refused;

/** Coordinates as people write them; forms of ISO 6709:2008, Annex D, and RFC 5870, from memory. */
@Tag("fast")
class PlaceTextTest {

    private static final double METRES = 1e-4;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "50.125, 7.5",
                "50.125 7.5",
                "50.125,7.5",
                "50,125; 7,5",
                "50,125 7,5",
                "50,125, 7,5",
                "50,125,7,5",
                "50.125/7.5",
                "+50.125+7.5",
                "+50.125+007.500/",
                "N50.125 E7.5",
                "50.125N 7.5E",
                "50.125° N, 7.5° E",
                "7.5 E, 50.125 N",
                "50°07'30\"N 7°30'E",
                "50°07′30″ N 007°30′00″ E",
                "50º 7' 30'' 7º 30'",
                "50 07 30 7 30 00",
                "50 7.5 7 30",
                "50:07:30 N 7:30:00 E",
                "N 50° 7.5' E 7° 30'",
                "50° 7,5' N 7° 30,0' E",
                "50 deg 7 min 30 sec north, 7 deg 30 min east",
                "lat 50.125 lon 7.5",
                "Latitude: 50.125, Longitude: 7.5",
                "geo:50.125,7.5",
                "geo:50.125,7.5,90;crs=wgs84;u=35"
            })
    void onePlaceInManySpellings(String typed) {
        var point = PlaceText.read(typed).orElseThrow();
        assertThat(point.latitude()).as(typed).isCloseTo(50.125, within(METRES));
        assertThat(point.longitude()).as(typed).isCloseTo(7.5, within(METRES));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "-33.5, -70.25 | -33.5 | -70.25",
                "\u221233,5; \u221270,25 | -33.5 | -70.25",
                "33°30'S 70°15'W | -33.5 | -70.25",
                "70°15'W 33°30'S | -33.5 | -70.25",
                "S33 30 W70 15 | -33.5 | -70.25",
                "geo:-33.5,-70.25 | -33.5 | -70.25",
                "48,11 | 48 | 11",
                "0 0 | 0 | 0",
                "-0.5 0 | -0.5 | 0",
                "90 180 | 90 | 180"
            })
    void southAndWestAreNegative(String typed, double latitude, double longitude) {
        var point = PlaceText.read(typed).orElseThrow();
        assertThat(point.latitude()).isCloseTo(latitude, within(METRES));
        assertThat(point.longitude()).isCloseTo(longitude, within(METRES));
    }

    @Test
    void whatHasNoDigitIsAName() {
        assertThat(PlaceText.read("Mossford")).isEmpty();
        assertThat(PlaceText.read("  ")).isEmpty();
        assertThat(PlaceText.read("Stone-on-the-Water, North")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "48.14 | expected the name of a town",
                "48.14 11.58 3.0 | expected the name of a town",
                "forty 8 | expected the name of a town",
                "48.14; | expected the name of a town",
                ";;; 1 | expected the name of a town",
                "1 2 3 4 5 6 7 8 | expected the name of a town",
                "91, 11 | from -90 to 90",
                "111.5 48.1 | Maybe the latitude comes first",
                "10 181 | from -180 to 180",
                "48°60'N 11°0'E | below 60",
                "48.5°30'N 11°0'E | last number only",
                "-48 N 11 E | either a sign or one letter",
                "48N 11S | two alike",
                "11E 48E | two alike",
                "48.1 N 11.5 O | write E or W",
                "lon 11.5 lat 48.1 | the latitude first",
                "geo:48 | geo:48.14,11.58",
                "geo:48.1,11.5;crs=other | WGS 84",
                "geo:99,11 | from -90 to 90"
            })
    void whatCannotBeAPlaceIsTold(String typed, String told) {
        var refused = catchThrowableOfType(Refused.class, () -> PlaceText.read(typed));
        assertThat(refused).as(typed).isNotNull();
        assertThat(refused.problem().status()).isEqualTo(400);
        assertThat(refused.problem().faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.field()).isEqualTo("place"))
                .satisfies(fault -> assertThat(fault.message()).contains(told));
    }

    @Test
    void longTextIsRefusedBeforeItIsLookedAt() {
        var refused = catchThrowableOfType(Refused.class, () -> PlaceText.read("1 ".repeat(5_000)));
        assertThat(refused.problem().faults().get(0).message()).contains("at most 120");
    }
}
