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
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The plan of the house, as a map, and the rules that keep it. */
class HouseRulesTest {

    private static final String ROOT = "org.ripewood.";

    private static final List<String> CORE =
            List.of(
                    "core.season",
                    "core.growth",
                    "core.progress",
                    "core.route",
                    "core.bench",
                    "core.supply",
                    "core.agreement");
    private static final List<String> KEEPING =
            List.of(
                    "audit",
                    "people",
                    "course",
                    "trees",
                    "aftercare",
                    "materials",
                    "assess",
                    "sessions",
                    "standing",
                    "photos",
                    "classday",
                    "archive",
                    "lists");
    private static final List<String> DOORS =
            List.of("web", "api", "print", "calendar", "transfer");

    /** Not a door and not a keeper: draws core's values for those doors that show pictures. */
    private static final String PICTURES = "pictures";

    private static final List<String> DRAWING_DOORS = List.of("web", "api", "print");

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
        PLAN.put("people", List.of("audit"));
        PLAN.put("course", List.of());
        PLAN.put("materials", List.of());
        // Readings are rows without an entity, so their room says itself that they changed.
        PLAN.put("trees", List.of("audit", "people", "course"));
        PLAN.put("aftercare", List.of("people", "course", "trees"));
        PLAN.put("assess", List.of("people", "course", "trees"));
        PLAN.put("sessions", List.of("people", "course", "trees", "materials"));
        PLAN.put("standing", List.of("people", "course", "trees", "assess", "sessions"));
        // A photo may be evidence for a step, so it stands above the steps.
        PLAN.put("photos", List.of("trees", "standing"));
        // What trees could do meets who comes and what is in stock: above all three.
        PLAN.put(
                "classday",
                List.of("people", "course", "trees", "materials", "sessions", "standing"));
        // The record as a file follows from what the rooms say of their tables; it asks the two who
        // say whom a person and a tree is shown to.
        // A list's rows are entered through the rooms they are of.
        PLAN.put("lists", List.of("people", "trees"));
        PLAN.put("archive", List.of("audit", "people", "course", "trees"));
        PLAN.put(PICTURES, List.of("core.season", "core.growth"));
        DOORS.forEach(door -> PLAN.put(door, neighboursOf(door)));
        PLAN.put("platform", List.of());
    }

    private static List<String> neighboursOf(String door) {
        var neighbours = new ArrayList<String>(KEEPING);
        if (DRAWING_DOORS.contains(door)) {
            neighbours.add(PICTURES);
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
        if (!CORE.contains(room) && !List.of("platform", PICTURES).contains(room)) {
            allowed.add("platform");
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

    @Test
    void entitiesNeverLeaveTheirRoom() {
        classes()
                .that()
                .areAnnotatedWith(Entity.class)
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
                .that(not(resideInAnyPackage(packages(KEEPING, "platform"))))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("jakarta.persistence..")
                .because("platform turns a failed write into an answer, and nobody else needs it")
                .check(HOUSE);
    }

    @Test
    void httpStaysInDoorsAndPlatform() {
        noClasses()
                .that(not(resideInAnyPackage(packages(DOORS, "platform"))))
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
                .doNotHaveFullyQualifiedName(ROOT + "platform.AskedAddress")
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
                .that(not(resideInAnyPackage(packages(List.of("web", "print", "platform")))))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("io.quarkus.qute..")
                .because("platform has the one page for a problem")
                .check(HOUSE);
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

    private static String[] packages(List<String> rooms, String... more) {
        return Stream.concat(rooms.stream(), Stream.of(more))
                .map(room -> ROOT + room)
                .toArray(String[]::new);
    }

    private static String roomName(String packageName) {
        return packageName.substring(ROOT.length());
    }
}
