package org.ripewood.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.ripewood.materials.Movement;
import org.ripewood.materials.StockKind;
import org.ripewood.people.People;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.photos.Photo;
import org.ripewood.photos.Pictures;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;

/** A small school with one tree; each case breaks one thing in it. */
@Tag("one-database")
@QuarkusTest
class SchoolImportTest {

    private static final LocalDate LOADING_DAY = LocalDate.of(2026, 5, 20);

    private static final Map<String, String> SOUND =
            Map.of(
                    "people.yaml",
                    """
                    people:
                      - login: import-teacher
                        name: Imported Teacher
                        roles: [INSTRUCTOR, REGISTRAR]
                        welcome: yes
                      - login: import-student
                        name: Imported Student
                        roles: [STUDENT]
                        skills:
                          - {day: -30, by: import-teacher, lesson: wiring-branches, shown: yes}
                    """,
                    "sites.yaml",
                    """
                    sites:
                      - code: yard
                        name: Imported yard
                        by: import-teacher
                        latitude: 50
                        longitude: 3.5
                        zone: Europe/Paris
                    """,
                    "courses.yaml",
                    """
                    courses:
                      - code: first
                        name: Imported course
                        by: import-teacher
                        startsOn: -90
                        endsOn: 2026-12-31
                        instructors: [import-teacher]
                        students: [import-student]
                    """,
                    "sessions.yaml",
                    """
                    sessions:
                      - course: first
                        by: import-teacher
                        day: 3
                        startsAt: "09:00"
                        endsAt: "12:00"
                        place: Imported yard
                        instructors: [import-teacher]
                        trees:
                          - {tree: elm, bench: A1}
                    """,
                    "stock.yaml",
                    """
                    containers:
                      - {name: Imported pan, by: import-teacher, use: TRAINING, outline: ROUND, topLengthMm: 360, depthMm: 140, lipMm: 15, amount: 3}
                    substrates:
                      - name: imported grit
                        by: import-teacher
                        dryKgPerLitre: 1.4
                        movements:
                          - {day: -20, by: import-teacher, kind: RECEIVED, amount: 25}
                          - {day: -3, by: import-teacher, kind: TAKEN, amount: 4.5, note: class}
                    mixes:
                      - {name: Imported mix, by: import-teacher, parts: {imported grit: 2}}
                    wires:
                      - {metal: COPPER, gaugeMm: 7.7, by: import-teacher, amount: 90}
                    tools:
                      - {name: imported saw, by: import-teacher, amount: 1}
                    supplies:
                      - {name: imported mesh, unit: m, by: import-teacher}
                    """,
                    "trees/elm.yaml",
                    """
                    code: elm
                    label: Imported elm
                    species: ulmus_parvifolia
                    keeper: import-student
                    site: yard
                    by: import-teacher
                    cameOn: -400
                    containers:
                      - {day: -400, by: import-teacher, kind: nursery, litres: 5}
                    wounds:
                      - code: limb
                        place: Left, low down
                        day: -300
                        by: import-teacher
                        firstWidthMm: 12
                        firstLengthMm: 14
                        readings:
                          - {day: -100, by: import-teacher, openMm: 7}
                    observations:
                      - day: -2
                        by: import-student
                        facts:
                          pest_level: 0
                          soil_moist: yes
                    works:
                      - day: -200
                        by: import-teacher
                        technique: root_pruning_repot
                        rootPercent: 20
                        care:
                          - {day: -190, by: import-student, task: shade, did: done}
                    foundDone:
                      - {day: -210, by: import-teacher, technique: root_check}
                    photos:
                      - {day: -90, by: import-student, file: elm.jpg, view: FRONT}
                      - {day: -80, by: import-teacher, file: elm.jpg, view: DETAIL, wound: limb}
                    """);

    private static final Map<String, byte[]> PICTURES =
            Map.of("elm.jpg", Pictures.jpeg(), "cut-short.png", new byte[] {(byte) 0x89, 'P'});

