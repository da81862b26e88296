package org.ripewood.platform;

import org.ripewood.platform.problems.Refused;

/**
 * Which part of a list is asked for.
 *
 * @param page from 0
 * @param size rows on a page, 1 to 200
 */
public record PageRequest(int page, int size) {

    public static final int MOST_ROWS = 200;

    public PageRequest {
        if (page < 0 || page > 1_000_000) {
            throw Refused.invalid("page", "expected 0 to 1000000, found " + page);
        }
        if (size < 1 || size > MOST_ROWS) {
            throw Refused.invalid("size", "expected 1 to %d, found %d".formatted(MOST_ROWS, size));
        }
    }
}
