package org.ripewood.sites;

/**
 * A line of a file of daily readings that was left out.
 *
 * @param line counted from 1
 * @param found what stood there, cut short when long
 * @param expected what should have stood there
 */
public record ReadingsFault(long line, String found, String expected) {

    private static final int SHOWN = 60;

    public ReadingsFault {
        found = found.length() <= SHOWN ? found : found.substring(0, SHOWN) + "…";
    }
}
