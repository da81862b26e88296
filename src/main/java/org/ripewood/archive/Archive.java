package org.ripewood.archive;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.transaction.Transactional;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.TreeMap;
import javax.sql.DataSource;
import org.ripewood.audit.Audit;
import org.ripewood.audit.Deed;
import org.ripewood.course.CourseContent;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.KeptTables;
import org.ripewood.platform.Problem;
import org.ripewood.platform.Refused;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.trees.Trees;

/**
 * The record as a file. It is written from one moment of the database and read back in one
 * transaction; both go past the rooms' entities, which would hold a whole school in memory.
 */
@ApplicationScoped
@Transactional(Transactional.TxType.NOT_SUPPORTED)
public class Archive {

    /** A whole school takes minutes. */
    private static final int MOST_SECONDS = 1_800;

    private final DataSource database;
    private final Audit audit;
    private final RecordPlan plan;
    private final Instance<KeptTables> rooms;
    private final People people;
    private final Trees trees;
    private final CourseContent content;
    private final Today today;
    private final long mostBytes;

    Archive(
            DataSource database,
            Audit audit,
            RecordPlan plan,
            Instance<KeptTables> rooms,
            People people,
            Trees trees,
            CourseContent content,
            Today today,
            @org.eclipse.microprofile.config.inject.ConfigProperty(
                            name = "ripewood.body.most-of-records")
                    io.quarkus.runtime.configuration.MemorySize most) {
        this.database = database;
        this.audit = audit;
        this.plan = plan;
        this.rooms = rooms;
        this.people = people;
        this.trees = trees;
        this.content = content;
        this.today = today;
        this.mostBytes = most.asLongValue();
    }

    /** The whole school; registrars only. The file behind the stream is gone once it is closed. */
    public InputStream school(Actor actor) {
        actor.require(Role.REGISTRAR, "take the school's record out");
        return written(actor, Scope.school());
    }

    /** A course with its students' trees; its instructors and registrars only. */
    public InputStream course(Actor actor, long courseId) {
        people.getCourse(actor, courseId);
        people.requireRuns(actor, courseId, "its record");
        return written(actor, Scope.course(courseId));
    }

    /**
     * A tree within reach.
     *
     * @param named whether persons are told by name; never to somebody from whom a former keeper is
     *     hidden
     */
    public InputStream tree(Actor actor, long treeId, boolean named) {
        boolean mayName = trees.hiddenKeepers(actor, treeId).isEmpty();
        return written(actor, Scope.tree(treeId, named && mayName));
    }

    /**
     * All that is on record of a person, for themselves or a registrar: who they are, the trees
     * they keep with everything, and whatever they wrote or is told of them elsewhere. A row that
     * names nobody as its writer was written by somebody else.
     */
    public InputStream person(Actor actor, long personId) {
        if (actor.personId() != personId && !actor.is(Role.REGISTRAR)) {
            throw Refused.notFound("person", personId);
        }
        people.get(personId);
        return written(actor, Scope.person(personId));
    }

    /** What forgetting a person would do; registrars only. */
    public Forgetting forgetting(Actor actor, long personId) {
        requireForgets(actor, personId);
        return inTransaction(
                Connection.TRANSACTION_READ_COMMITTED,
                connection -> forgetter(connection).tell(personId));
    }

    /**
     * Forgets a person: name, login and password, roles, courses, links and what they wrote in
     * their own words; what was seen of trees stays. Registrars only, and never of themselves.
     * Doing it again changes nothing.
     *
     * @throws Refused 409 while they keep trees; 412 when the version is not the current one
     */
    public Forgetting forget(Actor actor, long personId, long version) {
        requireForgets(actor, personId);
        if (people.get(personId).version() != version) {
            throw Refused.stale("person");
        }
        return noted(
                Deed.PERSON_FORGOTTEN,
                actor,
                connection -> {
                    var forgetter = forgetter(connection);
                    var told = forgetter.tell(personId);
                    if (!told.trees().isEmpty()) {
                        throw Refused.conflict(
                                "%s still keeps %s."
                                        .formatted(told.name(), String.join(", ", told.trees())),
                                "Maybe hand these trees over first.");
                    }
                    forgetter.forget(personId);
                    return told;
                });
    }

    private Forgetter forgetter(Connection connection) throws SQLException {
        return new Forgetter(connection, plan.told(), plan.all(connection));
    }

