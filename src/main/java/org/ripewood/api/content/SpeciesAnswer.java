package org.ripewood.api.content;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.growth.ReferenceShoots;
import org.ripewood.core.season.StageRange;
import org.ripewood.core.season.WorkClocks;
import org.ripewood.course.Species;

/** A species, each figure with its source. Absence of a toxicity never means safe. */
record SpeciesAnswer(
        String code,
        String latin,
        String common,
        String habit,
        List<String> groups,
        String flushes,
        Hardiness hardiness,
        Repotting repotting,
        Graded callus,
        Graded compartment,
        String backbudding,
        Figure maxRootShare,
        Graded defoliation,
        Figure baseCelsius,
        @Nullable Figure rootKillCelsius,
        @Nullable Shoots shoots,
        @Nullable Double shelterBelowCelsius,
        Map<String, List<Open>> clocks,
        List<String> bleeding,
        List<String> flowersFade,
        List<Species.Toxicity> toxicity,
        String text) {

    record Hardiness(int zoneMin, int zoneMax, String source) {}

    /** Years between repottings, and the BBCH stages it is done in. */
    record Repotting(
            int youngFromYears,
            int youngToYears,
            int oldFromYears,
            int oldToYears,
            List<String> stages,
            String source) {}

    /** BBCH stages of a kind of work, and the usual weather it asks for. */
    record Open(List<String> stages, int growingDaysLeft, @Nullable Double notAboveCelsius) {}

    record Graded(String grade, @Nullable String note, String source) {}

    record Figure(double value, String source) {}

    /**
     * Reference shoots of a season in mm: of a weak tree, a healthy one, strong ones.
     *
     * @param inPot what counts by the school's own trees in pots; null where the content's lengths
     *     count, as there are too few trees or the school's record is switched off
     * @param inGround likewise of those in the ground
     */
    record Shoots(
            double weak,
            double fair,
            double potStrong,
            double groundStrong,
            String source,
            @Nullable AtSchool inPot,
            @Nullable AtSchool inGround) {}

    /**
     * The content's lengths moved by the shoots of the school's trees, in mm.
     *
     * @param percent how much longer than the content says; below 0 shorter
     * @param trees how many trees it rests on
     * @param seasons how many growing seasons they were measured in
     */
    record AtSchool(long weak, long healthy, long strong, long percent, int trees, int seasons) {}

    /**
     * The answer.
     *
     * @param school what its shoots are held against; null where nobody has said
     */
    static SpeciesAnswer of(Species species, @Nullable ReferenceShoots school) {
        var clocks = species.traits().clocks();
        return new SpeciesAnswer(
                species.code(),
                species.latin(),
                species.common(),
                species.traits().habit().name().toLowerCase(Locale.ROOT),
                species.traits().groups().stream().sorted().toList(),
                species.flushes(),
                new Hardiness(species.zoneMin(), species.zoneMax(), species.zoneSource()),
                repotting(species),
                new Graded(species.callusPace(), species.callusNote(), species.callusSource()),
                new Graded(species.compartmentStrength(), null, species.compartmentSource()),
                species.backbudding(),
                new Figure(species.traits().maxRootShare(), species.maxRootShareSource()),
                new Graded(
                        species.defoliation(),
                        species.defoliationNote(),
                        species.defoliationSource()),
                new Figure(species.baseCelsius(), species.baseCelsiusSource()),
                rootKill(species),
                shoots(species, school),
                clocks.shelterBelowCelsius(),
                open(clocks),
                spell(clocks.bleeding()),
                spell(clocks.flowersFade()),
                species.toxicity(),
                species.text());
    }

    private static Map<String, List<Open>> open(WorkClocks clocks) {
        var open = new TreeMap<String, List<Open>>();
        clocks.open()
                .forEach(
                        (clock, parts) ->
                                open.put(
                                        clock.code(),
                                        parts.stream()
                                                .map(
                                                        part ->
                                                                new Open(
                                                                        spell(part.ranges()),
                                                                        part.growingDaysLeft(),
                                                                        finite(
                                                                                part
                                                                                        .notAboveCelsius())))
                                                .toList()));
        return open;
    }

    private static @Nullable Double finite(double celsius) {
        return Double.isInfinite(celsius) ? null : celsius;
    }

    private static List<String> spell(List<StageRange> ranges) {
        return ranges.stream().map(StageRange::toString).toList();
    }

    private static Repotting repotting(Species species) {
        return new Repotting(
                species.repotYoungFromYears(),
                species.repotYoungToYears(),
                species.repotOldFromYears(),
                species.repotOldToYears(),
                species.repottingStages(),
                species.repottingSource());
    }

    private static @Nullable Shoots shoots(Species species, @Nullable ReferenceShoots school) {
        var shoots = species.shoots();
        if (shoots == null) {
            return null;
        }
        return new Shoots(
                shoots.weak(),
                shoots.fair(),
                shoots.potStrong(),
                shoots.groundStrong(),
                species.shootsSource(),
                atSchool(school, false),
                atSchool(school, true));
    }

    private static @Nullable AtSchool atSchool(@Nullable ReferenceShoots school, boolean ground) {
        if (school == null || !school.level(ground).isEnough()) {
            return null;
        }
        var level = school.level(ground);
        var lengths = school.lengths(ground);
        return new AtSchool(
                Math.round(lengths.weak()),
                Math.round(lengths.healthy(ground)),
                Math.round(lengths.strong(ground)),
                Math.round(100 * (level.factor() - 1)),
                level.trees(),
                level.seasons());
    }

    private static @Nullable Figure rootKill(Species species) {
        var celsius = species.rootKillCelsius();
        var source = species.rootKillSource();
        return celsius == null ? null : new Figure(celsius, source == null ? "" : source);
    }
}
