package org.ripewood.web.sites;

import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.math.BigDecimal;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Refused;
import org.ripewood.sites.PlaceText;
import org.ripewood.sites.Town;
import org.ripewood.sites.Towns;
import org.ripewood.sites.Zone;
import org.ripewood.sites.ZoneList;

/** A place as it is asked for in one field, and the zones that can be chosen. */
final class PlaceForm {

    private PlaceForm() {}

    /**
     * A place that a site can be entered at.
     *
     * @param name of the town; empty for coordinates
     * @param lies the region and country it lies in
     * @param place its coordinates, as the field takes them
     * @param zone proposed for it
     */
    record Found(String name, String lies, String place, String zone) {

        /** The page that adds a site there. */
        public String href() {
            return "/sites/new?place=%s&name=%s".formatted(encoded(place), encoded(name));
        }

        private static String encoded(String text) {
            return URLEncoder.encode(text, StandardCharsets.UTF_8);
        }

        static Found of(PlaceText.Point point) {
            return new Found("", "", written(point), ZoneList.nearest(point, null).id());
        }

        static Found of(Town town) {
            var zone = ZoneList.nearest(town.point(), town.country());
            return new Found(town.name(), town.lies(), written(town.point()), zone.id());
        }
    }

    /**
     * Places that were meant: the one of coordinates, or towns of that name.
     *
     * @throws Refused 400 when it is no place on earth, or no town of that name is known
     */
    static List<Found> find(String typed) {
        if (typed.isBlank()) {
            throw Refused.invalid(
                    PlaceText.FIELD,
                    "expected the name of a town, or latitude and longitude, found nothing");
        }
        var point = PlaceText.read(typed);
        if (point.isPresent()) {
            return List.of(Found.of(point.get()));
        }
        var towns = Towns.find(typed);
        if (towns.isEmpty()) {
            throw Refused.invalid(
                    PlaceText.FIELD,
                    "no town called “%s” is known here. Maybe its English name, a larger town near it, or latitude and longitude."
                            .formatted(typed.strip()));
        }
        return towns.stream().map(Found::of).toList();
    }

    /**
     * The form with its place as latitude and longitude; as it is when it has no such field.
     *
     * @throws Refused 400 when the field holds no coordinates
     */
    static MultivaluedMap<String, String> inDegrees(MultivaluedMap<String, String> form) {
        var typed = form.getFirst(PlaceText.FIELD);
        if (typed == null) {
            return form;
        }
        var point =
                PlaceText.read(typed)
                        .orElseThrow(
                                () ->
                                        Refused.invalid(
                                                PlaceText.FIELD,
                                                "expected latitude and longitude here. Maybe look"
                                                        + " the town up on the page that adds a site."));
        var degrees = new MultivaluedHashMap<String, String>(form);
        degrees.remove(PlaceText.FIELD);
        degrees.putSingle("latitude", plain(point.latitude()));
        degrees.putSingle("longitude", plain(point.longitude()));
        return degrees;
    }

    static String written(PlaceText.Point point) {
        return plain(point.latitude()) + ", " + plain(point.longitude());
    }

    private static String plain(double degrees) {
        return BigDecimal.valueOf(degrees).stripTrailingZeros().toPlainString();
    }

    /** Zones by region; with the one of now among them, whatever it is. */
    static Map<String, List<Zone>> zones(@Nullable String now) {
        var regions = ZoneList.byRegion();
        var known = regions.values().stream().flatMap(List::stream).map(Zone::id).toList();
        if (now != null && !now.isEmpty() && !known.contains(now)) {
            regions.put("As it is", List.of(new Zone(now, "", 0, 0)));
        }
        return regions;
    }
}
