package org.ripewood.archive;

import static java.nio.charset.StandardCharsets.UTF_8;
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
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ripewood.photos.NewPhoto;
import org.ripewood.photos.Photo;
import org.ripewood.photos.PhotoSize;
import org.ripewood.photos.Photos;
import org.ripewood.photos.Pictures;
import org.ripewood.photos.Viewpoint;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.records.PictureDescriptions;
import org.ripewood.platform.records.TableDescriptions;

/** Photos go along with the record, and come back with it the same to the byte. */
@Tag("one-database")
@QuarkusTest
@TestProfile(DemoProfile.class)
class PhotoRoundTripTest {

    private static final Actor REGISTRAR = new Actor(1, Set.of(Role.REGISTRAR));
    private static final LocalDate DAY = LocalDate.of(2026, 4, 1);
    private static final Instant NOW = Instant.parse("2026-05-20T10:00:00Z");
    private static final long MOST = 64_000_000;

    @Inject DataSource database;
    @Inject RecordPlan plan;
    @Inject Instance<TableDescriptions> rooms;
    @Inject PictureDescriptions pictures;
    @Inject Photos photos;
    @Inject KeptFiles files;
    @Inject Archive archive;

    @TempDir Path folder;

    private long treeId;
    private Photo front;
    private Photo removed;
    private Photo detail;

    /** Of one tree three, of which the second was taken away again, and one of another. */
    @BeforeEach
    void photograph() throws SQLException {
        try (var demo = database.getConnection()) {
            treeId = Long.parseLong(text(demo, "select min(tree_id) from wound"));
            var wound = text(demo, "select min(id) from wound where tree_id = " + treeId);
            var other = text(demo, "select max(id) from tree where id <> " + treeId);
            front = add(treeId, 64, "buds swell on one side", null);
            removed = add(treeId, 32, null, null);
            detail = add(treeId, 90, null, Long.valueOf(wound));
            add(Long.parseLong(other), 48, null, null);
        }
        photos.remove(REGISTRAR, removed.id(), removed.version());
    }

    private Photo add(long ofTree, int widthPx, @Nullable String caption, @Nullable Long woundId) {
        return photos.add(
                REGISTRAR,
                ofTree,
                new NewPhoto(DAY, Viewpoint.FRONT, caption, woundId, null),
                new ByteArrayInputStream(Pictures.jpeg(Pictures.quarters(widthPx, 40))));
    }

    @Test
    void aSchoolWithPhotosComesBackTheSameToTheByte() throws SQLException, IOException {
        try (var demo = database.getConnection();
                var second = SecondSchool.empty(folder, "school")) {
            var first = written(demo, Scope.school());
            var taken = take(second, first);
            assertThat(taken.tables().get("photo")).isGreaterThanOrEqualTo(4);
            assertThat(written(second, Scope.school())).isEqualTo(first);
            assertThat(texts(second, "select file_key from photo where file_key is not null"))
                    .doesNotContainAnyElementsOf(
                            texts(demo, "select file_key from photo where file_key is not null"));
        }
    }

    @Test
    void aTreeWithPhotosGoesIntoASchoolThatHasTreesAlready() throws SQLException, IOException {
        try (var demo = database.getConnection();
                var second = SecondSchool.empty(folder, "tree")) {
            take(second, written(demo, Scope.school()));
            for (boolean named : new boolean[] {true, false}) {
                var file = written(demo, Scope.tree(treeId, named));
                take(second, file);
                var entered = Long.parseLong(text(second, "select max(id) from tree"));
                assertThat(written(second, Scope.tree(entered, named))).isEqualTo(file);
                var keys =
                        texts(
                                second,
                                "select thumbnail_key from photo where removed_at is null and"
                                        + " tree_id = "
                                        + entered);
                assertThat(keys).hasSizeGreaterThanOrEqualTo(2);
                for (var key : keys) {
                    var thumbnail = Pictures.decoded(Files.readAllBytes(files.of(key)));
                    assertThat(thumbnail.getHeight()).isEqualTo(40);
                }
            }
        }
    }

    @Test
    void theRecordStandsFirstAndThenThePicturesOfItsRows() throws SQLException, IOException {
        try (var demo = database.getConnection()) {
            var file = written(demo, Scope.tree(treeId, true));
            var entries = Zips.entries(file);
            var names = List.copyOf(entries.keySet());
            assertThat(names.get(0)).isEqualTo("record.json");
            assertThat(names.subList(1, names.size())).isSorted();
            assertThat(entries.get(entry(demo, front))).isEqualTo(bytes(front));
            assertThat(entries.get(entry(demo, detail))).isEqualTo(bytes(detail));
            assertThat(names).doesNotContain(entry(demo, removed));
            assertThat(Zips.record(file))
                    .contains("\"removedById\"", "buds swell")
                    .doesNotContain("thumbnail", "fileKey");
        }
    }

