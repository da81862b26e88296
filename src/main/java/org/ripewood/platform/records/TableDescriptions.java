package org.ripewood.platform.records;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Fault;

/**
 * What a room keeps, told table by table: the one place that knows which column names what, and
 * which holds a person's words. The record as a file, a person's part of it and the forgetting of a
 * person all follow from it; a table or column nobody has said a word of fails the build.
 */
public interface TableDescriptions {

    /** The room's tables, those referred to before those that refer. */
    List<TableDescription> tables();

    /**
     * What the room has against a row from a file, beyond what the database's own rules say.
     *
     * @param row by column, with every column that files have; references are the file's numbers
     * @return faults by the field's name in files; none for other rooms' tables
     */
    default List<Fault> faults(String table, Map<String, @Nullable Object> row) {
        return List.of();
    }
}
