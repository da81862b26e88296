package org.ripewood;

import static com.tngtech.archunit.base.DescribedPredicate.alwaysTrue;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.persistence.Entity;
import jakarta.ws.rs.core.UriInfo;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The plan of the house, as a map, and the rules that keep it. */
@Tag("fast")
class HouseRulesTest {

    private static final String ROOT = "org.ripewood.";

    /** Classes in a room, so that a newcomer sees at a glance what is in it. */
    private static final long MOST = 40;

    private static final List<String> CORE =
            List.of(
                    "core.season",
                    "core.growth",
                    "core.progress",
                    "core.route",
                    "core.bench",
                    "core.supply",
                    "core.agreement");

    /** Where a tree stands, whose it is, what was recorded of it and what follows from that. */
    private static final List<String> TREE_ROOMS =
            List.of("people", "course", "sites", "trees", "records", "condition");

    private static final List<String> KEEPING =
            List.of(
                    "audit",
                    "school",
                    "people",
                    "passwords",
                    "secondfactor",
                    "signin",
                    "accounts",
                    "course",
                    "sites",
                    "trees",
                    "records",
                    "condition",
                    "aftercare",
                    "materials",
                    "assess",
                    "sessions",
                    "steps",
                    "standing",
                    "cases",
                    "readiness",
                    "boards",
                    "firstlook",
                    "routes",
                    "photos",
                    "life",
                    "classday",
                    "asks",
                    "many",
                    "archive",
                    "sample",
                    "lists",
                    "search",
                    "news");

    /** What belongs to no subject, from what knows least to what knows most. */
    private static final List<String> PLATFORM =
            List.of(
                    "platform.problems",
                    "platform",
                    "platform.records",
                    "platform.meters",
                    "platform.http",
                    "platform.guards",
                    "platform.once");

    private static final List<String> WEB =
            subjects(
                    "web",
                    "kit",
                    "account",
                    "catalogue",
                    "courses",
                    "firstlook",
                    "judgements",
                    "life",
                    "many",
                    "photos",
                    "school",
                    "search",
                    "sites",
                    "steps",
                    "stock",
                    "trees");
    private static final List<String> API =
            subjects(
                    "api", "kit", "content", "courses", "school", "search", "steps", "stock",
                    "trees");
    private static final List<String> DOORS =
            Stream.of(WEB, API, List.of("print", "calendar", "transfer"))
                    .flatMap(List::stream)
                    .toList();

    /** Not a door and not a keeper: draws core's values for those doors that show pictures. */
    private static final String PICTURES = "pictures";

    private static final List<String> DOORS_WITHOUT_PICTURES = List.of("calendar", "transfer");

    /** Room to the rooms it may import; core rooms and platform are added for those who may. */
    private static final Map<String, List<String>> PLAN = new LinkedHashMap<>();

