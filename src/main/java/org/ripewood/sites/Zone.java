package org.ripewood.sites;

/**
 * A time zone by the town it is named after.
 *
 * @param id as the IANA database names it
 * @param country code by ISO 3166-1; empty for none
 */
public record Zone(String id, String country, double latitude, double longitude) {

    private static final String UTC = "Etc/UTC";

    static Zone utc() {
        return new Zone(UTC, "", 0, 0);
    }

    /** A part of the earth, as the id begins. */
    public String region() {
        return id.equals(UTC) || id.indexOf('/') < 0
                ? "Anywhere"
                : id.substring(0, id.indexOf('/'));
    }

    /** The town, and the country it lies in. */
    public String title() {
        var town = id.substring(id.indexOf('/') + 1).replace('_', ' ').replace("/", ", ");
        return country.isEmpty() ? town : town + ", " + Towns.countryName(country);
    }
}
