package org.ripewood.sites;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Time zones to choose from, with the place of the town each is named after. (File zone.tab of the
 * IANA time zone database, which is in the public domain.)
 */
public final class ZoneList {

    private static final String FILE = "/places/zones.txt";

    private static final class Read {
        static final List<Zone> ZONES = read();
    }

    private ZoneList() {}

    private static List<Zone> read() {
        try (var file = Objects.requireNonNull(ZoneList.class.getResourceAsStream(FILE), FILE)) {
            var zones = new ArrayList<Zone>();
            for (var line :
                    new String(file.readAllBytes(), StandardCharsets.UTF_8).split("\n", 0)) {
                var cells = line.split("\t", -1);
                // a newer list than this Java knows may name zones that it does not
                if (TimeZones.faultOf(cells[3]) == null) {
                    zones.add(
                            new Zone(
                                    cells[3],
                                    cells[0],
                                    Double.parseDouble(cells[1]),
                                    Double.parseDouble(cells[2])));
                }
            }
            return List.copyOf(zones);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All of them by region, in the order of the alphabet; UTC last. */
    public static Map<String, List<Zone>> byRegion() {
        var regions = new LinkedHashMap<String, List<Zone>>();
        for (var zone : Read.ZONES) {
            regions.computeIfAbsent(zone.region(), region -> new ArrayList<>()).add(zone);
        }
        regions.put(Zone.utc().region(), List.of(Zone.utc()));
        return regions;
    }

    /**
     * The zone whose town is nearest, for a proposal: near a border it may be the neighbour's.
     *
     * @param country code; only its zones are looked at, unless it is null or has none
     */
    public static Zone nearest(PlaceText.Point place, @Nullable String country) {
        var own = Read.ZONES.stream().filter(zone -> zone.country().equals(country)).toList();
        return (own.isEmpty() ? Read.ZONES : own)
                .stream().min(Comparator.comparingDouble(zone -> away(place, zone))).orElseThrow();
    }

    /** The angle between two places seen from the middle of the earth, by its haversine. */
    private static double away(PlaceText.Point place, Zone zone) {
        double north = Math.toRadians(place.latitude());
        double other = Math.toRadians(zone.latitude());
        double up = Math.sin((north - other) / 2);
        double along = Math.sin(Math.toRadians(place.longitude() - zone.longitude()) / 2);
        return up * up + Math.cos(north) * Math.cos(other) * along * along;
    }
}