    @Inject People people;
    @Inject PeopleUnchecked peopleUnchecked;
    @Inject SchoolImport schoolImport;
    @Inject Rooms rooms;

    /** Undoes a load that has been looked at. */
    private static final class LookedAt extends RuntimeException {}

    static Stream<Arguments> faults() {
        return Stream.of(
                in("people.yaml", "[STUDENT]", "[PUPIL]", 8, "found \"PUPIL\""),
                in("people.yaml", "login: import-student", "login: Stu Dent", 6, "login"),
                in("people.yaml", "lesson: wiring-branches", "lesson: wiring-brances", 10, "Maybe"),
                in("sites.yaml", "latitude: 50", "latitude: 95", 5, "latitude"),
                in("sites.yaml", "Europe/Paris", "Europe/Pariss", 7, "zone"),
                in("courses.yaml", "[import-student]", "[import-studen]", 8, "import-student”"),
                in("courses.yaml", "endsOn: 2026-12-31", "endsOn: 2026-12-32", 6, "endsOn"),
                in("sessions.yaml", "course: first", "course: frist", 2, "no course frist"),
                in("sessions.yaml", "{tree: elm,", "{tree: elms,", 10, "Maybe “elm”"),
                in("sessions.yaml", "endsAt: \"12:00\"", "endsAt: \"08:00\"", 6, "endsAt"),
                in("trees/elm.yaml", "ulmus_parvifolia", "ulmus_parviflora", 3, "Maybe"),
                in("trees/elm.yaml", "site: yard", "site: garden", 5, "no site garden"),
                in("trees/elm.yaml", "cameOn: -400", "cameOn: 12", 7, "cameOn"),
                in("trees/elm.yaml", "kind: nursery", "kind: bucket", 9, "kind"),
                in("trees/elm.yaml", "firstWidthMm: 12", "firstWidthMm: 0", 15, "firstWidthMm"),
                in("trees/elm.yaml", "openMm: 7", "openMm: 700", 18, "700"),
                in("trees/elm.yaml", "pest_level: 0", "pest_levl: 0", 23, "Maybe “pest_level”"),
                in("trees/elm.yaml", "pest_level: 0", "pest_level: 9", 23, "pest_level"),
                in("trees/elm.yaml", "soil_moist: yes", "soil_moist: damp", 24, "soil_moist"),
                in("trees/elm.yaml", "root_pruning_repot", "root_pruning_repots", 28, "Maybe"),
                in("trees/elm.yaml", "rootPercent: 20", "rootPercent: 120", 29, "rootPercent"),
                in(
                        "trees/elm.yaml",
                        "technique: root_check}",
                        "technique: no_such}",
                        33,
                        "no_such"),
                in("trees/elm.yaml", "task: shade", "task: shads", 31, "shads"),
                in("trees/elm.yaml", "did: done", "did: dun", 31, "done or not_needed"),
                in("trees/elm.yaml", "{day: -190,", "{day: -201,", 31, "before the work"),
                in("trees/elm.yaml", "works:", "worx:", 25, "there is no worx here"),
                in(
                        "trees/elm.yaml",
                        "elm.jpg, view: FRONT",
                        "elm.png, view: FRONT",
                        35,
                        "Maybe “elm.jpg”"),
                in(
                        "trees/elm.yaml",
                        "elm.jpg, view: FRONT",
                        "cut-short.png, view: FRONT",
                        35,
                        "photo"),
                in("trees/elm.yaml", "view: FRONT", "view: ASIDE", 35, "found \"ASIDE\""),
                in("trees/elm.yaml", "wound: limb", "wound: leg", 36, "leg"),
                in("trees/elm.yaml", "{day: -90,", "{day: 5,", 35, "takenOn"),
                in("stock.yaml", "lipMm: 15", "lipMm: 150", 2, "lipMm"),
                in("stock.yaml", "use: TRAINING", "use: POT", 2, "found \"POT\""),
                in("stock.yaml", "amount: 4.5", "amount: 45", 9, "cannot be taken"),
                in("stock.yaml", "day: -3", "day: -30", 9, "cannot be taken"),
                in("stock.yaml", "kind: TAKEN", "kind: LOST", 9, "found \"LOST\""),
                in("stock.yaml", "{imported grit: 2}", "{imported gritt: 2}", 11, "Maybe"),
                in("stock.yaml", "{imported grit: 2}", "{imported grit: two}", 11, "numbers"),
                in("stock.yaml", "gaugeMm: 7.7", "gaugeMm: 77", 13, "gaugeMm"),
                in("stock.yaml", "amount: 1}", "amount: 1.5}", 15, "whole number"),
                in("stock.yaml", "unit: m,", "units: m,", 17, "there is no units here"));
    }

