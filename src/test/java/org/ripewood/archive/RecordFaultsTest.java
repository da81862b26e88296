package org.ripewood.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;
import org.ripewood.trees.NewTree;
import org.ripewood.trees.TreeSites;
import org.ripewood.trees.Trees;

/** What is wrong with a file is told with where it stands, and nothing of the file stays. */
@QuarkusTest
@TestProfile(DemoProfile.class)
class RecordFaultsTest {

    private static final Actor REGISTRAR = new Actor(1, Set.of(Role.REGISTRAR));

    @Inject Archive archive;
    @Inject DataSource database;
    @Inject Trees rooms;
    @Inject TreeSites treeSites;

    private String tree;
    private long trees;

    @BeforeEach
    void takeOut() throws SQLException, IOException {
        try (var in =
                archive.tree(
                        REGISTRAR, count("select min(tree_id) from step"), true, RecordForm.JSON)) {
            tree = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        trees = count("select count(*) from tree");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    "format":"ripewood-record" | "format":"other" | /format
                    "formatVersion":1 | "formatVersion":2 | /formatVersion
                    "formatVersion":1 | "formatVersion":"1" | /formatVersion
                    "scope":"TREE" | "scope":"GARDEN" | /scope
                    "scope":"TREE" | "scopes":"TREE" | /scopes
                    "named":true | "named":[true] | /named
                    "table":"tree" | "table":"trees" | /tables/\\d+/table
                    "table":"tree" | "table":"person" | /tables/\\d+/table
                    "table":"tree","rows":[ | "table":"tree","rows":[1, | /tables/\\d+/rows/0
                    "species":" | "species":"no_ | /tables/\\d+/rows/0/species
                    "siteId":1 | "siteId":99 | /tables/\\d+/rows/0/siteId
                    "siteId":1 | "siteId":"1" | /tables/\\d+/rows/0/siteId
                    "siteId":1 | "siteId":0 | /tables/\\d+/rows/0/siteId
                    "siteId":1, | '' | /tables/\\d+/rows/0/siteId
                    "siteId":1 | "siteId":1,"sightId":1 | /tables/\\d+/rows/0/sightId
                    "cameOn":"20 | "cameOn":"2x | /tables/\\d+/rows/0/cameOn
                    "label":" | "label":"<script> | /tables/\\d+/rows/0/label
                    "label":" | "label":"\\u202e | /tables/\\d+/rows/0/label
                    "label":" | "label":"\\uffff | /tables/\\d+/rows/0/label
                    "label":" | "label":"\\u0085 | /tables/\\d+/rows/0/label
                    "label":" | "label":"\\u2028 | /tables/\\d+/rows/0/label
                    "latitude": | "latitude":9 | /tables/\\d+/rows/0
                    "formatVersion":1 | "formatVersion":18446744073709551617 | /formatVersion
                    "formatVersion":1 | "formatVersion":1e999 | /formatVersion
                    "exportedAt":"2 | "exportedAt":"9 | /exportedAt
                    "table":"site" | "table":"personRole" | /tables/\\d+/table
                    "treeId":1 | "treeId":2 | /tables/\\d+/rows/0/treeId
                    "numberValue": | "numberValue":-9 | /tables/\\d+/rows/\\d+/numberValue
                    """)
    void aFaultIsToldWithWhereItStands(String found, String put, String pointer)
            throws SQLException {
        var spoilt = tree.replaceFirst(quoted(found), put.replace("\\u", "\\\\u"));
        assertThat(spoilt).isNotEqualTo(tree);
        assertThat(faults(spoilt)).extracting(Fault::field).anyMatch(at -> at.matches(pointer));
        assertThat(count("select count(*) from tree")).isEqualTo(trees);
    }

    private static String quoted(String text) {
        return java.util.regex.Pattern.quote(text);
    }

    /** A file that says it is of one tree was taken in with a million persons and no tree. */
    @Test
    void aTreesFileHoldsOneTreeAndOnlyWhomItsRowsName() throws SQLException {
        long persons = count("select count(*) from person");
        var more =
                IntStream.rangeClosed(1, 100_000)
                        .mapToObj("{\"id\":%d,\"name\":\"Nobody\"}"::formatted)
                        .collect(Collectors.joining(","));
        var crowd = file("TREE", table("person", more));
        var found = faults(crowd);
        assertThat(found).hasSize(FileFaults.MOST_TOLD);
        assertThat(found.get(0))
                .isEqualTo(new Fault("/tables", "expected one tree in a tree's file, found 0"));
        assertThat(found.get(1))
                .isEqualTo(
                        new Fault(
                                "/tables/0/rows/0",
                                "expected a person that another row names, found one that none"
                                        + " does"));
        assertThat(count("select count(*) from person")).isEqualTo(persons);
    }

    @Test
    void aPersonOrASiteTooManyIsToldWithItsRow() {
        assertThat(archive.take(REGISTRAR, sent(oneTree("", ""))).rows()).isEqualTo(3);
        assertThat(faults(oneTree(",{\"id\":2,\"name\":\"Too many\"}", "")))
                .extracting(Fault::field)
                .containsExactly("/tables/0/rows/1");
        assertThat(faults(oneTree("", "," + SITE.replace("\"id\":1", "\"id\":2"))))
                .extracting(Fault::field)
                .containsExactly("/tables/1/rows/1");
    }

    @Test
    void aTreesFileHasOneTreeAndNothingOfACourse() {
        var two = tree(1) + "," + tree(2);
        assertThat(faults(file("TREE", PERSONS, SITES, table("tree", two))))
                .containsExactly(
                        new Fault("/tables/2", "expected one tree in a tree's file, found 2"));
        var course =
                "{\"id\":1,\"name\":\"C\",\"startsOn\":\"2026-01-01\",\"endsOn\":\"2026-02-01\"}";
        var courses = table("course", course);
        assertThat(faults(file("TREE", PERSONS, courses)))
                .containsExactly(new Fault("/tables/1/table", "a tree's file has no “course”"));
        assertThat(faults(file("COURSE", PERSONS, SITES, table("tree", tree(1)))))
                .contains(new Fault("/tables", "expected one course in a course's file, found 0"));
        var both = course + "," + course.replace("\"id\":1", "\"id\":2");
        assertThat(faults(file("COURSE", table("course", both))))
                .containsExactly(
                        new Fault("/tables/0", "expected one course in a course's file, found 2"));
    }

    private static final String SITE =
            "{\"id\":1,\"name\":\"Terrace\",\"latitude\":48,\"longitude\":11,\"zone\":\"Europe/Berlin\"}";

    private static final String PERSON = "{\"id\":1,\"name\":\"From elsewhere\"}";
    private static final String PERSONS = table("person", PERSON);
    private static final String SITES = table("site", SITE);

    /** What the forms for the same rows refuse. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    Maple | '' | /tables/2/rows/0/label
                    Maple | '  ' | /tables/2/rows/0/label
                    Maple | \\u3164 | /tables/2/rows/0/label
                    Maple | \\u200b\\ufeff | /tables/2/rows/0/label
                    Maple | Ma\\nple | /tables/2/rows/0/label
                    From elsewhere | ' ' | /tables/0/rows/0/name
                    Terrace | '' | /tables/1/rows/0/name
                    Europe/Berlin | zz | /tables/1/rows/0/zone
                    Europe/Berlin | '' | /tables/1/rows/0/zone
                    Europe/Berlin | SystemV/CST6 | /tables/1/rows/0/zone
                    2020-01-01" | 1899-12-31" | /tables/2/rows/0/cameOn
                    2020-01-01" | 2200-01-01" | /tables/2/rows/0/cameOn
                    2020-01-01T | 2200-01-01T | /tables/2/rows/0/recordedAt
                    :48 | :1e999 | /tables/1/rows/0/latitude
                    """)
    void whatFormsRefuseNoFileBrings(String found, String put, String pointer) {
        assertThat(faults(oneTree("", "").replace(found, put)))
                .extracting(Fault::field)
                .containsExactly(pointer);
    }

    @Test
    void aWordOfAftercareIsOfTheFirstTimeOrALaterOne() {
        var work =
                "{\"id\":1,\"treeId\":1,\"byId\":1,\"recordedAt\":\"2026-01-01T10:00:00Z\","
                        + "\"technique\":\"repotting\",\"doneOn\":\"2026-01-01\",\"stress\":1,"
                        + "\"recoveryDays\":1,\"foliageShare\":0,\"rootShare\":0.3}";
        var word =
                "{\"id\":1,\"treeId\":1,\"workId\":1,\"task\":\"water\",\"times\":TIMES,"
                        + "\"number\":1,\"what\":\"DONE\",\"onDay\":\"2026-01-02\",\"byId\":1,"
                        + "\"recordedAt\":\"2026-01-02T10:00:00Z\"}";
        var file =
                file(
                        "TREE",
                        PERSONS,
                        SITES,
                        table("tree", tree(1)),
                        table("workDone", work),
                        table("aftercareWord", word));
        for (var times : List.of("0", "-1")) {
            assertThat(faults(file.replace("TIMES", times)))
                    .containsExactly(
                            new Fault(
                                    "/tables/4/rows/0/times",
                                    "expected at least 1, found " + times));
        }
        assertThat(archive.take(REGISTRAR, sent(file.replace("TIMES", "1"))).rows()).isEqualTo(5);
    }

    private static String oneTree(String morePersons, String moreSites) {
        return file(
                "TREE",
                table("person", PERSON + morePersons),
                table("site", SITE + moreSites),
                table("tree", tree(1)));
    }

    private static String tree(int number) {
        return "{\"id\":%d,\"label\":\"Maple\",\"species\":\"acer_palmatum\",\"keeperId\":1,\"siteId\":1,"
                        .formatted(number)
                + "\"cameOn\":\"2020-01-01\",\"byId\":1,\"recordedAt\":\"2020-01-01T10:00:00Z\"}";
    }

    private static String table(String name, String rows) {
        return "{\"table\":\"%s\",\"rows\":[%s]}".formatted(name, rows);
    }

    private static String file(String scope, String... tables) {
        return "{\"format\":\"ripewood-record\",\"formatVersion\":1,\"contentRevision\":\"none\","
                + "\"exportedAt\":\"2026-02-20T10:00:00Z\",\"scope\":\"%s\",\"named\":true,"
                        .formatted(scope)
                + "\"tables\":[%s]}".formatted(String.join(",", tables));
    }

    @Test
    void allFaultsAreToldAndNotOnlyTheFirst() {
        var spoilt =
                tree.replaceFirst("\"cameOn\":\"", "\"cameOn\":\"x")
                        .replaceFirst("\"label\":", "\"labell\":");
        assertThat(faults(spoilt))
                .extracting(fault -> fault.field().replaceAll(".*/", ""))
                .containsExactlyInAnyOrder("cameOn", "labell", "label");
        assertThat(faults(spoilt))
                .extracting(Fault::message)
                .anyMatch(it -> it.contains("Maybe “label”"));
    }

    @Test
    void aFileThatIsCutLeavesNothing() throws SQLException {
        long seed = 20_260_520L;
        var random = new SplittableRandom(seed);
        for (int round = 0; round < 60; round++) {
            var cut = tree.substring(0, random.nextInt(tree.length() - 2));
            assertThat(faults(cut)).as("seed %d, round %d", seed, round).isNotEmpty();
        }
        assertThat(count("select count(*) from tree")).isEqualTo(trees);
    }

    /** Refused, or read as another file that is whole; never half entered. */
    @Test
    void aFileWithAByteChangedIsEnteredWholeOrNotAtAll() throws SQLException {
        long seed = 20_260_521L;
        var random = new SplittableRandom(seed);
        long works = count("select count(*) from work_done");
        archive.take(REGISTRAR, sent(tree));
        long each = count("select count(*) from work_done") - works;
        int entered = 1;
        int refused = 0;
        for (int round = 0; round < 60; round++) {
            var changed = new StringBuilder(tree);
            changed.setCharAt(random.nextInt(tree.length()), (char) random.nextInt(' ', '~'));
            try {
                archive.take(REGISTRAR, sent(changed.toString()));
                entered++;
            } catch (Refused e) {
                refused++;
            }
            var as = "seed %d, round %d".formatted(seed, round);
            assertThat(count("select count(*) from tree")).as(as).isEqualTo(trees + entered);
            assertThat(count("select count(*) from work_done"))
                    .as(as)
                    .isEqualTo(works + entered * each);
        }
        assertThat(refused).isPositive();
        assertThat(entered).isGreaterThan(1);
    }

    @Test
    void aFileNestedDeepIsRefused() {
        assertThat(faults("{\"format\":" + "[".repeat(100_000))).isNotEmpty();
        assertThat(faults("[".repeat(100_000))).isNotEmpty();
        assertThat(faults("")).isNotEmpty();
        assertThat(faults("\u0000\u0001 no JSON")).isNotEmpty();
    }

    @Test
    void aWholeSchoolGoesIntoAnEmptySchoolOnly() throws IOException {
        try (var in = archive.school(REGISTRAR, RecordForm.ZIP)) {
            assertThatThrownBy(() -> archive.take(REGISTRAR, in))
                    .isInstanceOf(Refused.class)
                    .hasMessageContaining("can only be brought into an empty one");
        }
    }

    /** Both take their numbers from the same sequences, in blocks. */
    @Test
    void whatComesInAndWhatIsEnteredNeverMeet() throws SQLException {
        var site = treeSites.list(REGISTRAR).get(0).id();
        for (int round = 0; round < 3; round++) {
            assertThat(archive.take(REGISTRAR, sent(tree)).tables()).containsEntry("tree", 1);
            for (int each = 0; each < 30; each++) {
                rooms.enter(
                        REGISTRAR,
                        new NewTree(
                                "After the file",
                                "acer_palmatum",
                                1L,
                                site,
                                LocalDate.of(2024, 3, 1),
                                null,
                                null));
            }
        }
        assertThat(count("select count(*) from tree")).isEqualTo(trees + 3 * 31);
    }

    @Test
    void onlyARegistrarBringsARecordIn() {
        var instructor = new Actor(1, Set.of(Role.INSTRUCTOR));
        assertThatThrownBy(() -> archive.take(instructor, sent(tree)))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("registrar");
        assertThatThrownBy(() -> archive.school(instructor, RecordForm.ZIP))
                .isInstanceOf(Refused.class);
    }

    private List<Fault> faults(String file) {
        return catchThrowableOfType(Refused.class, () -> archive.take(REGISTRAR, sent(file)))
                .problem()
                .faults();
    }

    private static ByteArrayInputStream sent(String file) {
        return new ByteArrayInputStream(file.getBytes(StandardCharsets.UTF_8));
    }

    private long count(String query) throws SQLException {
        try (var connection = database.getConnection();
                var statement = connection.createStatement();
                var rows = statement.executeQuery(query)) {
            rows.next();
            return rows.getLong(1);
        }
    }
}
