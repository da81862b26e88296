package org.ripewood.core.supply;

/**
 * A container of the stock.
 *
 * @param id tells it from all others
 * @param count how many there are
 */
public record OfferedContainer(long id, String name, Container container, int count) {

    public OfferedContainer {
        if (count < 0) {
            throw new IllegalArgumentException("a count is not negative, found " + count);
        }
    }
}