    private static Arguments in(String file, String sound, String broken, int line, String says) {
        return Arguments.of(file, sound, broken, line, says);
    }

    @ParameterizedTest(name = "{0}: {2}")
    @MethodSource("faults")
    void aFaultIsToldWithFileAndLineAndNothingStays(
            String file, String sound, String broken, int line, String says) {
        var text = SOUND.getOrDefault(file, "");
        assertThat(text).contains(sound);
        var faults = faultsOf(with(file, text.replace(sound, broken)));
        assertThat(faults.faults())
                .anySatisfy(
                        fault -> {
                            assertThat(fault.file()).isEqualTo(file);
                            assertThat(fault.line()).isEqualTo(line);
                            assertThat(fault.message()).contains(says);
                        });
        assertNothingStayed();
    }

    @Test
    void faultsOfAllFilesAreToldAtOnce() {
        var texts = new HashMap<>(SOUND);
        texts.replaceAll((name, text) -> text.replace("Europe/Paris", "Nowhere"));
        texts.replaceAll((name, text) -> text.replace("pest_level: 0", "pest_level: 9"));
        texts.replaceAll((name, text) -> text.replace("lesson: wiring-branches", "lesson: x"));
        texts.replaceAll((name, text) -> text.replace("course: first", "course: last"));
        assertThat(faultsOf(new SchoolFiles(texts, PICTURES)).faults())
                .extracting(FileFault::file)
                .contains("sites.yaml", "people.yaml", "sessions.yaml");
        assertNothingStayed();
    }

    @Test
    void aMissingFileAndAnUnexpectedOneAreFaults() {
        var texts = new HashMap<>(SOUND);
        texts.remove("sessions.yaml");
        texts.put("session.yaml", "sessions: []");
        assertThat(faultsOf(new SchoolFiles(texts, PICTURES)).faults())
                .extracting(FileFault::toString)
                .containsExactly(
                        "session.yaml: no such file is expected here. Maybe “sessions.yaml”.",
                        "sessions.yaml: the file is missing");
    }

    @Test
    void aSchoolMayKeepNoStock() {
        var texts = new HashMap<>(SOUND);
        texts.remove("stock.yaml");
        assertThatThrownBy(
                        () ->
                                schoolImport.load(
                                        new SchoolFiles(texts, PICTURES),
                                        LOADING_DAY,
                                        new SignInSheet(),
                                        () -> {
                                            throw new LookedAt();
                                        }))
                .isInstanceOf(LookedAt.class);
    }

    @Test
    void offsetsCountFromTheDayOfLoading() {
        assertThatThrownBy(
                        () ->
                                schoolImport.load(
                                        new SchoolFiles(SOUND, PICTURES),
                                        LOADING_DAY,
                                        new SignInSheet(),
                                        this::lookAtDays))
                .isInstanceOf(LookedAt.class);
        assertNothingStayed();
    }

