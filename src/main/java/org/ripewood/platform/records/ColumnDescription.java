package org.ripewood.platform.records;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A column of a kept table, by what it means; its type, length and whether it may be empty stand in
 * the migration alone.
 *
 * @param table the table it refers to; null when it refers to none
 * @param oneOf the words it may hold; empty for any
 * @param leftOut why no file has it; null when files have it
 * @param onEntry what it is filled with when a file is entered that has nothing there, from the
 *     row's other columns; null where nothing is to be filled in
 * @param schoolOnly whether no file of a tree or a course has it
 */
public record ColumnDescription(
        String name,
        Meaning meaning,
        @Nullable String table,
        List<String> oneOf,
        @Nullable String leftOut,
        @Nullable Function<Map<String, @Nullable Object>, @Nullable Object> onEntry,
        boolean schoolOnly) {

    /** What a column is about. */
    public enum Meaning {
        /** Names the row itself. */
        ID,
        /** Names a row of another table, or of the same. */
        REFERENCE,
        /** Of the tree, the course, the school. */
        PLAIN,
        /** Somebody's own words, which may tell of a person. */
        WORDS,
        /** Says who a person is. */
        PERSONAL,
        /** How a person signs in, which only a school's own file tells. */
        SIGN_IN,
        /** A verdict as it was told, with the name of whoever saw the evidence. */
        TOLD,
        /** Names a picture that lies beside the database; in files, the entry that has it. */
        PICTURE
    }

    public ColumnDescription {
        oneOf = List.copyOf(oneOf);
    }

    static ColumnDescription of(String name, Meaning meaning) {
        return new ColumnDescription(
                name, meaning, null, List.of(), null, null, meaning == Meaning.SIGN_IN);
    }

    /** Whether files have it. */
    public boolean travels() {
        return leftOut == null;
    }

    /** Whether a file may have nothing there, as those from before it was kept. */
    public boolean mayBeMissing() {
        return travels() && onEntry != null;
    }

    /** Its name in files: {@code keeperId} for {@code keeper_id}; they know no keys of bytes. */
    public String field() {
        return meaning == Meaning.PICTURE ? "picture" : TableDescription.camel(name);
    }

    /** The name in files of the table it refers to; empty when it refers to none. */
    public String targetField() {
        return table == null ? "" : TableDescription.camel(table);
    }
}
