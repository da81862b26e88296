package org.ripewood.archive;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ObjectNode;

/**
 * What a file may find here already: the registrar of an empty school by login, and, for the record
 * of a course or tree, sites by name and place. PersonRows of such a file are never taken for
 * persons here, whatever they are called: nobody's name may stand under words from elsewhere.
 */
final class ExistingRows {

    private static final String FROM_FILE = "from-file-";

    private final Map<String, Long> logins = new HashMap<>();
    private final Map<String, Long> sites = new HashMap<>();

    private final Set<String> taken = new HashSet<>();

    private ExistingRows() {}

    static ExistingRows in(Connection database, Scope.Kind scope) throws SQLException {
        var known = new ExistingRows();
        try (var statement = database.createStatement()) {
            try (var rows =
                    statement.executeQuery(
                            "select login from person where login like '" + FROM_FILE + "%'")) {
                while (rows.next()) {
                    known.taken.add(rows.getString(1));
                }
            }
            if (scope == Scope.Kind.SCHOOL) {
                try (var rows = statement.executeQuery("select login, id from person")) {
                    while (rows.next()) {
                        known.logins.put(rows.getString(1), rows.getLong(2));
                    }
                }
            } else {
                try (var rows =
                        statement.executeQuery(
                                "select name, latitude, longitude, zone, id from site"
                                        + " order by id desc")) {
                    while (rows.next()) {
                        known.sites.put(
                                place(
                                        rows.getString(1),
                                        rows.getDouble(2),
                                        rows.getDouble(3),
                                        rows.getString(4)),
                                rows.getLong(5));
                    }
                }
            }
        }
        return known;
    }

    /** A login nobody has, for somebody who does not sign in. */
    String freeLogin(long id) {
        var login = FROM_FILE + id;
        while (!taken.add(login)) {
            login += "-";
        }
        return login;
    }

    @Nullable Long find(String table, ObjectNode row) {
        return switch (table) {
            case "person" -> logins.get(row.path("login").asString(""));
            case "site" ->
                    sites.get(
                            place(
                                    row.path("name").asString(""),
                                    row.path("latitude").asDouble(),
                                    row.path("longitude").asDouble(),
                                    row.path("zone").asString("")));
            default -> null;
        };
    }

    private static String place(String name, double latitude, double longitude, String zone) {
        return name + "\n" + latitude + "\n" + longitude + "\n" + zone;
    }
}
