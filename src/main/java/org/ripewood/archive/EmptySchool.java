package org.ripewood.archive;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Set;
import org.ripewood.platform.problems.Refused;

/** A school in which nobody is entered but registrars. */
final class EmptySchool {

    private static final Set<String> REGISTRARS = Set.of("person", "person_role");

    private static final String OTHERS =
            "select count(*) from person p where not exists (select 1 from person_role r"
                    + " where r.person_id = p.id and r.role = 'REGISTRAR')";

    private EmptySchool() {}

    static void require(Connection database, List<PlannedTable> tables) throws SQLException {
        if (count(database, OTHERS) > 0) {
            refuse("person");
        }
        for (var table : tables) {
            if (!REGISTRARS.contains(table.name())
                    && count(database, "select count(*) from " + table.name()) > 0) {
                refuse(table.field());
            }
        }
    }

    private static void refuse(String what) {
        throw Refused.conflict(
                "A whole school can only be brought into an empty one; here “%s” has rows."
                        .formatted(what),
                "Maybe bring in the record of one course or one tree instead.");
    }

    private static long count(Connection database, String query) throws SQLException {
        try (var statement = database.createStatement();
                var rows = statement.executeQuery(query)) {
            rows.next();
            return rows.getLong(1);
        }
    }
}