    static {
        PLAN.put("core.season", List.of());
        PLAN.put("core.growth", List.of("core.season"));
        PLAN.put("core.progress", List.of("core.season"));
        PLAN.put("core.bench", List.of("core.season"));
        PLAN.put("core.supply", List.of());
        PLAN.put("core.agreement", List.of());
        PLAN.put("core.route", List.of("core.season", "core.growth", "core.progress"));
        PLAN.put("audit", List.of());
        PLAN.put("school", List.of());
        PLAN.put("people", List.of());
        PLAN.put("passwords", List.of("people"));
        PLAN.put("secondfactor", List.of("audit", "people", "passwords"));
        PLAN.put("signin", List.of("audit", "people", "passwords", "secondfactor"));
        PLAN.put("accounts", List.of("audit", "people", "passwords", "signin"));
        PLAN.put("course", List.of());
        PLAN.put("materials", List.of());
        // Readings are rows without an entity, so their room says itself that they changed.
        PLAN.put("sites", List.of("audit", "course"));
        PLAN.put("trees", List.of("people", "course", "sites"));
        PLAN.put("records", List.of("people", "course", "sites", "trees"));
        PLAN.put("condition", List.of("people", "course", "sites", "trees", "records"));
        PLAN.put("aftercare", with(TREE_ROOMS));
        PLAN.put("assess", with(TREE_ROOMS));
        PLAN.put("sessions", with(TREE_ROOMS, "materials"));
        PLAN.put("steps", with(TREE_ROOMS));
        PLAN.put("standing", with(TREE_ROOMS, "assess", "sessions", "steps"));
        // Whoever is assigned a step has been answered.
        PLAN.put("asks", with(TREE_ROOMS, "steps"));
        PLAN.put("many", with(TREE_ROOMS));
        // What teachers say of trees is derived and judged as trees are.
        PLAN.put("cases", with(TREE_ROOMS, "steps", "standing"));
        // Below the boards, so that a first page counts what it has read and judged already.
        PLAN.put("readiness", with(TREE_ROOMS, "steps", "standing", "photos"));
        PLAN.put(
                "boards", with(TREE_ROOMS, "assess", "sessions", "steps", "standing", "readiness"));
        // Answers become entries, what they change is told, and what to measure next is the
        // boards'.
        PLAN.put("firstlook", with(TREE_ROOMS, "steps", "standing", "boards"));
        PLAN.put("routes", with(TREE_ROOMS, "steps", "standing", "boards"));
        // A photo may be evidence for a step, so it stands above the steps.
        PLAN.put("photos", with(TREE_ROOMS, "steps"));
        // A life is told from record, steps and photos, and what is ahead by the route.
        PLAN.put("life", with(TREE_ROOMS, "steps", "standing", "photos", "routes"));
        // What trees could do meets who comes and what is in stock: above all three.
        PLAN.put("classday", with(TREE_ROOMS, "materials", "sessions", "boards"));
        // A list's rows are entered through the rooms they are of.
        PLAN.put("lists", with(TREE_ROOMS, "accounts", "standing"));
        // What happened the rooms describe, so it leans on none of them; titles are the content's.
        PLAN.put("news", List.of("course"));
        // Names within reach and what is taught, and nothing of a record.
        PLAN.put("search", List.of("people", "course", "trees"));
        // The record as a file follows from what the rooms say of their tables; it asks the two who
        // say whom a person and a tree is shown to.
        PLAN.put("archive", with(TREE_ROOMS, "audit"));
        // Who reads its files is above it and answers to it; what goes with it the record knows.
        PLAN.put("sample", with(TREE_ROOMS, "audit", "archive"));
        PLAN.put(PICTURES, List.of("core.season", "core.growth"));
        DOORS.forEach(door -> PLAN.put(door, neighboursOf(door)));
        for (int i = 0; i < PLATFORM.size(); i++) {
            PLAN.put(PLATFORM.get(i), PLATFORM.subList(0, i));
        }
    }

    private static List<String> subjects(String door, String... names) {
        return Stream.of(names).map(name -> door + "." + name).toList();
    }

    private static List<String> with(List<String> rooms, String... more) {
        return Stream.concat(rooms.stream(), Stream.of(more)).toList();
    }

    /** Every keeping room; of its own door the kit, which answers are made with. */
    private static List<String> neighboursOf(String door) {
        var neighbours = new ArrayList<String>(KEEPING);
        if (!DOORS_WITHOUT_PICTURES.contains(door)) {
            neighbours.add(PICTURES);
        }
        if (WEB.contains(door)) {
            neighbours.add("web.kit");
        }
        if (API.contains(door)) {
            neighbours.add("api.kit");
        }
        if (List.of("api.courses", "api.steps").contains(door)) {
            neighbours.add("api.content");
        }
        return neighbours;
    }

    private static final JavaClasses HOUSE =
            new ClassFileImporter()
                    .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                    .importPackages("org.ripewood");

    @Test
    void everyRoomStandsInThePlan() {
        var rooms = new TreeSet<String>();
        HOUSE.forEach(type -> rooms.add(type.getPackageName()));
        rooms.remove("org.ripewood");
        assertThat(rooms).allSatisfy(room -> assertThat(PLAN).containsKey(roomName(room)));
    }

    @Test
    void everyRoomImportsOnlyWhatThePlanAllows() {
        PLAN.forEach((room, neighbours) -> rule(room, neighbours).check(HOUSE));
    }

    private static ArchRule rule(String room, List<String> neighbours) {
        var allowed = new ArrayList<String>(neighbours);
        allowed.add(room);
        if (!CORE.contains(room) && !PLATFORM.contains(room) && !PICTURES.equals(room)) {
            allowed.addAll(PLATFORM);
            allowed.addAll(CORE);
        }
        var packages = allowed.stream().map(name -> ROOT + name).toArray(String[]::new);
        return noClasses()
                .that()
                .resideInAPackage(ROOT + room)
                .should()
                .dependOnClassesThat(
                        resideInAPackage("org.ripewood..").and(not(resideInAnyPackage(packages))))
                .as("%s imports only %s".formatted(room, allowed))
                .allowEmptyShould(true);
    }

    @Test
    void roomsDoNotGoInACircle() {
        slices().matching("org.ripewood.(**)").should().beFreeOfCycles().check(HOUSE);
    }

