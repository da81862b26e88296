package org.ripewood.archive;

import java.sql.Connection;
import java.sql.SQLException;

/**
 * New ids from a table's sequence, in blocks as the rooms' own entries take them: a sequence that
 * answers n has given away n to n + 49.
 */
final class NewIds {

    private static final int BLOCK = 50;

    private final Connection database;

    NewIds(Connection database) {
        this.database = database;
    }

    /** Ids for rows 1 to the number of rows, ascending; row 0 has none. */
    long[] of(String table, int rows) throws SQLException {
        var ids = new long[rows + 1];
        try (var next = database.prepareStatement("select nextval('%s_seq')".formatted(table))) {
            for (int row = 1; row <= rows; ) {
                try (var found = next.executeQuery()) {
                    found.next();
                    long first = found.getLong(1);
                    for (int taken = 0; taken < BLOCK && row <= rows; taken++) {
                        ids[row++] = first + taken;
                    }
                }
            }
        }
        return ids;
    }
}