    private String entry(Connection demo, Photo photo) throws SQLException {
        var before = "select count(*) from photo where tree_id = %d and id <= %d";
        return "photos/%06d.jpg"
                .formatted(Integer.valueOf(text(demo, before.formatted(treeId, photo.id()))));
    }

    private byte[] bytes(Photo photo) throws IOException {
        try (var kept = photos.open(REGISTRAR, photo.id(), PhotoSize.WHOLE).stream()) {
            return kept.readAllBytes();
        }
    }

    @Test
    void withoutNamesTheCaptionsStayBehind() throws SQLException {
        try (var demo = database.getConnection()) {
            var file = written(demo, Scope.tree(treeId, false));
            assertThat(Zips.record(file))
                    .contains("\"table\":\"photo\"")
                    .doesNotContain("buds swell");
            assertThat(Zips.entries(file)).hasSizeGreaterThanOrEqualTo(3);
        }
    }

    @Test
    void everyScopeKeepsToThePublishedSchema() throws SQLException {
        try (var demo = database.getConnection()) {
            var course = Long.parseLong(text(demo, "select min(id) from course"));
            var schema =
                    SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                            .getSchema(RecordSchema.of(plan.tables(demo)));
            for (var scope :
                    List.of(
                            Scope.school(),
                            Scope.course(course, Set.of()),
                            Scope.tree(treeId, true),
                            Scope.tree(treeId, false))) {
                var record = Zips.record(written(demo, scope));
                assertThat(schema.validate(record, InputFormat.JSON)).as("%s", scope).isEmpty();
            }
        }
    }

    @Test
    void byItselfTheRecordSaysNothingOfPhotos() throws IOException {
        try (var json = archive.school(REGISTRAR, RecordForm.JSON)) {
            assertThat(new String(json.readAllBytes(), UTF_8))
                    .contains("\"table\":\"tree\"")
                    .doesNotContain("\"table\":\"photo\"", "buds swell");
        }
    }

    /** Lost, or not what was written down: a record with it could be brought in nowhere. */
    @Test
    void aPhotoWhoseFileIsLostIsLeftOutAndTheRestIsHad() throws SQLException, IOException {
        try (var demo = database.getConnection();
                var second = SecondSchool.empty(folder, "lost")) {
            Files.delete(file(demo, front));
            Files.write(file(demo, detail), Pictures.jpeg());
            try (var school = archive.school(REGISTRAR, RecordForm.ZIP)) {
                int there = Integer.parseInt(text(demo, "select count(*) from photo"));
                assertThat(take(second, school.readAllBytes()).tables())
                        .containsEntry("photo", there - 2);
            }
            run(demo, "delete from photo where id in (%d, %d)".formatted(front.id(), detail.id()));
        }
    }

    /** A file has only whom its rows name, or it could be brought in nowhere. */
    @Test
    void whoSentNothingButALostPhotoIsNotInTheFile() throws SQLException, IOException {
        try (var demo = database.getConnection();
                var second = SecondSchool.empty(folder, "sender")) {
            run(
                    demo,
                    "insert into person values (nextval('person_seq'), 0, 'Quill Onlyonce',"
                            + " 'quill', 'hash', true)");
            var id = Long.parseLong(text(demo, "select id from person where login = 'quill'"));
            var sent =
                    photos.add(
                            new Actor(id, Set.of(Role.REGISTRAR)),
                            treeId,
                            new NewPhoto(DAY, Viewpoint.FRONT, null, null, null),
                            new ByteArrayInputStream(Pictures.jpeg()));
            assertThat(Zips.record(taken())).contains("Quill Onlyonce");
            Files.delete(file(demo, sent));
            assertThat(Zips.record(taken())).doesNotContain("Quill Onlyonce");
            take(second, taken());
            run(demo, "delete from photo where id = " + sent.id());
            run(demo, "delete from person where id = " + id);
        }
    }

    private byte[] taken() throws IOException {
        try (var tree = archive.tree(REGISTRAR, treeId, true, RecordForm.ZIP)) {
            return tree.readAllBytes();
        }
    }

    private Path file(Connection demo, Photo photo) throws SQLException {
        return files.of(text(demo, "select file_key from photo where id = " + photo.id()));
    }

    private byte[] written(Connection from, Scope scope) throws SQLException {
        var out = new ByteArrayOutputStream();
        var writer = RecordWriter.of(new RecordRows(from, plan.tables(from), scope, Set.of()));
        assertThat(new RecordZip(writer, pictures).write("revision", NOW, out)).isEmpty();
        return out.toByteArray();
    }

    private Taken take(Connection to, byte[] file) throws SQLException, IOException {
        var path = folder.resolve("record.zip");
        Files.write(path, file);
        return new RecordImport(plan.tables(to), rooms, pictures, MOST).take(to, path);
    }
}
