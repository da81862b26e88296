package org.ripewood.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.archive.SecondSchool.run;
import static org.ripewood.archive.SecondSchool.text;
import static org.ripewood.archive.SecondSchool.texts;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import javax.sql.DataSource;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ripewood.assess.Judged;
import org.ripewood.assess.Judgements;
import org.ripewood.assess.NewJudgement;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.records.PictureDescriptions;
import org.ripewood.platform.records.TableDescription;
import org.ripewood.platform.records.TableDescriptions;

/** The demo school out of its database and into another one. */
@Tag("one-database")
@QuarkusTest
@TestProfile(DemoProfile.class)
class RoundTripTest {

    private static final long MOST = 64_000_000;
    private static final Instant NOW = Instant.parse("2026-05-20T10:00:00Z");

    @Inject DataSource database;
    @Inject RecordPlan plan;
    @Inject Instance<TableDescriptions> rooms;
    @Inject PictureDescriptions pictures;
    @Inject Judgements judgements;

    @TempDir Path folder;

    @Test
    void aSchoolComesBackTheSameToTheByte() throws SQLException, IOException {
        try (var demo = database.getConnection();
                var second = SecondSchool.empty(folder, "whole")) {
            var first = written(demo, Scope.school());
            assertThat(first)
                    .contains("\"table\":\"observation\"")
                    .contains("\"table\":\"stepEvent\"");
            var taken = take(second, first);
            assertThat(taken.rows()).isGreaterThan(1_000);
            assertThat(written(second, Scope.school())).isEqualTo(first);
        }
    }

    /** Whoever set the empty school up is in the file as well, by the same login. */
    @Test
    void aRegistrarWhoIsThereAlreadyIsTheRegistrarOfTheFile() throws SQLException, IOException {
        try (var demo = database.getConnection();
                var second = SecondSchool.empty(folder, "registrar")) {
            var first = written(demo, Scope.school());
            var login = text(demo, registrar("p.login"));
            var name = text(demo, registrar("p.name"));
            run(
                    second,
                    "insert into person values (nextval('person_seq'), 0, '%s', '%s', 'hash', true)"
                            .formatted(name, login));
            run(second, "insert into person_role select id, 'REGISTRAR' from person");
            take(second, first);
            assertThat(written(second, Scope.school())).isEqualTo(first);
            assertThat(
                            text(
                                    second,
                                    "select password_hash from person where login = '%s'"
                                            .formatted(login)))
                    .isEqualTo("hash");
        }
    }

    private static String registrar(String what) {
        return ("select %s from person p join person_role r on r.person_id = p.id and"
                        + " r.role = 'REGISTRAR' order by p.id")
                .formatted(what);
    }

    @Test
    void everyScopeKeepsToThePublishedSchema() throws SQLException, IOException {
        try (var demo = database.getConnection()) {
            for (var scope : scopes(demo)) {
                assertThat(faults(written(demo, scope))).as("%s", scope).isEmpty();
            }
        }
    }

    @Test
    void aTreeAndACourseGoIntoASchoolThatHasTreesAlready() throws SQLException, IOException {
        try (var demo = database.getConnection();
                var second = SecondSchool.empty(folder, "parts")) {
            take(second, written(demo, Scope.school()));
            for (var scope : scopes(demo).subList(1, 4)) {
                var file = written(demo, scope);
                var trees = text(second, "select count(*) from tree");
                var sites = text(second, "select count(*) from site");
                var before = text(second, "select max(id) from " + root(scope));
                var taken = take(second, file);
                assertThat(text(second, "select count(*) from tree"))
                        .isEqualTo("" + (Long.parseLong(trees) + taken.tables().get("tree")));
                assertThat(text(second, "select count(*) from site")).isEqualTo(sites);
                var entered =
                        text(
                                second,
                                "select min(id) from %s where id > %s"
                                        .formatted(root(scope), before));
                assertThat(written(second, as(scope, Long.parseLong(entered)))).isEqualTo(file);
            }
            assertThat(
                            text(
                                    second,
                                    "select count(*) from person where active and login like 'from-file%'"))
                    .isEqualTo("0");
        }
    }

