package org.ripewood.archive;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.platform.records.TableDescriptions;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Judges a file before anything of it is entered: every field, every row named, that rows of one
 * tree name rows of the same tree, that the file of a tree or a course holds that one and nothing
 * else, and the rooms' own rules.
 */
final class RecordCheck implements RecordFile.Reader {

    private static final Set<String> HEADER =
            Set.of("format", "formatVersion", "contentRevision", "exportedAt", "scope", "named");

    /** A row named that is not there yet, of the table itself. */
    private record Ahead(long number, int owner, String pointer) {}

    private final List<PlannedTable> tables;
    private final FileFaults faults;
    private final Iterable<TableDescriptions> rooms;
    private final PicturesSent pictures;
    private final Map<String, Integer> counts = new HashMap<>();

    /** For each row the number of what it is part of; 0 for none. */
    private final Map<String, int[]> owners = new HashMap<>();

    private final List<Ahead> ahead = new ArrayList<>();
    private final Set<String> keys = new HashSet<>();

    /** PersonRows and sites that rows name, by table and number. */
    private final Map<String, BitSet> named = new HashMap<>();

    /** Where each table begins. */
    private final Map<String, String> begun = new HashMap<>();

    private Scope.Kind scope = Scope.Kind.SCHOOL;
    private @Nullable PlannedTable table;
    private Map<String, PlannedColumn> fields = Map.of();

    RecordCheck(
            List<PlannedTable> tables,
            FileFaults faults,
            Iterable<TableDescriptions> rooms,
            PicturesSent pictures) {
        this.tables = List.copyOf(tables);
        this.faults = faults;
        this.rooms = rooms;
        this.pictures = pictures;
    }

    Scope.Kind scope() {
        return scope;
    }

    int rows(String tableName) {
        return counts.getOrDefault(tableName, 0);
    }

    int rows() {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }

    @Override
    public void header(Map<String, JsonNode> header) {
        for (var name : header.keySet()) {
            if (!HEADER.contains(name)) {
                faults.add("/" + name, "is not expected here." + Suggestion.maybe(HEADER, name));
            }
        }
        if (!RecordWriter.FORMAT.equals(text(header, "format"))) {
            faults.end("/format", "expected “%s”".formatted(RecordWriter.FORMAT));
        }
        var version = header.get("formatVersion");
        if (version == null
                || !ColumnType.WHOLE.fits(version)
                || version.longValue() != RecordWriter.FORMAT_VERSION) {
            faults.end(
                    "/formatVersion",
                    "expected %d, found %s".formatted(RecordWriter.FORMAT_VERSION, version));
        }
        require(header, "contentRevision", ColumnType.TEXT);
        require(header, "exportedAt", ColumnType.MOMENT);
        require(header, "named", ColumnType.FLAG);
        var kinds = Arrays.stream(Scope.Kind.values()).map(Enum::name).toList();
        var told = text(header, "scope");
        if (told.equals(Scope.Kind.PERSON.name())) {
            faults.end("/scope", "a person's own record is theirs to read; no school takes it in");
        }
        if (kinds.contains(told)) {
            scope = Scope.Kind.valueOf(told);
        } else {
            faults.end("/scope", "expected one of %s".formatted(String.join(", ", kinds)));
        }
    }

    private void require(Map<String, JsonNode> header, String name, ColumnType type) {
        var value = header.get(name);
        if (value == null || !type.fits(value)) {
            faults.add("/" + name, "expected " + type.words());
        }
    }

    private static String text(Map<String, JsonNode> header, String name) {
        var value = header.get(name);
        return value == null ? "" : value.asString("");
    }

    @Override
    public void begin(PlannedTable beginning, String pointer) {
        if (!scope.holds(beginning, tables)) {
            faults.end(
                    pointer + "/table",
                    "a %s's file has no “%s”".formatted(word(), beginning.field()));
        }
        table = beginning;
        fields = beginning.byField();
        counts.put(beginning.name(), 0);
        owners.put(beginning.name(), new int[16]);
        begun.put(beginning.name(), pointer);
        keys.clear();
    }

    private String word() {
        return scope.name().toLowerCase(Locale.ROOT);
    }

    /** What can be said only once all rows are known. */
    void finish() {
        if (scope == Scope.Kind.SCHOOL) {
            return;
        }
        // of a row that could not be read nobody knows what it names
        boolean allRead = faults.none();
        if (rows(scope.root()) != 1) {
            faults.add(
                    begun.getOrDefault(scope.root(), "/tables"),
                    "expected one %s in a %s's file, found %d"
                            .formatted(word(), word(), rows(scope.root())));
        }
        for (var of : allRead ? Scope.NAMED_ONLY : List.<String>of()) {
            var known = named.getOrDefault(of, new BitSet());
            for (int row = known.nextClearBit(1);
                    row <= rows(of);
                    row = known.nextClearBit(row + 1)) {
                faults.add(
                        "%s/rows/%d".formatted(begun.get(of), row - 1),
                        "expected a %s that another row names, found one that none does"
                                .formatted(of));
            }
        }
    }

