package org.ripewood.archive;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.photos.NewPhoto;
import org.ripewood.photos.Photos;
import org.ripewood.photos.Pictures;
import org.ripewood.photos.Viewpoint;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.records.PictureDescriptions;
import org.ripewood.platform.records.TableDescriptions;

/** ZIPs made to do harm, or only broken: told with where, and nothing of them stays. */
@Tag("one-database")
@QuarkusTest
@TestProfile(DemoProfile.class)
class HostileZipTest {

    private static final Actor REGISTRAR = new Actor(1, Set.of(Role.REGISTRAR));
    private static final String RECORD = "record.json";
    private static final String FIRST = "photos/000001.jpg";
    private static final String SECOND = "photos/000002.jpg";

    /** Where in a line of the list they stand (APPNOTE 6.3, 4.3.12). */
    private static final int CRC = 16;

    private static final int SIZE = 24;

    @Inject Archive archive;
    @Inject Photos photos;
    @Inject DataSource database;
    @Inject KeptFiles files;
    @Inject RecordPlan plan;
    @Inject Instance<TableDescriptions> rooms;
    @Inject PictureDescriptions pictures;

    @TempDir Path folder;

    /** A tree with two photos, which each test takes apart. */
    private static byte[] whole = {};

    private Map<String, byte[]> good;

    private long rows;
    private Set<Path> kept;

    /** Each has a tree and two photos, and those two files each. */
    private int accepted;

    @BeforeEach
    void takeOut() throws SQLException, IOException {
        if (whole.length == 0) {
            whole = treeWithPhotos();
        }
        good = new LinkedHashMap<>(Zips.entries(whole));
        assertThat(good).containsOnlyKeys(RECORD, FIRST, SECOND);
        rows = count("select count(*) from photo") + count("select count(*) from tree");
        kept = files.all();
    }

    private byte[] treeWithPhotos() throws SQLException, IOException {
        long tree = count("select min(id) from tree where id not in (select tree_id from photo)");
        add(tree, 64);
        add(tree, 80);
        try (var in = archive.tree(REGISTRAR, tree, true, RecordForm.ZIP)) {
            return in.readAllBytes();
        }
    }

    private void add(long tree, int widthPx) {
        photos.add(
                REGISTRAR,
                tree,
                new NewPhoto(LocalDate.of(2026, 4, 1), Viewpoint.LEFT, null, null, null),
                new ByteArrayInputStream(Pictures.jpeg(Pictures.quarters(widthPx, 40))));
    }