    /** One judgement that is open, a draft and one that waits for a second judge. */
    @Test
    void aTreeAndACourseThatWereJudgedComeInAgain() throws SQLException, IOException {
        try (var demo = database.getConnection();
                var second = SecondSchool.empty(folder, "judged")) {
            var courseId = Long.parseLong(text(demo, "select min(course_id) from membership"));
            var keptInIt =
                    "from tree t join membership m on m.person_id = t.keeper_id and m.role ="
                            + " 'STUDENT' and m.left_on is null and m.course_id = "
                            + courseId;
            var tree = Long.parseLong(text(demo, "select min(t.id) " + keptInIt));
            var judge =
                    new Actor(
                            Long.parseLong(
                                    text(
                                            demo,
                                            "select min(person_id) from membership where role ="
                                                    + " 'INSTRUCTOR' and left_on is null and"
                                                    + " course_id = "
                                                    + courseId)),
                            Set.of(Role.INSTRUCTOR));
            var of = Judged.tree(tree);
            assertThat(judgements.sign(judge, of, said("vigour", "open", false), null).openedAt())
                    .isNotNull();
            judgements.begin(judge, of, said("root-flare", "a draft", false));
            judgements.sign(judge, of, said("pests", "waiting", true), null);
            for (var scope :
                    List.of(
                            Scope.tree(tree, true),
                            Scope.tree(tree, false),
                            Scope.course(courseId, Set.of()))) {
                var file = written(demo, scope);
                assertThat(file)
                        .contains("vigour_index")
                        .doesNotContain("rubricJudgement", "a draft", "waiting");
                assertThat(faults(file)).isEmpty();
                var before = text(second, "select coalesce(max(id), 0) from " + root(scope));
                take(second, file);
                var entered =
                        text(
                                second,
                                "select min(id) from %s where id > %s"
                                        .formatted(root(scope), before));
                assertThat(written(second, as(scope, Long.parseLong(entered)))).isEqualTo(file);
            }
            var whole = written(demo, Scope.school());
            assertThat(whole)
                    .contains("\"table\":\"rubricJudgement\"", "\"note\":\"open\"")
                    .doesNotContain("a draft", "\"note\":\"waiting\"");
            try (var third = SecondSchool.empty(folder, "judged-whole")) {
                take(third, whole);
                assertThat(written(third, Scope.school())).isEqualTo(whole);
            }
        }
    }

    private static NewJudgement said(String rubric, String note, boolean wantsSecond) {
        return new NewJudgement(rubric, 2, LocalDate.of(2026, 5, 20), note, wantsSecond, null);
    }

    private static Scope as(Scope scope, long id) {
        return new Scope(scope.kind(), id, scope.named(), scope.hidden(), scope.judge());
    }

    private static String root(Scope scope) {
        return scope.kind().name().toLowerCase(Locale.ROOT);
    }

    @Test
    void aTreesFileWithoutNamesHasNoNameInIt() throws SQLException, IOException {
        try (var demo = database.getConnection()) {
            var names = texts(demo, "select name from person");
            var scope = scopes(demo).get(2);
            assertThat(written(demo, scope)).containsAnyOf(names.toArray(String[]::new));
            var unnamed = written(demo, Scope.tree(scope.id(), false));
            assertThat(unnamed).doesNotContain(names).contains("Person 1");
            assertThat(faults(unnamed)).isEmpty();
            assertThat(written(demo, Scope.tree(scope.id(), true))).doesNotContain("\"login\"");
        }
    }

    /** Another school knows nothing of this one's ground, nor of who entered it here. */
    @Test
    void whoseASiteIsStaysAtTheSchool() throws SQLException, IOException {
        try (var demo = database.getConnection();
                var second = SecondSchool.empty(folder, "ground")) {
            var whole = written(demo, Scope.school());
            assertThat(whole).contains("\"schoolGround\":true", "\"enteredById\":");
            for (var scope : scopes(demo).subList(1, 4)) {
                assertThat(written(demo, scope)).doesNotContain("schoolGround", "enteredById");
            }
            // as it was written before that was kept
            take(second, whole.replaceAll(",\"(schoolGround|enteredById)\":\\w+", ""));
            assertThat(text(second, "select count(*) from site where school_ground"))
                    .isEqualTo("0");
            assertThat(text(second, "select count(*) from site")).isNotEqualTo("0");
        }
    }

    @Test
    void noFileHasASecret() throws SQLException, IOException {
        try (var demo = database.getConnection()) {
            var hashes = texts(demo, "select password_hash from person");
            assertThat(written(demo, Scope.school())).doesNotContain(hashes).doesNotContain("$2a$");
        }
    }

