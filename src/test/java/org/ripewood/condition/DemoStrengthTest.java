package org.ripewood.condition;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.growth.ReferenceShoots;
import org.ripewood.core.growth.ShootLengths;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.season.Climate;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.NormalYear;
import org.ripewood.core.season.SeasonModel;
import org.ripewood.core.season.StageDays;
import org.yaml.snakeyaml.Yaml;

/**
 * The index worked out for the trees of the demo against what its instructors entered: two accounts
 * of the same trees, written apart.
 */
@Tag("fast")
class DemoStrengthTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 30);
    private static final List<Fact> GRADES =
            List.of(
                    Fact.SHOOT_EXTENSION_MM,
                    Fact.SHOOT_EXTENSION_RATIO,
                    Fact.LEAF_COLOUR_GRADE,
                    Fact.FOLIAGE_LOSS_PERCENT,
                    Fact.DIEBACK_PERCENT);

    /** One tree: the index worked out and the instructor's, either NaN when there is none. */
    private record Told(String tree, String species, List<Double> shoots, double own, double eye) {
        boolean near() {
            return Math.abs(own - eye) <= 10;
        }

        @Override
        public String toString() {
            return "%-20s %-26s %-32s %5.1f %5.1f%s"
                    .formatted(tree, species, shoots, own, eye, near() ? "" : "  <- apart");
        }
    }

    @Test
    void theIndexIsNearWhatInstructorsSawInNearlyEveryTree() throws IOException {
        var told = new ArrayList<Told>();
        try (var files = Files.list(Path.of("demo-data/trees"))) {
            for (var file : files.sorted().toList()) {
                told.add(told(read(file)));
            }
        }
        var table = String.join("\n", told.stream().map(Told::toString).toList());
        assertThat(told).hasSizeGreaterThanOrEqualTo(36);
        assertThat(told.stream().filter(Told::near).count())
                .as("trees within 10 points of their instructor's judgement:\n%s", table)
                .isGreaterThanOrEqualTo(30);
    }

    private static Told told(Map<String, Object> tree) throws IOException {
        var species = String.valueOf(tree.get("species"));
        var site = site(String.valueOf(tree.get("site")));
        var record = RecordOf.treeOn(TODAY).atLatitude(number(site.get("latitude")));
        for (var stay : parts(tree, "containers")) {
            record.container(String.valueOf(stay.get("kind")), day(stay));
        }
        var eye = Double.NaN;
        var eyeOn = LocalDate.MIN;
        var shoots = new ArrayList<Double>();
        for (var look : parts(tree, "observations")) {
            var facts = part(look, "facts");
            for (var fact : GRADES) {
                if (facts.containsKey(fact.code())) {
                    record.seen(fact, number(facts.get(fact.code())), day(look));
                }
            }
            if (facts.containsKey("shoot_extension_mm")) {
                shoots.add(number(facts.get("shoot_extension_mm")));
            }
            if (facts.containsKey("vigour_index") && day(look).isAfter(eyeOn)) {
                eye = number(facts.get("vigour_index"));
                eyeOn = day(look);
            }
        }
        var own = record.facts(kind(species, site)).number(Fact.VIGOUR_INDEX);
        return new Told(String.valueOf(tree.get("code")), species, shoots, own, eye);
    }

    private static TreeKind kind(String code, Map<String, Object> site) throws IOException {
        var species = read(Path.of("course-content/species", code + ".yaml"));
        var shoots = part(species, "shoots");
        var habit = Habit.valueOf(String.valueOf(species.get("habit")).toUpperCase(Locale.ROOT));
        var year =
                NormalYear.of(means(site, "meanMinimaCelsius"), means(site, "meanMaximaCelsius"));
        var first = LocalDate.of(2020, 1, 1);
        var last = LocalDate.of(2027, 12, 31);
        var model =
                SeasonModel.of(new Climate(number(site.get("latitude")), year), habit, first, last);
        return new TreeKind(
                ReferenceShoots.of(
                        new ShootLengths(
                                number(shoots.get("weak")),
                                number(shoots.get("fair")),
                                number(shoots.get("potStrong")),
                                number(shoots.get("groundStrong")))),
                StageDays.over(model, first, last),
                8,
                Map.of());
    }

    private static Map<String, Object> site(String code) throws IOException {
        return parts(read(Path.of("demo-data/sites.yaml")), "sites").stream()
                .filter(site -> code.equals(site.get("code")))
                .findFirst()
                .orElseThrow();
    }

    private static List<Double> means(Map<String, Object> site, String name) {
        return ((List<?>) site.get(name)).stream().map(DemoStrengthTest::number).toList();
    }

    private static LocalDate day(Map<String, Object> entry) {
        return TODAY.plusDays((long) number(entry.get("day")));
    }

    private static double number(Object value) {
        return ((Number) value).doubleValue();
    }

    private static Map<String, Object> read(Path file) throws IOException {
        return named(new Yaml().load(Files.readString(file)));
    }

    private static List<Map<String, Object>> parts(Map<String, Object> whole, String name) {
        var found = whole.get(name);
        return found == null
                ? List.of()
                : ((List<?>) found).stream().map(DemoStrengthTest::named).toList();
    }

    private static Map<String, Object> part(Map<String, Object> whole, String name) {
        return named(whole.get(name));
    }

    private static Map<String, Object> named(Object map) {
        var named = new HashMap<String, Object>();
        ((Map<?, ?>) map).forEach((name, value) -> named.put(String.valueOf(name), value));
        return named;
    }
}
