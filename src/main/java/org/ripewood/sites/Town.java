package org.ripewood.sites;

/**
 * A town found by its name.
 *
 * @param region as its country is divided; empty when not known
 * @param country code by ISO 3166-1
 */
public record Town(String name, String region, String country, double latitude, double longitude) {

    public PlaceText.Point point() {
        return new PlaceText.Point(latitude, longitude);
    }

    /** Where it lies, in words. */
    public String lies() {
        var land = Towns.countryName(country);
        return region.isEmpty() ? land : region + ", " + land;
    }
}
