package org.ripewood.archive;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Which rows belong to a course or a tree: what is part of it, the trees its students keep or
 * bring, and then the persons and sites all these rows name, so that the file needs nothing else.
 */
final class Selection {

    private static final String PERSON = "person";
    private static final String TREE = "tree";
    private static final String COURSE = "course";
    private static final String SITE = "site";

    private final Connection database;
    private final List<PlannedTable> tables;
    private final Scope scope;
    private final Set<Long> lost;
    private final Map<String, Set<Long>> ids = new HashMap<>();

    private Selection(Connection database, List<PlannedTable> tables, Scope scope, Set<Long> lost) {
        this.database = database;
        this.tables = tables.stream().filter(scope::has).toList();
        this.scope = scope;
        this.lost = lost;
    }

    /**
     * Ids by table, ascending; for rows without a number, of what they are part of.
     *
     * @param lost ids of rows whose picture cannot be had; what they alone name is left out as well
     */
    static Map<String, long[]> of(
            Connection database, List<PlannedTable> tables, Scope scope, Set<Long> lost)
            throws SQLException {
        var selection = new Selection(database, tables, scope, lost);
        selection.gather();
        return selection.ids.entrySet().stream()
                .collect(
                        Collectors.toMap(
                                Map.Entry::getKey,
                                entry -> entry.getValue().stream().mapToLong(id -> id).toArray()));
    }

    /** Ids of the trees a person keeps, or kept last of those that left the school. */
    static Set<Long> keptBy(Connection database, long personId) throws SQLException {
        return new Selection(database, List.of(), Scope.school(), Set.of())
                .where(TREE, "keeper_id", Set.of(personId));
    }

    /** Whoever keeps or kept a tree that is in a course's file. */
    static Set<Long> keepersIn(Connection database, List<PlannedTable> tables, long courseId)
            throws SQLException {
        var selection = new Selection(database, tables, Scope.course(courseId, Set.of()), Set.of());
        selection.gather();
        var trees = selection.of(TREE);
        var keepers = selection.select("select keeper_id from tree where", "id", trees);
        keepers.addAll(
                selection.select("select keeper_id from tree_keeping where", "tree_id", trees));
        return keepers;
    }

    /** How many rows nobody may read but whoever wrote them. */
    static long sealed(Connection database, List<PlannedTable> tables) throws SQLException {
        long sealed = 0;
        for (var table : tables) {
            var until = table.told().sealedUntil();
            if (until != null) {
                sealed +=
                        new Selection(database, List.of(), Scope.school(), Set.of())
                                .rows(
                                        "select count(*) from %s where %s is null"
                                                .formatted(table.name(), until))
                                .iterator()
                                .next();
            }
        }
        return sealed;
    }

    private void gather() throws SQLException {
        tables.forEach(table -> ids.put(table.name(), new TreeSet<>()));
        if (scope.kind() == Scope.Kind.COURSE) {
            of(COURSE).add(scope.id());
            addPartsOf(COURSE);
            var students =
                    rows(
                            "select person_id from membership where role = 'STUDENT' and"
                                    + " left_on is null and"
                                    + " course_id = "
                                    + scope.id());
            of(TREE).addAll(where(TREE, "keeper_id", students));
            addNamed(TREE);
            addSkillsOf(students);
        } else if (scope.kind() == Scope.Kind.PERSON) {
            gatherPerson(scope.id());
            return;
        } else {
            of(TREE).add(scope.id());
        }
        addPartsOf(TREE);
        addNamed(SITE);
        addNamed(PERSON);
        for (var table : tables) {
            var owner = table.ownerTable().orElse("");
            if (!table.numbered() && (owner.equals(PERSON) || owner.equals(SITE))) {
                of(table.name()).addAll(of(owner));
            }
        }
    }

