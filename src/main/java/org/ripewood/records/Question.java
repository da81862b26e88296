package org.ripewood.records;

/**
 * What is asked before an odd value is kept.
 *
 * @param key names oddity, place and value, so that a yes to one value is none to another
 * @param field of the series the value stands in, such as {@code diameters[2].diameterMm}
 * @param question the value, what was there before and when, and one guess
 */
public record Question(String key, String field, String question) {

    /** What a key looks like. */
    public static final String KEY = "[a-z]+:[a-z0-9_.]+:[0-9.]+";
}