    @Override
    public void row(int number, ObjectNode row, String pointer) {
        var of = requireNonNull(table);
        counts.put(of.name(), number);
        boolean readable = true;
        for (var name : row.propertyNames()) {
            var column = fields.get(name);
            var fault =
                    column == null
                            ? "is not expected here." + Suggestion.maybe(fields.keySet(), name)
                            : column.faultOf(row.path(name));
            if (fault != null) {
                faults.add(pointer + "/" + name, fault);
                readable = false;
            }
        }
        for (var column : of.travelling()) {
            if (!column.mayBeEmpty() && !row.has(column.field()) && !isOptional(column)) {
                faults.add(pointer + "/" + column.field(), "expected a value, found nothing");
                readable = false;
            }
        }
        noteOwner(of, number, row);
        if (readable) {
            checkMeaning(of, number, row, pointer);
        }
    }

    private boolean isOptional(PlannedColumn column) {
        return column.told().mayBeMissing()
                || (scope != Scope.Kind.SCHOOL && column.told().schoolOnly());
    }

    private void checkMeaning(PlannedTable of, int number, ObjectNode row, String pointer) {
        if (of.numbered() && row.path("id").asLong(0) != number) {
            faults.add(
                    pointer + "/id",
                    "expected %d, the row's number in the file, found %s"
                            .formatted(number, row.path("id")));
        }
        for (var reference : of.references()) {
            if (row.has(reference.field())) {
                checkReference(of, number, reference, row, pointer);
            }
        }
        if (!of.numbered() && !keys.add(key(of, row))) {
            faults.add(pointer, "expected another key than an earlier row's");
        }
        checkPicture(of, number, row, pointer);
        var values = values(of, row);
        for (var room : rooms) {
            room.faults(of.name(), values)
                    .forEach(fault -> faults.add(pointer + "/" + fault.field(), fault.message()));
        }
    }

    private void checkPicture(PlannedTable of, int number, ObjectNode row, String pointer) {
        var column = of.picture().orElse(null);
        if (column != null && row.has(column.field())) {
            var fault = pictures.faultOf(number, row.path(column.field()).stringValue());
            if (fault != null) {
                faults.add(pointer + "/" + column.field(), fault);
            }
        }
    }

    private void checkReference(
            PlannedTable of, int number, PlannedColumn reference, ObjectNode row, String pointer) {
        var target = String.valueOf(reference.told().table());
        long toldNumber = row.path(reference.field()).longValue();
        var where = pointer + "/" + reference.field();
        if (target.equals(of.name())) {
            ahead.add(new Ahead(toldNumber, owner(of.name(), number), where));
            return;
        }
        if (toldNumber > rows(target)) {
            faults.add(where, missing(toldNumber, reference));
        } else if (!reference.told().equals(of.told().owner())) {
            named.computeIfAbsent(target, none -> new BitSet()).set((int) toldNumber);
            requireSameOwner(of, number, target, (int) toldNumber, where);
        }
    }

    /** A tree's readings are of its own wounds. */
    private void requireSameOwner(
            PlannedTable of, int number, String target, int named, String where) {
        int theirs = owner(target, named);
        if (theirs != 0 && isTree(of) && owner(of.name(), number) != theirs) {
            faults.add(where, "expected a row of the same tree, found one of another");
        }
    }

    private static boolean isTree(PlannedTable of) {
        return of.ownerTable().filter("tree"::equals).isPresent();
    }

    private static String missing(long named, PlannedColumn reference) {
        return "there is no row %d of “%s” in the file"
                .formatted(named, reference.told().targetField());
    }

    private void noteOwner(PlannedTable of, int number, ObjectNode row) {
        var owner = of.told().owner();
        var known = requireNonNull(owners.get(of.name()));
        if (number >= known.length) {
            known = Arrays.copyOf(known, known.length * 2);
            owners.put(of.name(), known);
        }
        known[number] = owner == null ? 0 : row.path(owner.field()).asInt(0);
    }

    private int owner(String of, int number) {
        var known = owners.get(of);
        return known == null || number >= known.length ? 0 : known[number];
    }

    private static String key(PlannedTable of, ObjectNode row) {
        var key = new StringBuilder();
        for (var name : of.told().order()) {
            of.travelling().stream()
                    .filter(column -> column.name().equals(name))
                    .forEach(column -> key.append(row.path(column.field())).append(' '));
        }
        return key.toString();
    }

    static Map<String, @Nullable Object> values(PlannedTable of, ObjectNode row) {
        var values = new HashMap<String, @Nullable Object>();
        for (var column : of.travelling()) {
            var value = row.path(column.field());
            values.put(column.name(), value.isMissingNode() ? null : column.type().read(value));
        }
        return values;
    }

    @Override
    public void end() {
        var of = requireNonNull(table);
        for (var one : ahead) {
            if (one.number() > rows(of.name())) {
                faults.add(
                        one.pointer(),
                        "there is no row %d of “%s” in the file"
                                .formatted(one.number(), of.field()));
            } else if (owner(of.name(), (int) one.number()) != one.owner()) {
                faults.add(one.pointer(), "expected a row of the same tree, found one of another");
            }
        }
        ahead.clear();
    }
}
