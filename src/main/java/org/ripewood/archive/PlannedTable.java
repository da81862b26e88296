package org.ripewood.archive;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ripewood.platform.records.ColumnDescription.Meaning;
import org.ripewood.platform.records.TableDescription;

/** A described table with what the database says of its columns. */
record PlannedTable(TableDescription told, List<PlannedColumn> columns) {

    PlannedTable {
        columns = List.copyOf(columns);
    }

    String name() {
        return told.name();
    }

    String field() {
        return told.field();
    }

    boolean numbered() {
        return told.numbered();
    }

    /** The columns files have. */
    List<PlannedColumn> travelling() {
        return columns.stream().filter(column -> column.told().travels()).toList();
    }

    /** The column that names a row's picture. */
    Optional<PlannedColumn> picture() {
        return columns.stream()
                .filter(column -> column.told().meaning() == Meaning.PICTURE)
                .findFirst();
    }

    Map<String, PlannedColumn> byField() {
        return travelling().stream()
                .collect(Collectors.toMap(PlannedColumn::field, column -> column));
    }

    /** The table its rows are part of. */
    Optional<String> ownerTable() {
        var owner = told.owner();
        return owner == null ? Optional.empty() : Optional.ofNullable(owner.table());
    }

    /** Columns that name rows of other tables or of itself. */
    List<PlannedColumn> references() {
        return travelling().stream()
                .filter(column -> column.told().meaning() == Meaning.REFERENCE)
                .toList();
    }
}
