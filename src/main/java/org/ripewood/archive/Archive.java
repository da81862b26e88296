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
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.sql.DataSource;
import org.ripewood.audit.Audit;
import org.ripewood.audit.Deed;
import org.ripewood.course.CourseContent;
import org.ripewood.people.Courses;
import org.ripewood.people.People;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.records.PictureDescriptions;
import org.ripewood.platform.records.TableDescriptions;
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

    /** Of what is lost the second knows; more are needed while photos are being taken away. */
    private static final int MOST_TRIES = 5;

    private final DataSource database;
    private final Audit audit;
    private final RecordPlan plan;
    private final Instance<TableDescriptions> rooms;
    private final PictureDescriptions pictures;
    private final People people;
    private final Courses schoolCourses;
    private final PeopleUnchecked peopleUnchecked;
    private final Trees trees;
    private final CourseContent content;
    private final Today today;
    private final long mostBytes;

    Archive(
            DataSource database,
            Audit audit,
            RecordPlan plan,
            Instance<TableDescriptions> rooms,
            PictureDescriptions pictures,
            People people,
            Courses schoolCourses,
            PeopleUnchecked peopleUnchecked,
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
        this.pictures = pictures;
        this.people = people;
        this.schoolCourses = schoolCourses;
        this.peopleUnchecked = peopleUnchecked;
        this.trees = trees;
        this.content = content;
        this.today = today;
        this.mostBytes = most.asLongValue();
    }

    /**
     * The whole school, but for what is {@link #sealed}; registrars only. The file behind the
     * stream is gone once it is closed.
     */
    public InputStream school(Actor actor, RecordForm form) {
        actor.require(Role.REGISTRAR, "take the school's record out");
        return written(actor, Scope.school(), form);
    }

    /**
     * How many judgements stay behind when the school is taken out, since nobody but their judges
     * may read them: drafts, and those that wait for a second judge. Registrars only.
     */
    public long sealed(Actor actor) {
        actor.require(Role.REGISTRAR, "take the school's record out");
        return inTransaction(
                Connection.TRANSACTION_READ_COMMITTED,
                connection -> Selection.sealed(connection, plan.tables(connection)));
    }

    /**
     * A course with its students' trees; its instructors and registrars only. Whoever kept one of
     * these trees, neither belongs to the course nor is within the actor's reach, is told without
     * name and words.
     */
    public InputStream course(Actor actor, long courseId, RecordForm form) {
        schoolCourses.get(actor, courseId);
        schoolCourses.requireRuns(actor, courseId, "its record");
        var hidden =
                new HashSet<>(
                        inTransaction(
                                Connection.TRANSACTION_READ_COMMITTED,
                                connection ->
                                        Selection.keepersIn(
                                                connection, plan.tables(connection), courseId)));
        hidden.removeIf(keeper -> people.reaches(actor, keeper));
        for (var role : List.of(Role.STUDENT, Role.INSTRUCTOR)) {
            peopleUnchecked.members(courseId, role).forEach(member -> hidden.remove(member.id()));
        }
        return written(actor, Scope.course(courseId, hidden), form);
    }

    /**
     * A tree within reach.
     *
     * @param named whether persons are told by name; never to somebody from whom a former keeper is
     *     hidden
     */
    public InputStream tree(Actor actor, long treeId, boolean named, RecordForm form) {
        boolean mayName = trees.hiddenKeepers(actor, treeId).isEmpty();
        return written(actor, Scope.tree(treeId, named && mayName), form);
    }

    /**
     * All that is on record of a person, for themselves or a registrar: who they are, the trees
     * they keep with everything, and whatever they wrote or is told of them elsewhere. A row that
     * names nobody as its writer was written by somebody else; the words of former keepers of their
     * trees whom the actor does not reach stay behind.
     */
    public InputStream person(Actor actor, long personId, RecordForm form) {
        if (actor.personId() != personId && !actor.is(Role.REGISTRAR)) {
            throw Refused.notFound("person", personId);
        }
        peopleUnchecked.get(personId);
        var hidden = new HashSet<Long>();
        var kept =
                inTransaction(
                        Connection.TRANSACTION_READ_COMMITTED,
                        connection -> Selection.keptBy(connection, personId));
        for (var treeId : kept) {
            hidden.addAll(trees.hiddenKeepers(actor, treeId));
        }
        return written(actor, Scope.person(personId, hidden, actor.personId() == personId), form);
    }

    /** What forgetting a person would do; registrars only. */
    public Forgetting forgetting(Actor actor, long personId) {
        requireForgets(actor, personId);
        long photos = pictures.madeBy(personId);
        return inTransaction(
                Connection.TRANSACTION_READ_COMMITTED,
                connection -> forgetter(connection).tell(personId, photos));
    }

    /**
     * Forgets a person: name, login and password, roles, courses, links, the photos they sent and
     * what they wrote in their own words; what was seen of trees stays. Registrars only, and never
     * of themselves. Doing it again changes nothing.
     *
     * @throws Refused 409 while they keep trees; 412 when the version is not the current one
     */
    public Forgetting forget(Actor actor, long personId, long version) {
        requireForgets(actor, personId);
        if (peopleUnchecked.get(personId).version() != version) {
            throw Refused.stale("person");
        }
        var keys = new ArrayList<String>();
        var before =
                noted(
                        Deed.PERSON_FORGOTTEN,
                        actor,
                        connection -> {
                            var forgetter = forgetter(connection);
                            var told = forgetter.tell(personId, pictures.madeBy(personId));
                            if (!told.trees().isEmpty()) {
                                throw Refused.conflict(
                                        "%s still keeps %s."
                                                .formatted(
                                                        told.name(),
                                                        String.join(", ", told.trees())),
                                        "Maybe hand these trees over first.");
                            }
                            keys.addAll(pictures.removeMadeBy(personId, actor.personId()));
                            forgetter.forget(personId);
                            return told;
                        });
        pictures.takeAway(keys);
        return before;
    }

    private Forgetter forgetter(Connection connection) throws SQLException {
        return new Forgetter(connection, plan.told(), plan.all(connection));
    }

    private void requireForgets(Actor actor, long personId) {
        actor.require(Role.REGISTRAR, "forget persons");
        peopleUnchecked.get(personId);
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
            return noted(
                    Deed.RECORD_BROUGHT_IN,
                    actor,
                    connection ->
                            new RecordImport(plan.tables(connection), rooms, pictures, mostBytes)
                                    .take(connection, file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            delete(file);
        }
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
                                    "Maybe take it out without photos, or restore a backup of"
                                            + " the database instead.",
                                    List.of()));
                }
                out.write(buffer, 0, read);
            }
        }
    }

    private InputStream written(Actor actor, Scope scope, RecordForm form) {
        var file = temporary();
        try {
            write(scope, form, file);
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

    /**
     * Anew when a picture the record names cannot be had: without what is lost, of a new moment.
     */
    private void write(Scope scope, RecordForm form, Path file) {
        var lost = new HashSet<Long>();
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            var missing =
                    inTransaction(
                            Connection.TRANSACTION_REPEATABLE_READ,
                            connection -> write(connection, scope, form, lost, file));
            if (missing.isEmpty()) {
                return;
            }
            lost.addAll(missing);
        }
        throw Refused.conflict(
                "Photos are being taken away while the record is written.",
                "Maybe try again in a while.");
    }

    private Set<Long> write(
            Connection connection, Scope scope, RecordForm form, Set<Long> lost, Path file)
            throws SQLException {
        var tables = plan.tables(connection);
        var revision = content.inForce().revision();
        try (var out = new BufferedOutputStream(Files.newOutputStream(file))) {
            if (form == RecordForm.ZIP) {
                var writer = RecordWriter.of(new RecordRows(connection, tables, scope, lost));
                return new RecordZip(writer, pictures).write(revision, today.now(), out);
            }
            RecordWriter.withoutPictures(connection, tables, scope)
                    .write(revision, today.now(), out);
            return Set.of();
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