    @AfterEach
    void nothingIsLeftOfWhatWasRefused() throws SQLException, IOException {
        assertThat(count("select count(*) from photo") + count("select count(*) from tree"))
                .isEqualTo(rows + 3L * accepted);
        assertThat(files.all()).containsAll(kept).hasSize(kept.size() + 4 * accepted);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../../evil.jpg",
                "/etc/passwd",
                "photos/../../000003.jpg",
                "photos/000003.jpg/../../x",
                "photos\\000003.jpg",
                "C:\\photos\\000003.jpg",
                "photos/3.jpg",
                "photos/0000003.jpg",
                "photos/000000.jpg",
                "photos/-00003.jpg",
                "photos/999999999.jpg",
                "photos/000003.JPG",
                "photos/٠٠٠٠٠٣.jpg",
                "photos/",
                "Record.json",
                "a"
            })
    void anEntryOfAnotherNameIsRefused(String name) {
        good.put(name, new byte[0]);
        assertThat(faults(good))
                .singleElement()
                .satisfies(fault -> assertThat(fault.field()).isEqualTo(name))
                .satisfies(fault -> assertThat(fault.message()).contains("is not expected here"));
    }

    @ParameterizedTest
    @ValueSource(strings = {SECOND, "../../evil.jpg", "photos/1.jpg", "photos/00000١.jpg", ""})
    void aRowNamesItsOwnEntryOnly(String name) {
        change("\"picture\":\"" + FIRST, "\"picture\":\"" + name);
        assertThat(faults(good))
                .anySatisfy(
                        fault -> {
                            assertThat(fault.field()).matches("/tables/\\d+/rows/0/picture");
                            assertThat(fault.message()).contains("expected " + FIRST);
                        });
    }

    @Test
    void aMissingEntryIsTold() {
        good.remove(SECOND);
        only("/tables/\\d+/rows/1/picture", "there is no such entry in the ZIP. Maybe ");
    }

    @Test
    void anEntryNoRowNamesIsTold() {
        good.put("photos/000077.jpg", good.get(FIRST));
        only("photos/000077.jpg", "no row of the record names it. Maybe ");
    }

    @ParameterizedTest
    @CsvSource({"photos/000003.jpg, " + FIRST, "recore.json, " + RECORD})
    void anEntryThatIsThereTwiceIsTold(String placeholder, String name) {
        good.put(placeholder, good.get(FIRST));
        var zip = new String(Zips.packed(good), ISO_8859_1).replace(placeholder, name);
        assertThat(faults(zip.getBytes(ISO_8859_1)))
                .singleElement()
                .satisfies(fault -> assertThat(fault.field()).isEqualTo(name))
                .satisfies(fault -> assertThat(fault.message()).startsWith("is there twice"));
    }

    @Test
    void aZipWithoutARecordIsTold() {
        good.remove(RECORD);
        only(RECORD, "expected the record, found none. Maybe a folder was packed");
        assertThat(faults(Zips.packed(Map.of()))).extracting(Fault::field).containsOnly(RECORD);
    }

    @Test
    void theRecordByItselfIsNotTakenWithoutItsPictures() {
        assertThat(faults(good.get(RECORD)))
                .extracting(Fault::message)
                .hasSize(2)
                .allMatch(it -> it.contains("did not come with the record. Maybe send the ZIP"));
    }

    /** Ten megabytes of nothing are packed into ten thousand bytes. */
    @Test
    void nothingIsUnpackedBeyondWhatMayBe() throws SQLException, IOException {
        var nothing = new byte[20_000_000];
        good.put(SECOND, nothing);
        only(SECOND, "expected at most 12582912 bytes, found more");
        assertThat(faults(saying(Zips.packed(good), SECOND, SIZE, 5)))
                .extracting(Fault::message)
                .anyMatch(it -> it.startsWith("expected at most 12582912 bytes, found more"));

        good.put(SECOND, new byte[0]);
        good.put(RECORD, nothing);
        assertThat(faultsOf(1_000_000))
                .singleElement()
                .satisfies(fault -> assertThat(fault.field()).isEqualTo(RECORD))
                .satisfies(fault -> assertThat(fault.message()).contains("at most 1000000 bytes"));
    }

    @Test
    void allPicturesTogetherHaveALimitToo() throws SQLException, IOException {
        good.put(SECOND, new byte[999_000]);
        good.put(FIRST, Arrays.copyOf(good.get(FIRST), 2_000));
        assertThat(faultsOf(1_000_000))
                .extracting(Fault::message)
                .anyMatch(it -> it.contains("at most 1000000 bytes of pictures in all"));
    }

    @Test
    void aRecordWhoseSumIsAnotherIsRefused() {
        assertThat(faults(saying(Zips.packed(good), RECORD, CRC, 4711)))
                .singleElement()
                .satisfies(fault -> assertThat(fault.field()).isEqualTo(RECORD))
                .satisfies(fault -> assertThat(fault.message()).startsWith("its sum is not"));
    }

    /**
     * Changes what a ZIP says of an entry in its list at the end, of lines that begin with 46
     * bytes.
     */
    private static byte[] saying(byte[] zip, String name, int at, int value) {
        int line = new String(zip, ISO_8859_1).lastIndexOf(name) - 46;
        return ByteBuffer.wrap(zip).order(ByteOrder.LITTLE_ENDIAN).putInt(line + at, value).array();
    }

    /** Its sizes and sum are those its row tells, so that nothing but what it holds is wrong. */
    @Test
    void aPictureWithSomethingBesidesIsRefused() {
        var plain = good.get(SECOND);
        for (var bent :
                List.of(
                        Pictures.joined(plain, "PK and a program".getBytes(UTF_8)),
                        Pictures.withExif(plain, Pictures.exif(1, "2025:05:04 10:11:12")),
                        Pictures.with(plain, Pictures.COMMENT, "<script>".getBytes(UTF_8)))) {
            replace(SECOND, bent);
            only(
                    SECOND,
                    "expected a JPEG of nothing but pixels, found .*Maybe take the record out");
        }
        replace(SECOND, Pictures.png(Pictures.quarters(80, 40)));
        only(SECOND, "expected .*Maybe take the record out once more.*");
    }

    @Test
    void aPictureIsWhatItsRowSays() {
        var other = good.get(FIRST);
        var own = good.put(SECOND, other);
        only(SECOND, "expected \\d+ bytes as its row says, found \\d+ bytes.*Maybe .*");
        good.put(SECOND, own);
        replace(SECOND, other);
        only(SECOND, "expected a width of 80 px as its row says, found a width of 64 px.*");
        good = new LinkedHashMap<>(Zips.entries(whole));
        change(sha256(other), sha256(new byte[0]));
        only(FIRST, "expected SHA-256 e3b0c442.* as its row says, found SHA-256 .*");
    }

    /** The first was good and had been kept already. */
    @Test
    void allPicturesAreLookedAtAndEachIsTold() {
        for (var name : List.of(FIRST, SECOND)) {
            replace(name, Pictures.joined(good.get(name), new byte[3]));
        }
        assertThat(faults(good)).extracting(Fault::field).containsExactly(FIRST, SECOND);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    "takenOn":"2026  | "takenOn":"1826   | /tables/\\d+/rows/0/takenOn
                    "seenFrom":"LEFT | "seenFrom":"BELOW | /tables/\\d+/rows/0/seenFrom
                    "byteCount":     | "byteCount":-     | /tables/\\d+/rows/0/byteCount
                    "sha256":"       | "sha256":"x       | /tables/\\d+/rows/0/sha256
                    "picture":"photos/000001.jpg", | '' | /tables/\\d+/rows/0/removedById
                    "seenFrom":"LEFT", | "seenFrom":"LEFT","removedById":1, | /tables/\\d+/rows/0/removedById
                    "seenFrom":"LEFT", | "seenFrom":"LEFT","fileKey":"ab", | /tables/\\d+/rows/0/fileKey
                    """)
    void whatIsSaidOfAPhotoIsLookedAtToo(String found, String put, String pointer) {
        change(found, put);
        assertThat(faults(good)).extracting(Fault::field).anyMatch(at -> at.matches(pointer));
    }

    /** Cut off anywhere it is no ZIP; with a byte changed it may be one still, or is refused. */
    @Test
    void aBrokenZipIsRefusedOrWhole() throws SQLException, IOException {
        long seed = 20_261_126L;
        var random = new SplittableRandom(seed);
        var zip = Zips.packed(good);
        for (int round = 0; round < 40; round++) {
            var cut = Arrays.copyOf(zip, 2 + random.nextInt(zip.length - 2));
            assertThat(faults(cut)).as("seed %d, round %d", seed, round).isNotEmpty();
        }
        for (int round = 0; round < 300; round++) {
            var bent = zip.clone();
            // most of what a ZIP says of itself stands at its end
            int at =
                    round % 2 == 0
                            ? zip.length - 1 - random.nextInt(260)
                            : random.nextInt(zip.length);
            bent[at] = (byte) random.nextInt(256);
            try {
                archive.take(REGISTRAR, new ByteArrayInputStream(bent));
                accepted++;
            } catch (Refused refused) {
                assertThat(refused.problem().status())
                        .as("seed %d, round %d, at %d", seed, round, at)
                        .isEqualTo(400);
            }
        }
    }

    private void replace(String name, byte[] picture) {
        var old = good.put(name, picture);
        change(sha256(old), sha256(picture));
        change(
                "\"byteCount\":%d,".formatted(old.length),
                "\"byteCount\":%d,".formatted(picture.length));
    }

    private void change(String found, String put) {
        var record = new String(good.get(RECORD), UTF_8);
        assertThat(record).contains(found);
        int photos = record.indexOf("\"table\":\"photo\"");
        int at = record.indexOf(found, photos);
        good.put(
                RECORD,
                (record.substring(0, at) + put + record.substring(at + found.length()))
                        .getBytes(UTF_8));
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private void only(String field, String message) {
        assertThat(faults(good))
                .singleElement()
                .satisfies(fault -> assertThat(fault.field()).matches(field))
                .satisfies(fault -> assertThat(fault.message()).containsPattern(message));
    }

    private List<Fault> faults(Map<String, byte[]> entries) {
        return faults(Zips.packed(entries));
    }

    private List<Fault> faults(byte[] sent) {
        return catchThrowableOfType(
                        Refused.class,
                        () -> archive.take(REGISTRAR, new ByteArrayInputStream(sent)))
                .problem()
                .faults();
    }

    /** Of a house with other limits. */
    private List<Fault> faultsOf(long mostBytes) throws SQLException, IOException {
        var path = folder.resolve("record.zip");
        Files.write(path, Zips.packed(good));
        try (var connection = database.getConnection()) {
            connection.setAutoCommit(false);
            var intake = new RecordImport(plan.tables(connection), rooms, pictures, mostBytes);
            var refused = catchThrowableOfType(Refused.class, () -> intake.take(connection, path));
            connection.rollback();
            return refused.problem().faults();
        }
    }

    private long count(String query) throws SQLException {
        try (var connection = database.getConnection()) {
            return Long.parseLong(SecondSchool.text(connection, query));
        }
    }
}