    private void lookAtDays() {
        var teacher = peopleUnchecked.findByLogin("import-teacher").orElseThrow();
        var actor = new Actor(teacher.id(), teacher.roles());
        var student = peopleUnchecked.findByLogin("import-student").orElseThrow();
        var trees = rooms.trees.list(actor, student.id(), null, new PageRequest(0, 10)).items();
        assertThat(trees).hasSize(1);
        var tree = trees.get(0);
        assertThat(tree.cameOn()).isEqualTo(LOADING_DAY.minusDays(400));
        var wound = rooms.wounds.of(actor, tree.id()).get(0);
        assertThat(wound.madeOn()).isEqualTo(LOADING_DAY.minusDays(300));
        assertThat(wound.openMm()).isEqualTo(7);
        assertThat(wound.readings().get(0).observedOn()).isEqualTo(LOADING_DAY.minusDays(100));
        assertThat(rooms.worksDone.of(actor, tree.id()).get(0).work().rootShare()).isEqualTo(0.2);
        assertThat(rooms.photos.ofTree(actor, tree.id()))
                .extracting(Photo::takenOn, Photo::byId, Photo::woundId)
                .containsExactly(
                        tuple(LOADING_DAY.minusDays(80), teacher.id(), wound.id()),
                        tuple(LOADING_DAY.minusDays(90), student.id(), null));
        var said =
                rooms.aftercare.of(actor, tree.id(), LOADING_DAY.minusDays(185)).tasks().stream()
                        .filter(task -> task.said() != null)
                        .toList();
        assertThat(said).hasSize(1);
        assertThat(said.get(0).said().on()).isEqualTo(LOADING_DAY.minusDays(190));
        var course =
                rooms.courses.list(actor).stream()
                        .filter(it -> it.name().equals("Imported course"))
                        .findFirst()
                        .orElseThrow();
        assertThat(course.endsOn()).isEqualTo(LocalDate.of(2026, 12, 31));
        var session = rooms.sessions.ofCourse(actor, course.id(), LOADING_DAY).get(0);
        assertThat(session.heldOn()).isEqualTo(LOADING_DAY.plusDays(3));
        assertThat(session.enrolments()).hasSize(1);
        assertThat(rooms.assessments.of(actor, student.id()).get(0).judgedOn())
                .isEqualTo(LOADING_DAY.minusDays(30));
        lookAtStock(actor);
        throw new LookedAt();
    }

    private void lookAtStock(Actor actor) {
        var stock = rooms.materials.stockOn(actor, LOADING_DAY);
        assertThat(stock.tools()).containsEntry("imported saw", 1);
        assertThat(stock.mixes().get("Imported mix").parts().get(0).substrate().name())
                .isEqualTo("imported grit");
        assertThat(stock.containers())
                .extracting(one -> one.container().name(), one -> one.container().count())
                .contains(tuple("Imported pan", 3));
        var grit =
                rooms.materials
                        .findByName(actor, StockKind.SUBSTRATE, "imported grit")
                        .orElseThrow();
        assertThat(grit.amount()).isEqualByComparingTo("20.5");
        assertThat(rooms.materials.movements(actor, grit.id(), new PageRequest(0, 9)).items())
                .extracting(Movement::on)
                .containsExactly(LOADING_DAY.minusDays(3), LOADING_DAY.minusDays(20));
    }

    private FaultyFiles faultsOf(SchoolFiles files) {
        return catchThrowableOfType(
                FaultyFiles.class,
                () ->
                        schoolImport.load(
                                files,
                                LOADING_DAY,
                                new SignInSheet(),
                                () -> {
                                    throw new AssertionError("a faulty school was entered");
                                }));
    }

    private void assertNothingStayed() {
        assertThat(peopleUnchecked.findByLogin("import-teacher")).isEmpty();
        var registrar = new Actor(0, java.util.Set.of(Role.REGISTRAR));
        assertThat(rooms.treeSites.list(registrar))
                .extracting(org.ripewood.sites.SiteLine::name)
                .doesNotContain("Imported yard");
        assertThat(rooms.materials.findByName(registrar, StockKind.TOOL, "imported saw")).isEmpty();
        assertThat(rooms.courses.list(registrar))
                .extracting(org.ripewood.people.Course::name)
                .doesNotContain("Imported course");
    }

    private static SchoolFiles with(String file, String text) {
        var texts = new HashMap<>(SOUND);
        texts.put(file, text);
        return new SchoolFiles(texts, PICTURES);
    }
}