    private void requireForgets(Actor actor, long personId) {
        actor.require(Role.REGISTRAR, "forget persons");
        people.get(personId);
        if (actor.personId() == personId) {
            throw Refused.conflict(
                    "You cannot forget yourself.", "Maybe another registrar can do it.");
        }
    }

    /** The JSON Schema of all these files. */
    public String schema() {
        try (var connection = database.getConnection()) {
            return RecordSchema.of(plan.tables(connection));
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /**
     * Enters a record's file: all of it or nothing. A school's only into a school with nobody but
     * registrars and nothing else; a course's or tree's into any, with its persons as people who
     * cannot sign in.
     *
     * @throws Refused 400 with every fault of the file, each with a JSON Pointer
     */
    public Taken take(Actor actor, InputStream sent) {
        actor.require(Role.REGISTRAR, "bring a record in");
        var file = temporary();
        try {
            receive(sent, file);
            return noted(Deed.RECORD_BROUGHT_IN, actor, connection -> take(connection, file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            delete(file);
        }
    }

    private Taken take(Connection connection, Path file) throws SQLException {
        return take(connection, plan.tables(connection), rooms, file);
    }

    /** Enters a file in the transaction of a connection. */
    static Taken take(
            Connection connection, List<PlannedTable> tables, Iterable<KeptTables> rooms, Path file)
            throws SQLException {
        var faults = new FileFaults();
        var check = new RecordCheck(faults, rooms);
        new RecordFile(file, tables, faults).read(check);
        faults.throwIfAny();
        if (check.scope() == Scope.Kind.SCHOOL) {
            EmptySchool.require(connection, tables);
        }
        new RecordFile(file, tables, faults).read(new RecordEntry(connection, check, faults));
        var rows = new TreeMap<String, Integer>();
        for (var table : tables) {
            if (check.rows(table.name()) > 0) {
                rows.put(table.field(), check.rows(table.name()));
            }
        }
        return new Taken(check.scope().name(), check.rows(), rows);
    }

    private void receive(InputStream sent, Path file) throws IOException {
        try (var out = Files.newOutputStream(file)) {
            var buffer = new byte[1 << 16];
            long received = 0;
            for (int read = sent.read(buffer); read >= 0; read = sent.read(buffer)) {
                received += read;
                if (received > mostBytes) {
                    throw new Refused(
                            new Problem(
                                    413,
                                    "too-large",
                                    "Too large",
                                    "A record's file may have %d bytes at most."
                                            .formatted(mostBytes),
                                    "Maybe restore a backup of the database instead.",
                                    List.of()));
                }
                out.write(buffer, 0, read);
            }
        }
    }

    private InputStream written(Actor actor, Scope scope) {
        var file = temporary();
        try {
            inTransaction(
                    Connection.TRANSACTION_REPEATABLE_READ,
                    connection -> {
                        write(connection, scope, file);
                        return file;
                    });
            QuarkusTransaction.requiringNew()
                    .run(() -> audit.note(Deed.RECORD_TAKEN_OUT, actor.personId()));
            return Files.newInputStream(file, StandardOpenOption.DELETE_ON_CLOSE);
        } catch (IOException e) {
            delete(file);
            throw new UncheckedIOException(e);
        } catch (RuntimeException e) {
            delete(file);
            throw e;
        }
    }

    private void write(Connection connection, Scope scope, Path file) throws SQLException {
        try (var out = new BufferedOutputStream(Files.newOutputStream(file))) {
            RecordWriter.write(
                    connection,
                    plan.tables(connection),
                    scope,
                    content.inForce().revision(),
                    today.now(),
                    out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private interface Work<T> {
        T on(Connection connection) throws SQLException;
    }

    /** In one transaction with what is written down of it. */
    private <T> T noted(Deed deed, Actor actor, Work<T> work) {
        return QuarkusTransaction.requiringNew()
                .timeout(MOST_SECONDS)
                .call(
                        () -> {
                            audit.note(deed, actor.personId());
                            try (var connection = database.getConnection()) {
                                return work.on(connection);
                            }
                        });
    }

    private <T> T inTransaction(int isolation, Work<T> work) {
        try (var connection = database.getConnection()) {
            connection.setTransactionIsolation(isolation);
            connection.setAutoCommit(false);
            try {
                var result = work.on(connection);
                connection.commit();
                return result;
            } catch (RuntimeException | SQLException e) {
                connection.rollback();
                throw e;
            }
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Readable by its owner alone, as temporary files are. */
    private static Path temporary() {
        try {
            return Files.createTempFile("ripewood-record", ".json");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
