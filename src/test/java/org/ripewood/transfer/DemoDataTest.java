package org.ripewood.transfer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ripewood.core.growth.ClosurePriors;
import org.yaml.snakeyaml.Yaml;

/** What the demo tells of its trees agrees with itself and with what the school teaches. */
@Tag("fast")
class DemoDataTest {

    private static final Path TREES = Path.of("demo-data", "trees");

    /** A site whose coldest month has a mean minimum of 15 °C: nothing rests there. */
    private static final String HEATED = "wrenfallow-glass";

    /** Readings are rounded to half a millimetre (common practice, no source). */
    private static final double ROUNDING_MM = 0.5;

    static Stream<Map<String, Object>> trees() throws IOException {
        try (var files = Files.list(TREES)) {
            return files.sorted().map(DemoDataTest::read).toList().stream();
        }
    }

    @Test
    void thereAreTrees() throws IOException {
        assertThat(trees()).hasSizeGreaterThanOrEqualTo(36);
    }

    /** Degrees run clockwise from the front, seen from above: 90 is at the viewer's left hand. */
    @ParameterizedTest
    @MethodSource("trees")
    void whatIsCalledLeftRightOrBackIsThere(Map<String, Object> tree) {
        Stream.concat(
                        list(tree, "branches").stream().map(branch -> place(branch, "name")),
                        list(tree, "wounds").stream().map(wound -> place(wound, "place")))
                .filter(place -> !Double.isNaN(place.degrees))
                .forEach(
                        place -> {
                            var aside = Math.sin(Math.toRadians(place.degrees));
                            var ahead = Math.cos(Math.toRadians(place.degrees));
                            if (place.says("left")) {
                                assertThat(aside).as(place.name).isPositive();
                            }
                            if (place.says("right")) {
                                assertThat(aside).as(place.name).isNegative();
                            }
                            if (place.says("back")) {
                                assertThat(ahead).as(place.name).isNegative();
                            }
                        });
    }

    /**
     * Lips advance at most at the pace the school teaches, times what the trunk gained in radius
     * meanwhile; a sixth more is left for what a calliper on bark cannot tell.
     */
    @ParameterizedTest
    @MethodSource("trees")
    void noWoundClosesFasterThanTheSchoolTeaches(Map<String, Object> tree) {
        var bases = new TreeMap<Integer, Double>();
        for (var look : list(tree, "observations")) {
            if (look.get("facts") instanceof Map<?, ?> facts
                    && facts.get("trunk_base_mm") instanceof Number base) {
                bases.put(number(look, "day").intValue(), base.doubleValue());
            }
        }
        for (var wound : list(tree, "wounds")) {
            var readings = list(wound, "readings");
            if (readings.isEmpty() || bases.size() < 2) {
                continue;
            }
            var last = readings.get(readings.size() - 1);
            double lip =
                    (number(wound, "firstWidthMm").doubleValue()
                                    - number(last, "openMm").doubleValue())
                            / 2;
            double radius =
                    (at(bases, number(last, "day").intValue())
                                    - at(bases, number(wound, "day").intValue()))
                            / 2;
            assertThat(lip)
                    .as("%s, %s", tree.get("code"), wound.get("code"))
                    .isLessThanOrEqualTo(
                            ClosurePriors.LIP_PER_RADIUS * radius * 7 / 6 + ROUNDING_MM / 2);
        }
    }

    /** An offset falls into another season with every day of loading. */
    @ParameterizedTest
    @MethodSource("trees")
    void noLookOutdoorsNamesAStage(Map<String, Object> tree) {
        var stages =
                list(tree, "observations").stream()
                        .map(look -> look.get("facts"))
                        .filter(Map.class::isInstance)
                        .map(Map.class::cast)
                        .filter(
                                facts ->
                                        facts.containsKey("growth_stage")
                                                || facts.containsKey("flower_stage"))
                        .count();
        if (!HEATED.equals(tree.get("site"))) {
            assertThat(stages).as(String.valueOf(tree.get("code"))).isZero();
        }
    }

    /** Who has no leader has no share of one. */
    @ParameterizedTest
    @MethodSource("trees")
    void theLeadersShareIsThatOfItsReadings(Map<String, Object> tree) {
        var leaders =
                list(tree, "branches").stream()
                        .filter(branch -> "LEADER".equals(branch.get("role")))
                        .toList();
        for (var look : list(tree, "observations")) {
            if (look.get("facts") instanceof Map<?, ?> facts
                    && facts.get("leader_share") instanceof Number share) {
                assertThat(leaders).as(String.valueOf(tree.get("code"))).hasSize(1);
                var readings = list(leaders.get(0), "readings");
                var last = readings.get(readings.size() - 1);
                double ratio =
                        number(last, "diameterMm").doubleValue()
                                / number(last, "trunkMm").doubleValue();
                assertThat(share.doubleValue())
                        .as(String.valueOf(tree.get("code")))
                        .isBetween(ratio - 0.03, ratio + 0.03);
            }
        }
    }

    private record Spot(String name, double degrees) {

        boolean says(String side) {
            return name.toLowerCase(java.util.Locale.ROOT).matches(".*\\b" + side + "\\b.*")
                    && !name.contains("slanting");
        }
    }

    private static Spot place(Map<String, Object> part, String name) {
        var degrees = part.get("bearingDegrees");
        return new Spot(
                String.valueOf(part.get(name)),
                degrees instanceof Number known ? known.doubleValue() : Double.NaN);
    }

    /** The girth on a day, in a straight line between the looks before and after it. */
    private static double at(NavigableMap<Integer, Double> bases, int day) {
        var before = bases.floorEntry(day);
        var after = bases.ceilingEntry(day);
        if (before == null) {
            before = bases.firstEntry();
            after = bases.higherEntry(before.getKey());
        }
        if (after == null || before.getKey().equals(after.getKey())) {
            return before.getValue();
        }
        double share = (double) (day - before.getKey()) / (after.getKey() - before.getKey());
        return before.getValue() + share * (after.getValue() - before.getValue());
    }

    private static Number number(Map<String, Object> part, String name) {
        assertThat(part.get(name)).as(name).isInstanceOf(Number.class);
        return (Number) part.get(name);
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> list(Map<String, Object> part, String name) {
        return part.get(name) instanceof List<?> list
                ? (List<Map<String, Object>>) list
                : List.of();
    }

    private static Map<String, Object> read(Path file) {
        try {
            return new Yaml().load(Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
