package org.ripewood.platform.records;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.records.ColumnDescription.Meaning;

/**
 * A table a room keeps.
 *
 * @param owner the column that names whose part a row is; null for what stands on its own
 * @param by the column that names who wrote a row's words; null when nobody did
 * @param about the column that names the person whom a row's words are about; null when they are
 *     about a tree or the school
 * @param schoolOnly whether no file of a tree or a course has it
 * @param sealedUntil the column that is empty while a row is for nobody but whoever wrote it; null
 *     when its rows are for all who reach them
 * @param order columns that put its rows in order: that of entry unless said otherwise, because of
 *     two readings of a day the later entered one counts
 * @param leftOut why no file has it; null when files have it
 * @param codes its columns that hold a code of the course content, and of what kind it is
 */
public record TableDescription(
        String name,
        @Nullable ColumnDescription owner,
        @Nullable String by,
        @Nullable String about,
        boolean schoolOnly,
        @Nullable String sealedUntil,
        List<ColumnDescription> columns,
        List<String> order,
        @Nullable String leftOut,
        Map<String, CodeKind> codes) {

    /** What a code of the course content names. */
    public enum CodeKind {
        SPECIES,
        TECHNIQUE,
        LESSON,
        RUBRIC
    }

    public TableDescription {
        codes = Map.copyOf(codes);
        columns = List.copyOf(columns);
        order = List.copyOf(order);
    }

    /** Begins the description of a table. */
    public static Telling named(String name) {
        return new Telling(name);
    }

    /** A table no file has, and why. */
    public static TableDescription leftOut(String name, String why) {
        return new TableDescription(
                name, null, null, null, false, null, List.of(), List.of(), why, Map.of());
    }

    /** A table no file has, whose rows end when the person in that column is forgotten. */
    public static TableDescription secret(String name, String personColumn, String why) {
        return new TableDescription(
                name, null, null, personColumn, false, null, List.of(), List.of(), why, Map.of());
    }

    /** Whether files have it. */
    public boolean travels() {
        return leftOut == null;
    }

    /** Whether its rows have a number of their own, from a sequence named after it. */
    public boolean numbered() {
        return columns.stream().anyMatch(column -> column.meaning() == Meaning.ID);
    }

    /** The columns files have. */
    public List<ColumnDescription> travelling() {
        return columns.stream().filter(ColumnDescription::travels).toList();
    }

    /** The columns that name rows, of those files have. */
    public List<ColumnDescription> references() {
        return travelling().stream().filter(column -> column.table() != null).toList();
    }

    /** Its name in files: {@code treeKeeping} for {@code tree_keeping}. */
    public String field() {
        return camel(name);
    }

    /** A name of the database as files write it: {@code treeKeeping} for {@code tree_keeping}. */
    public static String camel(String name) {
        var words = name.split("_", -1);
        var camel = new StringBuilder(words[0]);
        for (int i = 1; i < words.length; i++) {
            camel.append(Character.toUpperCase(words[i].charAt(0))).append(words[i].substring(1));
        }
        return camel.toString();
    }

    /** A description being told. */
    public static final class Telling {

        private final String name;
        private final Map<String, ColumnDescription> columns = new LinkedHashMap<>();
        private final List<String> order = new ArrayList<>();
        private final Map<String, CodeKind> codes = new LinkedHashMap<>();
        private @Nullable ColumnDescription owner;
        private @Nullable String by;
        private @Nullable String about;
        private boolean schoolOnly;
        private @Nullable String sealedUntil;

        private Telling(String name) {
            this.name = name;
        }

        /** Its rows have a number of their own, {@code id}. */
        public Telling numbered() {
            order.add("id");
            return add(ColumnDescription.of("id", Meaning.ID));
        }

        /** Its rows are put in order by these columns and not by when they were entered. */
        public Telling orderedBy(String... names) {
            order.clear();
            order.addAll(List.of(names));
            return this;
        }

        /** Whose part a row is: it goes where its owner goes. */
        public Telling partOf(String column, String table) {
            refers(column, table);
            owner = columns.get(column);
            return this;
        }

        /** The person whom the row's words are about. */
        public Telling about(String column) {
            about = column;
            return this;
        }

        /** No file of a tree or a course has it. */
        public Telling schoolOnly() {
            schoolOnly = true;
            return this;
        }

        /**
         * While that column is empty a row is for nobody but whoever wrote it: no file has it but
         * what they take out of their own record.
         */
        public Telling sealedUntil(String column) {
            sealedUntil = column;
            return this;
        }

        /** A column that names a row of another table. */
        public Telling refers(String column, String table) {
            return add(
                    new ColumnDescription(
                            column, Meaning.REFERENCE, table, List.of(), null, null, false));
        }

        /** The same, in no file of a tree or a course. */
        public Telling refersAtSchool(String column, String table) {
            return add(
                    new ColumnDescription(
                            column, Meaning.REFERENCE, table, List.of(), null, null, true));
        }

        /**
         * A yes or no that is in no file of a tree or a course, and no where a file says nothing.
         */
        public Telling flagAtSchool(String column) {
            return add(
                    new ColumnDescription(
                            column, Meaning.PLAIN, null, List.of(), null, row -> false, true));
        }

        /** The person who wrote the row. */
        public Telling writtenBy(String column) {
            by = column;
            return refers(column, "person");
        }

        public Telling plain(String... names) {
            Arrays.stream(names).forEach(each -> add(ColumnDescription.of(each, Meaning.PLAIN)));
            return this;
        }

        /** A column that holds a code of the course content. */
        public Telling code(String column, CodeKind kind) {
            codes.put(column, kind);
            return plain(column);
        }

        /** A column that holds one of a closed list of words. */
        public Telling oneOf(String column, List<String> words) {
            return add(
                    new ColumnDescription(column, Meaning.PLAIN, null, words, null, null, false));
        }

        public Telling oneOf(String column, Enum<?>[] words) {
            return oneOf(column, Arrays.stream(words).map(Enum::name).toList());
        }

        /** What somebody wrote in their own words. */
        public Telling words(String... names) {
            Arrays.stream(names).forEach(each -> add(ColumnDescription.of(each, Meaning.WORDS)));
            return this;
        }

        /** What says who a person is. */
        public Telling personal(String... names) {
            Arrays.stream(names).forEach(each -> add(ColumnDescription.of(each, Meaning.PERSONAL)));
            return this;
        }

        /** How a person signs in. */
        public Telling signIn(String... names) {
            Arrays.stream(names).forEach(each -> add(ColumnDescription.of(each, Meaning.SIGN_IN)));
            return this;
        }

        /** A verdict as it was told, as JSON. */
        public Telling told(String column) {
            return add(ColumnDescription.of(column, Meaning.TOLD));
        }

        /**
         * The column that names the row's picture, which {@link PictureDescriptions} knows more of.
         */
        public Telling picture(String column) {
            return add(ColumnDescription.of(column, Meaning.PICTURE));
        }

        /** A column no file has, why, and what a row from a file gets there. */
        public Telling leftOut(
                String column,
                String why,
                Function<Map<String, @Nullable Object>, @Nullable Object> onEntry) {
            return add(
                    new ColumnDescription(
                            column, Meaning.PLAIN, null, List.of(), why, onEntry, false));
        }

        /** A column no file has, why, and that it is left empty when a row comes from a file. */
        public Telling leftOut(String column, String why) {
            return add(
                    new ColumnDescription(
                            column, Meaning.PLAIN, null, List.of(), why, null, false));
        }

        /** How often a row was changed, which begins anew with a row from a file. */
        public Telling version() {
            return leftOut("version", "counts changes for those who edit at once", row -> 0L);
        }

        /** Described for the sake of its words, though no file has the table, and why. */
        public TableDescription staysHere(String why) {
            var told = done();
            return new TableDescription(
                    name,
                    told.owner(),
                    by,
                    about,
                    schoolOnly,
                    sealedUntil,
                    told.columns(),
                    order,
                    why,
                    told.codes());
        }

        public TableDescription done() {
            if (order.isEmpty()) {
                throw new IllegalArgumentException("rows of %s have no order".formatted(name));
            }
            return new TableDescription(
                    name,
                    owner,
                    by,
                    about,
                    schoolOnly,
                    sealedUntil,
                    List.copyOf(columns.values()),
                    order,
                    null,
                    codes);
        }

        private Telling add(ColumnDescription column) {
            if (columns.put(column.name(), column) != null) {
                throw new IllegalArgumentException(
                        "%s.%s is described twice".formatted(name, column.name()));
            }
            return this;
        }
    }
}