    @Test
    void coreIsFreeOfFrameworkClockDiceAndFiles() {
        noClasses()
                .that()
                .resideInAPackage("org.ripewood.core..")
                .should()
                .dependOnClassesThat(
                        not(
                                resideInAnyPackage(
                                        "java.lang..",
                                        "java.util..",
                                        "java.time..",
                                        "java.math..",
                                        "org.jspecify..",
                                        "org.apache.commons.statistics..",
                                        "org.apache.commons.numbers..",
                                        "org.apache.commons.rng..",
                                        "org.hipparchus..",
                                        "org.jgrapht..",
                                        "org.chocosolver..",
                                        "org.ripewood.core..")))
                .orShould()
                .callMethod(java.time.LocalDate.class, "now")
                .orShould()
                .callMethod(java.time.Instant.class, "now")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(Math.class, "random")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.util.Random")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.util.concurrent.ThreadLocalRandom")
                .check(HOUSE);
    }

    /** Rows that rooms of the same subject still share. */
    private static final String[] SHARED_ROWS = {
        ROOT + "people.PersonEntity", ROOT + "steps.StepEntity", ROOT + "steps.WaiverEntity"
    };

    @Test
    void entitiesNeverLeaveTheirRoom() {
        classes()
                .that()
                .areAnnotatedWith(Entity.class)
                .and()
                .haveNameNotMatching(String.join("|", SHARED_ROWS))
                .should()
                .bePackagePrivate()
                .allowEmptyShould(true)
                .check(HOUSE);
    }

    @Test
    void hibernateStaysInKeepingRooms() {
        noClasses()
                .that(not(resideInAnyPackage(packages(KEEPING))))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.hibernate..", "io.quarkus.hibernate..")
                .check(HOUSE);
        noClasses()
                .that(not(resideInAnyPackage(packages(both(KEEPING, PLATFORM)))))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("jakarta.persistence..")
                .because("platform turns a failed write into an answer, and nobody else needs it")
                .check(HOUSE);
    }

    @Test
    void httpStaysInDoorsAndPlatform() {
        noClasses()
                .that(not(resideInAnyPackage(packages(both(DOORS, PLATFORM)))))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("jakarta.ws.rs..", "org.jboss.resteasy..")
                .check(HOUSE);
    }

    /** Who guards an address and reads it otherwise than routing does can be walked round. */
    @Test
    void thePathIsReadInOnePlace() {
        noClasses()
                .that()
                .doNotHaveFullyQualifiedName(ROOT + "platform.http.AskedAddress")
                .should()
                .callMethod(RoutingContext.class, "normalizedPath")
                .orShould()
                .callMethod(HttpServerRequest.class, "path")
                .orShould()
                .callMethod(HttpServerRequest.class, "uri")
                .orShould()
                .callMethod(UriInfo.class, "getPath")
                .orShould()
                .callMethod(UriInfo.class, "getRequestUri")
                .orShould()
                .callMethod(UriInfo.class, "getAbsolutePath")
                .check(HOUSE);
    }

    @Test
    void quteStaysInWebAndPrint() {
        noClasses()
                .that(
                        not(
                                resideInAnyPackage(
                                        packages(both(both(WEB, PLATFORM), List.of("print"))))))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("io.quarkus.qute..")
                .because("platform has the one page for a problem")
                .check(HOUSE);
    }

    /** What is asked without a reach is for rooms that have asked one; a name is no secret. */
    @Test
    void doorsAskWithAReach() {
        noClasses()
                .that()
                .resideInAnyPackage(packages(DOORS))
                .should()
                .dependOnClassesThat()
                .haveSimpleNameEndingWith("Unchecked")
                .check(HOUSE);
    }

    @Test
    void noRoomHasMoreThanFortyClasses() {
        var sizes = new TreeMap<String, Long>();
        HOUSE.forEach(
                type -> {
                    if (type.isTopLevelClass() && !type.getSimpleName().equals("package-info")) {
                        sizes.merge(type.getPackageName(), 1L, Long::sum);
                    }
                });
        assertThat(sizes).allSatisfy((room, size) -> assertThat(size).isLessThanOrEqualTo(MOST));
    }

    @Test
    void nobodyImportsADoor() {
        noClasses()
                .that(alwaysTrue())
                .and(not(resideInAnyPackage(packages(DOORS))))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(packages(DOORS))
                .check(HOUSE);
    }

    private static String[] packages(List<String> rooms) {
        return rooms.stream().map(room -> ROOT + room).toArray(String[]::new);
    }

    private static List<String> both(List<String> some, List<String> others) {
        return Stream.concat(some.stream(), others.stream()).toList();
    }

    private static String roomName(String packageName) {
        return packageName.substring(ROOT.length());
    }
}