    /**
     * The trees a person keeps with everything, and whatever else names them; what that in turn
     * names of others is not theirs.
     */
    private void gatherPerson(long personId) throws SQLException {
        var self = Set.of(personId);
        of(PERSON).add(personId);
        of(TREE).addAll(keptBy(database, personId));
        addPartsOf(TREE);
        for (var table : tables) {
            for (var reference : table.references()) {
                if (table.numbered() && PERSON.equals(reference.told().table())) {
                    of(table.name()).addAll(where(table, reference.name(), self));
                }
            }
        }
        for (var table : tables) {
            if (!table.numbered() && table.ownerTable().filter(PERSON::equals).isPresent()) {
                of(table.name()).add(personId);
            }
        }
        addNamed("class_session");
        addNamed(COURSE);
        addNamed(SITE);
    }

    /** Judgements of students; of others who happen to be named nothing but the name is told. */
    private void addSkillsOf(Collection<Long> students) throws SQLException {
        for (var table : tables) {
            if (table.numbered() && table.ownerTable().filter(PERSON::equals).isPresent()) {
                of(table.name()).addAll(where(table, ownerColumn(table), students));
            }
        }
    }

    /** Tables stand in order, so parts of parts are found in the same go. */
    private void addPartsOf(String root) throws SQLException {
        var within = new HashSet<>(Set.of(root));
        for (var table : tables) {
            var owner = table.ownerTable().orElse("");
            if (within.contains(owner)) {
                within.add(table.name());
                of(table.name())
                        .addAll(
                                table.numbered()
                                        ? where(table, ownerColumn(table), of(owner))
                                        : of(owner));
            }
        }
    }

    /** Rows of a table that selected rows name. */
    private void addNamed(String target) throws SQLException {
        for (var table : tables) {
            for (var reference : table.references()) {
                if (scope.has(reference) && target.equals(reference.told().table())) {
                    var key = table.numbered() ? "id" : ownerColumn(table);
                    of(target)
                            .addAll(
                                    select(
                                            "select distinct %s from %s where %s is not null and"
                                                    .formatted(
                                                            reference.name(),
                                                            table.name(),
                                                            reference.name()),
                                            key,
                                            of(table.name())));
                }
            }
        }
    }

    private static String ownerColumn(PlannedTable table) {
        var owner = table.told().owner();
        if (owner == null) {
            throw new IllegalArgumentException(table.name() + " is part of nothing");
        }
        return owner.name();
    }

    private Set<Long> of(String table) {
        return ids.computeIfAbsent(table, none -> new TreeSet<>());
    }

    private Set<Long> where(String table, String column, Collection<Long> values)
            throws SQLException {
        return select("select id from %s where".formatted(table), column, values);
    }

    /** Rows of a table, of which sealed ones are left out. */
    private Set<Long> where(PlannedTable table, String column, Collection<Long> values)
            throws SQLException {
        var open = scope.open(table, "").map(rule -> rule + " and").orElse("");
        var found =
                select("select id from %s where %s".formatted(table.name(), open), column, values);
        if (table.picture().isPresent()) {
            found.removeAll(lost);
        }
        return found;
    }

    private Set<Long> select(String start, String column, Collection<Long> values)
            throws SQLException {
        var found = new HashSet<Long>();
        var all = values.stream().mapToLong(id -> id).toArray();
        for (int from = 0; from < all.length; from += Chunks.ROWS) {
            found.addAll(rows("%s %s".formatted(start, Chunks.in(column, all, from))));
        }
        return found;
    }

    private Set<Long> rows(String query) throws SQLException {
        var found = new HashSet<Long>();
        try (var statement = database.createStatement();
                var rows = statement.executeQuery(query)) {
            while (rows.next()) {
                found.add(rows.getLong(1));
            }
        }
        return found;
    }

    /** Long lists of ids, a few hundred at a time. */
    static final class Chunks {

        static final int ROWS = 500;

        private Chunks() {}

        /** Ids are numbers of ours and never typed by anybody. */
        static String in(String column, long[] ids, int from) {
            return Arrays.stream(ids, from, Math.min(ids.length, from + ROWS))
                    .mapToObj(Long::toString)
                    .collect(Collectors.joining(", ", column + " in (", ")"));
        }
    }
}
