package org.ripewood.archive;

import java.math.BigDecimal;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.RecordDays;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The types our migrations use: each in the database, in a file and in the file's schema. */
enum ColumnType {
    WHOLE("integer", "a whole number") {
        @Override
        boolean fits(JsonNode node) {
            return node.isIntegralNumber() && node.canConvertToLong();
        }

        @Override
        Object read(JsonNode node) {
            return node.longValue();
        }

        @Override
        Object read(ResultSet rows, int at) throws SQLException {
            return rows.getLong(at);
        }

        @Override
        int sqlType() {
            return Types.BIGINT;
        }
    },
    REAL("number", "a number") {
        @Override
        boolean fits(JsonNode node) {
            return node.isNumber() && Double.isFinite(node.doubleValue());
        }

        @Override
        Object read(JsonNode node) {
            return node.doubleValue();
        }

        @Override
        Object read(ResultSet rows, int at) throws SQLException {
            return rows.getDouble(at);
        }

        @Override
        int sqlType() {
            return Types.DOUBLE;
        }
    },
    DECIMAL("number", "a number") {
        @Override
        boolean fits(JsonNode node) {
            return node.isNumber() && Double.isFinite(node.doubleValue());
        }

        @Override
        Object read(JsonNode node) {
            return new BigDecimal(node.asString());
        }

        @Override
        Object read(ResultSet rows, int at) throws SQLException {
            return rows.getBigDecimal(at);
        }

        @Override
        int sqlType() {
            return Types.NUMERIC;
        }
    },
    FLAG("boolean", "true or false") {
        @Override
        boolean fits(JsonNode node) {
            return node.isBoolean();
        }

        @Override
        Object read(JsonNode node) {
            return node.booleanValue();
        }

        @Override
        Object read(ResultSet rows, int at) throws SQLException {
            return rows.getBoolean(at);
        }

        @Override
        int sqlType() {
            return Types.BOOLEAN;
        }
    },
    TEXT("string", "a text") {
        @Override
        boolean fits(JsonNode node) {
            return node.isString();
        }

        @Override
        Object read(JsonNode node) {
            return node.stringValue();
        }

        @Override
        Object read(ResultSet rows, int at) throws SQLException {
            return rows.getString(at);
        }

        @Override
        int sqlType() {
            return Types.VARCHAR;
        }
    },
    DAY("string", "a day as 2026-02-20, from 1900 to 2199") {
        @Override
        boolean fits(JsonNode node) {
            return parses(() -> requireKnown((LocalDate) read(node)));
        }

        @Override
        Object read(JsonNode node) {
            return LocalDate.parse(node.asString(""));
        }

        @Override
        Object read(ResultSet rows, int at) throws SQLException {
            return rows.getObject(at, LocalDate.class);
        }

        @Override
        int sqlType() {
            return Types.DATE;
        }
    },
    TIME("string", "a time of day as 09:30:00") {
        @Override
        boolean fits(JsonNode node) {
            return parses(() -> read(node));
        }

        @Override
        Object read(JsonNode node) {
            return LocalTime.parse(node.asString(""));
        }

        @Override
        Object read(ResultSet rows, int at) throws SQLException {
            return rows.getObject(at, LocalTime.class);
        }

        @Override
        int sqlType() {
            return Types.TIME;
        }
    },
    MOMENT("string", "a moment as 2026-02-20T09:30:00Z, from 1900 to 2199") {
        @Override
        boolean fits(JsonNode node) {
            return parses(() -> requireKnown(((OffsetDateTime) read(node)).toLocalDate()));
        }

        @Override
        Object read(JsonNode node) {
            return OffsetDateTime.parse(node.asString("")).withOffsetSameInstant(ZoneOffset.UTC);
        }

        @Override
        Object read(ResultSet rows, int at) throws SQLException {
            return rows.getObject(at, OffsetDateTime.class);
        }

        @Override
        int sqlType() {
            return Types.TIMESTAMP_WITH_TIMEZONE;
        }
    };

    private final String jsonType;
    private final String words;

    ColumnType(String jsonType, String words) {
        this.jsonType = jsonType;
        this.words = words;
    }

    /** By the name of the type in {@code information_schema}, of H2 and of PostgreSQL. */
    static ColumnType of(String databaseName) {
        var name = databaseName.toLowerCase(Locale.ROOT);
        return switch (name) {
            case "bigint", "integer" -> WHOLE;
            case "double precision" -> REAL;
            case "numeric" -> DECIMAL;
            case "boolean" -> FLAG;
            case "character varying" -> TEXT;
            case "date" -> DAY;
            case "time", "time without time zone" -> TIME;
            case "timestamp with time zone" -> MOMENT;
            default ->
                    throw new IllegalStateException(
                            "no column of type %s can be written to a file".formatted(name));
        };
    }

    abstract boolean fits(JsonNode node);

    /** The value of a node that fits, as the database takes it. */
    abstract Object read(JsonNode node);

    abstract Object read(ResultSet rows, int at) throws SQLException;

    abstract int sqlType();

    String words() {
        return words;
    }

    @Nullable Object readOrNull(ResultSet rows, int at) throws SQLException {
        var value = read(rows, at);
        return rows.wasNull() ? null : value;
    }

    void bind(PreparedStatement into, int at, @Nullable Object value) throws SQLException {
        if (value == null) {
            into.setNull(at, sqlType());
        } else {
            into.setObject(at, value);
        }
    }

    void write(JsonGenerator to, Object value) {
        if (value instanceof Long number) {
            to.writeNumber(number);
        } else if (value instanceof Double number) {
            to.writeNumber(number);
        } else if (value instanceof BigDecimal number) {
            to.writeNumber(new BigDecimal(number.stripTrailingZeros().toPlainString()));
        } else if (value instanceof Boolean flag) {
            to.writeBoolean(flag);
        } else {
            to.writeString(text(value));
        }
    }

    private static String text(Object value) {
        if (value instanceof OffsetDateTime moment) {
            return DateTimeFormatter.ISO_INSTANT.format(moment);
        }
        return value instanceof LocalTime time
                ? DateTimeFormatter.ISO_LOCAL_TIME.format(time)
                : value.toString();
    }

    /** What the file's schema says of it. */
    void describe(ObjectNode schema) {
        schema.put("type", jsonType);
        switch (this) {
            case DAY -> schema.put("format", "date").put("pattern", "^\\d{4}-\\d{2}-\\d{2}$");
            case TIME -> schema.put("pattern", "^\\d{2}:\\d{2}(:\\d{2}(\\.\\d{1,9})?)?$");
            case MOMENT -> schema.put("format", "date-time");
            default -> {}
        }
    }

    private static boolean parses(Runnable reading) {
        try {
            reading.run();
            return true;
        } catch (DateTimeException e) {
            return false;
        }
    }

    private static void requireKnown(LocalDate day) {
        if (!RecordDays.holds(day)) {
            throw new DateTimeException("out of the years a file may tell of: " + day);
        }
    }
}