    /** Tables for the moment, which the mapper makes for itself, are no part of the record. */
    @Test
    void everyTableAndColumnOfTheDatabaseIsDescribedOrLeftOutWithAReason() throws SQLException {
        var found = new TreeSet<String>();
        var described = new TreeSet<String>();
        var leftOut = new TreeSet<String>();
        for (var table : plan.told()) {
            if (!table.travels()) {
                if (table.columns().isEmpty()) {
                    leftOut.add(table.name());
                }
                assertThat(table.leftOut()).isNotBlank();
            }
            table.columns().forEach(column -> described.add(table.name() + "." + column.name()));
        }
        try (var demo = database.getConnection()) {
            for (var column :
                    texts(
                            demo,
                            "select lower(c.table_name) || '.' || lower(c.column_name) from"
                                    + " information_schema.columns c join information_schema.tables"
                                    + " t on t.table_schema = c.table_schema and t.table_name ="
                                    + " c.table_name where t.table_type = 'BASE TABLE' and"
                                    + " lower(c.table_schema) = 'public'")) {
                var table = column.substring(0, column.indexOf('.'));
                if (!leftOut.contains(table) && !table.equals("flyway_schema_history")) {
                    found.add(column);
                }
            }
            assertThat(described).isEqualTo(found);
            assertThat(
                            texts(
                                    demo,
                                    "select distinct lower(table_name) from information_schema.tables"
                                            + " where lower(table_schema) = 'public'"))
                    .containsAll(leftOut);
        }
    }

    /**
     * A reference by foreign key that is told as a plain number would name another school's row.
     */
    @Test
    void everyForeignKeyIsToldAsAReference() throws SQLException {
        var told = new TreeSet<String>();
        for (var table : plan.told()) {
            table.references()
                    .forEach(
                            column ->
                                    told.add(
                                            table.name()
                                                    + "."
                                                    + column.name()
                                                    + " -> "
                                                    + column.table()));
        }
        var leftOut =
                plan.told().stream()
                        .filter(table -> table.columns().isEmpty())
                        .map(TableDescription::name)
                        .toList();
        var found = new TreeSet<String>();
        try (var demo = database.getConnection()) {
            var meta = demo.getMetaData();
            for (var table : plan.told()) {
                try (var keys = meta.getImportedKeys(null, "public", table.name())) {
                    while (keys.next() && !leftOut.contains(table.name())) {
                        found.add(
                                table.name()
                                        + "."
                                        + keys.getString("FKCOLUMN_NAME")
                                        + " -> "
                                        + keys.getString("PKTABLE_NAME"));
                    }
                }
            }
        }
        assertThat(told).isEqualTo(found);
    }

    @Test
    void theSchemaIsThePublishedOne() throws SQLException, IOException {
        var file = Path.of("src/test/resources/golden/record-schema.json");
        try (var demo = database.getConnection()) {
            var schema = RecordSchema.of(plan.tables(demo));
            if (Boolean.getBoolean("golden.renew")) {
                Files.writeString(file, schema);
            }
            assertThat(schema).isEqualTo(Files.readString(file));
        }
    }

    private List<Scope> scopes(Connection demo) throws SQLException {
        var course = text(demo, "select course_id from membership order by id");
        var busy =
                text(
                        demo,
                        "select tree_id from step where decision_id is not null group by tree_id"
                                + " order by count(*) desc");
        return List.of(
                Scope.school(),
                Scope.course(Long.parseLong(course), Set.of()),
                Scope.tree(Long.parseLong(busy), true),
                Scope.tree(Long.parseLong(busy), false));
    }

    private List<String> faults(String file) throws SQLException {
        try (var demo = database.getConnection()) {
            var schema =
                    SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                            .getSchema(RecordSchema.of(plan.tables(demo)));
            return schema.validate(file, InputFormat.JSON).stream().map(Object::toString).toList();
        }
    }

    private String written(Connection from, Scope scope) throws SQLException, IOException {
        var out = new ByteArrayOutputStream();
        RecordWriter.withoutPictures(from, plan.tables(from), scope).write("revision", NOW, out);
        return out.toString(StandardCharsets.UTF_8);
    }

    private Taken take(Connection to, String file) throws SQLException, IOException {
        var path = folder.resolve("record.json");
        Files.writeString(path, file);
        return new RecordImport(plan.tables(to), rooms, pictures, MOST).take(to, path);
    }
}
