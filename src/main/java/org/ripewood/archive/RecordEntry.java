package org.ripewood.archive;

import static java.util.Objects.requireNonNull;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.IntegrityFaults;
import org.ripewood.platform.records.ColumnDescription.Meaning;
import org.ripewood.platform.records.TableDescription;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Enters the rows of a checked file, in the file's order and with new ids, so that what was entered
 * first is first here too.
 */
final class RecordEntry implements RecordFile.Reader {

    /** As every database names the rule that was broken. */
    private static final Pattern RULE = Pattern.compile("\"(?:public\\.)?([a-z_]+)[\" ]");

    private static final String PERSON = "person";
    private static final String LOGIN = "login";

    /** A row that names one that comes after it in its own table. */
    private record Ahead(long id, String column, long named) {}

    private final Connection database;
    private final RecordCheck checked;
    private final PicturesIn pictures;
    private final FileFaults faults;
    private final NewIds newIds;
    private final ExistingRows known;
    private final Map<String, long[]> ids = new HashMap<>();
    private final Map<String, boolean[]> met = new HashMap<>();
    private final List<Ahead> ahead = new ArrayList<>();
    private @Nullable PlannedTable table;
    private @Nullable PreparedStatement insert;
    private @Nullable PreparedStatement look;

    RecordEntry(Connection database, RecordCheck checked, PicturesIn pictures, FileFaults faults)
            throws SQLException {
        this.database = database;
        this.checked = checked;
        this.pictures = pictures;
        this.faults = faults;
        this.newIds = new NewIds(database);
        this.known = ExistingRows.in(database, checked.scope());
    }

    @Override
    public void header(Map<String, JsonNode> header) {
        // What it says has been judged.
    }

    @Override
    public void begin(PlannedTable begun, String pointer) {
        table = begun;
        int rows = checked.rows(begun.name());
        try {
            var names = new ArrayList<>(begun.columns().stream().map(PlannedColumn::name).toList());
            insert =
                    database.prepareStatement(
                            "insert into %s (%s) values (%s)"
                                    .formatted(
                                            begun.name(),
                                            String.join(", ", names),
                                            names.stream()
                                                    .map(name -> "?")
                                                    .collect(Collectors.joining(", "))));
            look = begun.numbered() ? null : database.prepareStatement(lookFor(begun.told()));
            if (begun.numbered()) {
                ids.put(begun.name(), newIds.of(begun.name(), rows));
                met.put(begun.name(), new boolean[rows + 1]);
            }
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String lookFor(TableDescription table) {
        return "select 1 from %s where %s"
                .formatted(
                        table.name(),
                        table.order().stream()
                                .map(name -> name + " = ?")
                                .collect(Collectors.joining(" and ")));
    }

    @Override
    public void row(int number, ObjectNode row, String pointer) {
        var of = requireNonNull(table);
        try {
            if (of.numbered() && isKnown(of, number, row)) {
                return;
            }
            var values = newValues(of, number, row);
            if (!hasItsPicture(of, number, row, values)) {
                return;
            }
            if (look != null && isKept(of, values)) {
                return;
            }
            var into = requireNonNull(insert);
            for (int at = 0; at < of.columns().size(); at++) {
                var column = of.columns().get(at);
                column.type().bind(into, at + 1, values.get(column.name()));
            }
            into.executeUpdate();
        } catch (SQLException e) {
            tell(e, pointer);
        }
    }

    /** Keeps the picture a row names; false when it is refused, and all of the file with it. */
    private boolean hasItsPicture(
            PlannedTable of, int number, ObjectNode row, Map<String, @Nullable Object> values) {
        if (of.picture().filter(column -> row.has(column.field())).isEmpty()) {
            return true;
        }
        var kept = pictures.keep(number, RecordCheck.values(of, row));
        values.putAll(kept);
        return !kept.isEmpty();
    }

    /** A row that stands for one that is here already gets its id. */
    private boolean isKnown(PlannedTable of, int number, ObjectNode row) {
        var id = known.find(of.name(), row);
        if (id == null) {
            return false;
        }
        requireNonNull(ids.get(of.name()))[number] = id;
        requireNonNull(met.get(of.name()))[number] = true;
        return true;
    }

    private boolean isKept(PlannedTable of, Map<String, @Nullable Object> values)
            throws SQLException {
        var key = requireNonNull(look);
        int at = 1;
        for (var name : of.told().order()) {
            for (var column : of.columns()) {
                if (column.name().equals(name)) {
                    column.type().bind(key, at++, values.get(name));
                }
            }
        }
        try (var found = key.executeQuery()) {
            return found.next();
        }
    }

    private Map<String, @Nullable Object> newValues(PlannedTable of, int number, ObjectNode row) {
        var values = RecordCheck.values(of, row);
        for (var column : of.travelling()) {
            var value = values.get(column.name());
            if (column.told().meaning() == Meaning.ID) {
                values.put(column.name(), id(of.name(), number));
            } else if (value instanceof Long named
                    && column.told().meaning() == Meaning.REFERENCE) {
                values.put(column.name(), named(of, number, column, named));
            }
        }
        if (of.name().equals(PERSON) && checked.scope() != Scope.Kind.SCHOOL) {
            values.put(LOGIN, known.freeLogin(id(PERSON, number)));
            values.put("active", false);
        }
        for (var column : of.columns()) {
            var fill = column.told().onEntry();
            if (fill != null && values.get(column.name()) == null) {
                values.put(column.name(), fill.apply(values));
            }
        }
        return values;
    }

    private @Nullable Long named(PlannedTable of, int number, PlannedColumn column, Long named) {
        var target = String.valueOf(column.told().table());
        if (target.equals(of.name()) && named > number) {
            ahead.add(new Ahead(id(target, number), column.name(), id(target, named)));
            return null;
        }
        return id(target, named);
    }

    private long id(String of, long number) {
        return requireNonNull(ids.get(of))[(int) number];
    }

    @Override
    public void end() {
        var of = requireNonNull(table);
        try {
            for (var one : ahead) {
                try (var update =
                        database.prepareStatement(
                                "update %s set %s = ? where id = ?"
                                        .formatted(of.name(), one.column()))) {
                    update.setLong(1, one.named());
                    update.setLong(2, one.id());
                    update.executeUpdate();
                }
            }
            requireNonNull(insert).close();
            if (look != null) {
                look.close();
            }
        } catch (SQLException e) {
            tell(e, "/tables");
        }
        ahead.clear();
    }

    private void tell(SQLException e, String pointer) {
        var state = String.valueOf(e.getSQLState());
        if (!IntegrityFaults.is(e) && !state.startsWith("22")) {
            throw new IllegalStateException(e);
        }
        var rule = RULE.matcher(String.valueOf(e.getMessage()).toLowerCase(java.util.Locale.ROOT));
        faults.end(
                pointer,
                rule.find()
                        ? "contradicts the rule “%s”".formatted(rule.group(1))
                        : "contradicts a rule of the record");
    }
}
