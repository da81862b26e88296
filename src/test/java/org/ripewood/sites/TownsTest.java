package org.ripewood.sites;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Towns by name in an invented list; of the list that is shipped only what holds of all of it. */
@Tag("fast")
class TownsTest {

    private static final String LIST =
            """
            @FR\tNorth Moor
            Mossford\t50.10\t3.00
            Mossford-le-Haut\t50.20\t3.10
            Sankt Ødal\t50.30\t3.20
            @PT\tSouth Moor
            Mossford\t38.00\t-8.00
            """;

    private static List<Town> find(String typed) throws IOException {
        return Towns.find(new BufferedReader(new StringReader(LIST)), typed);
    }

    @Test
    void namesThatAreTheSameComeBeforeThoseThatBeginSo() throws IOException {
        assertThat(find(" mossFORD "))
                .extracting(town -> town.name() + " " + town.country())
                .containsExactly("Mossford FR", "Mossford PT", "Mossford-le-Haut FR");
        assertThat(find("mo")).isEmpty();
        assertThat(find("")).isEmpty();
        assertThat(find("Nowhere")).isEmpty();
    }

    @Test
    void marksAndHyphensDoNotMatter() throws IOException {
        assertThat(find("sankt odal")).hasSize(1);
        assertThat(find("Mossford le haut")).hasSize(1);
    }

    @Test
    void aRegionOrCountryBehindACommaNarrowsIt() throws IOException {
        for (var typed : List.of("Mossford, south", "Mossford, Portugal", "Mossford,pt")) {
            assertThat(find(typed)).as(typed).extracting(Town::country).containsExactly("PT");
        }
        assertThat(find("Mossford, pt").get(0).lies()).isEqualTo("South Moor, Portugal");
        assertThat(find("Mossford, elsewhere")).isEmpty();
    }

    @Test
    void theListThatIsShippedReadsWhole() {
        var found = Towns.find("San");
        assertThat(found).hasSize(Towns.MOST);
        assertThat(found)
                .allSatisfy(
                        town -> {
                            assertThat(town.latitude()).isBetween(-90.0, 90.0);
                            assertThat(town.longitude()).isBetween(-180.0, 180.0);
                            assertThat(town.country()).matches("[A-Z]{2}");
                        });
    }

    @Test
    void everyZoneToChooseIsKnownAndLiesNearestToItself() {
        var regions = ZoneList.byRegion();
        assertThat(regions.keySet()).contains("Africa", "America", "Asia", "Europe", "Anywhere");
        for (var zones : regions.values()) {
            for (var zone : zones) {
                assertThat(ZoneId.getAvailableZoneIds()).contains(zone.id());
                assertThat(zone.title()).isNotBlank();
                if (!zone.country().isEmpty()) {
                    var there = new PlaceText.Point(zone.latitude(), zone.longitude());
                    var nearest = ZoneList.nearest(there, zone.country());
                    assertThat(nearest.latitude()).isEqualTo(zone.latitude());
                    assertThat(nearest.longitude()).isEqualTo(zone.longitude());
                }
            }
        }
    }

    @Test
    void aCountryWithoutAZoneOfItsOwnTakesTheNearestOfAll() {
        var place = new PlaceText.Point(50.1, 8.7);
        assertThat(ZoneList.nearest(place, "XX")).isEqualTo(ZoneList.nearest(place, null));
        assertThat(ZoneList.nearest(place, null).region()).isEqualTo("Europe");
    }
}
