package org.ripewood.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.ripewood.core.season.StageRange;
import org.ripewood.core.season.WorkClock;

/**
 * One answer to each when, over all species: the same work is open in the same stages whichever
 * technique does it. The stages are common practice, no source.
 */
@Tag("fast")
class SeasonTableTest {

    private static final Content CONTENT = Objects.requireNonNull(new Editing().read().content());

    /** Codes of leaves and shoots that trees use; Meier 2001, BBCH Monograph, 2nd edition. */
    private static final Set<Integer> LEAVES =
            stages("00-01", "03-03", "05-05", "07-07", "09-19", "31-39", "91-93", "95-95", "97-97")
                    .collect(Collectors.toCollection(TreeSet::new));

    static {
        LEAVES.add(99);
    }

    private static final List<String> ROOTS =
            List.of(
                    "root_pruning_repot",
                    "container_step",
                    "half_bare_root",
                    "circling_root_removal",
                    "sacrifice_root_removal",
                    "show_container");

    private static final List<String> CUTS =
            List.of(
                    "branch_selection",
                    "branch_removal",
                    "sacrifice_branch_removal",
                    "hard_cut_back",
                    "twig_thinning",
                    "trunk_chop");

    private static Stream<Integer> stages(String... ranges) {
        var wanted = Stream.of(ranges).map(StageRange::parse).toList();
        return Stream.iterate(0, stage -> stage < 100, stage -> stage + 1)
                .filter(stage -> wanted.stream().anyMatch(range -> range.holds(stage)));
    }

    static Stream<Species> species() {
        return CONTENT.species().values().stream();
    }

    private static Set<Integer> open(String technique, Species species) {
        var open =
                new TreeSet<>(
                        CONTENT.technique(technique).rule().season().openStages(species.traits()));
        open.retainAll(LEAVES);
        return open;
    }

    private static Set<Integer> open(String technique, String species) {
        return open(technique, CONTENT.species(species));
    }

    private static Set<Integer> leaves(String... ranges) {
        return stages(ranges)
                .filter(LEAVES::contains)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @ParameterizedTest
    @MethodSource("species")
    void rootsAreCutAtOneTimeWhateverCutsThem(Species species) {
        var answers = new LinkedHashSet<Set<Integer>>();
        ROOTS.forEach(technique -> answers.add(open(technique, species)));
        assertThat(answers).as(species.code()).hasSize(1);
        var said = leaves(species.repottingStages().stream().toArray(String[]::new));
        said.removeIf(stage -> stage > 50 && stage < 90);
        assertThat(answers.iterator().next()).as(species.code()).containsAll(said);
    }

    @ParameterizedTest
    @MethodSource("species")
    void nothingIsCutThatBleeds(Species species) {
        var bleeding = species.traits().clocks().bleeding();
        for (var technique : CUTS) {
            assertThat(open(technique, species))
                    .as("%s on %s", technique, species.code())
                    .isNotEmpty()
                    .noneMatch(stage -> bleeding.stream().anyMatch(range -> range.holds(stage)));
        }
    }

    @Test
    void maplesAndHornbeamBleed() {
        assertThat(
                        species()
                                .filter(one -> !one.traits().clocks().bleeding().isEmpty())
                                .map(Species::code))
                .containsExactlyInAnyOrder(
                        "acer_buergerianum", "acer_palmatum", "carpinus_betulus");
    }

    /** Opening leaves draw water: nobody cuts roots then, but on kinds moved in growth. */
    @ParameterizedTest
    @MethodSource("species")
    void wintersWorkKeepsOutOfTheTenderWeeks(Species species) {
        if (!species.traits().groups().contains("tropical")) {
            assertThat(open("root_check", species))
                    .as(species.code())
                    .doesNotContain(5, 7, 9, 10, 11, 15)
                    .contains(0, 3, 19, 35, 91, 99);
            assertThat(open("wiring_primary", species))
                    .as(species.code())
                    .doesNotContain(7, 9, 10, 11, 15);
        }
        assertThat(open("wire_removal", species)).as(species.code()).isEqualTo(LEAVES);
        assertThat(open("wiring_secondary", species))
                .as(species.code())
                .isEqualTo(open("wiring_primary", species));
        assertThat(open("feed_up", species)).as(species.code()).doesNotContain(0, 1, 97, 99);
        if (species.traits().groups().contains("conifer")) {
            assertThat(open("feed_up", species)).as(species.code()).contains(3, 10, 91, 95);
            assertThat(open("shari", species))
                    .as(species.code())
                    .contains(1, 3, 31)
                    .doesNotContain(91, 93, 95, 97);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "acer_palmatum       | branch_removal     | 19-33",
                "acer_palmatum       | trunk_chop         | 19-31",
                "acer_palmatum       | twig_thinning      | 93-99 19-39",
                "carpinus_betulus    | hard_cut_back      | 93-99 19-39",
                "carpinus_betulus    | sacrifice_branch_removal | 19-33",
                "malus_sp            | branch_removal     | 97-03",
                "crataegus_monogyna  | branch_removal     | 97-03",
                "cotoneaster_horizontalis | sacrifice_branch_removal | 97-03",
                "prunus_mume         | branch_removal     | 19-33",
                // after the flowers, which fade at about bud swelling to leaf opening
                "prunus_mume         | hard_cut_back      | 03-10 19-33",
                "rhododendron_indicum | root_pruning_repot | 03-07 19-35",
                "rhododendron_indicum | hard_cut_back      | 19-35",
                "ulmus_minor         | branch_removal     | 97-03",
                "pinus_thunbergii    | root_pruning_repot | 01-03 91-92",
                "juniperus_rigida    | root_pruning_repot | 03-07",
                "larix_kaempferi     | show_container     | 01-03",
                "fagus_sylvatica     | show_container     | 03-07",
                "taxodium_distichum  | circling_root_removal | 03-07",
                "quercus_suber       | half_bare_root     | 07-11",
                "ficus_retusa        | container_step     | 10-39",
                "acer_buergerianum   | wiring_secondary   | 91-03 19-35",
                "juniperus_chinensis | wiring_primary     | 17-05",
                "chamaecyparis_obtusa | wiring_primary    | 17-05",
                "pinus_sylvestris    | wiring_primary     | 92-03",
                // buds are set and firm, which the second flush of a two-flush pine is by then too
                "pinus_thunbergii    | needle_plucking    | 92-97",
                "pinus_mugo          | needle_plucking    | 92-95",
                "pinus_thunbergii    | autumn_bud_shoot_selection | 92-99",
                "pinus_thunbergii    | twig_thinning      | 92-97",
                "pinus_sylvestris    | branch_removal     | 92-03",
                // leaves are hard
                "acer_palmatum       | defoliation_full   | 31-35",
                "zelkova_serrata     | defoliation_full   | 31-35",
                "fagus_crenata       | pinching           | 10-15",
                // not in the brittle rest
                "fagus_sylvatica     | heavy_bending      | 01-03 31-35",
                "zelkova_serrata     | heavy_bending      | 01-03 31-35",
                // before the bloom and after it, never while flowers fade
                "prunus_mume         | flower_bud_thinning | 99-01",
                "rhododendron_indicum | flower_bud_thinning | 07-15",
                "malus_sp            | flower_bud_thinning | 07-11",
                "crataegus_monogyna  | flower_bud_thinning | 10-15",
                "prunus_mume         | fruit_thinning     | 19-33",
                "malus_sp            | fruit_thinning     | 31-33",
                "olea_europaea       | fruit_thinning     | 35-37",
                "pinus_thunbergii    | candle_cutting     | 31-35",
                "pinus_sylvestris    | feed_up            | 03-95",
                "ulmus_parvifolia    | feed_up            | 09-93",
                "juniperus_chinensis | shari              | 01-07 15-33",
                "ulmus_parvifolia    | pinching           | 10-39"
            })
    void isOpenWhenATeacherSaysSo(String species, String technique, String ranges) {
        assertThat(open(technique, species)).isEqualTo(leaves(ranges.split(" ", -1)));
    }

    /** Every kind of work has a season on every species. */
    @ParameterizedTest
    @MethodSource("species")
    void everyKindOfWorkHasASeason(Species species) {
        assertThat(species.traits().clocks().open()).containsOnlyKeys(WorkClock.values());
    }

    /**
     * Extreme nights lie about ten degrees below the usual ones of the coldest weeks (common
     * practice, no source), so that shelter begins about as far above the killing temperature.
     */
    @ParameterizedTest
    @MethodSource("species")
    void shelterBeginsWellAboveWhatKillsRoots(Species species) {
        var shelter = species.traits().clocks().shelterBelowCelsius();
        assertThat(shelter).isNotNull();
        if (species.rootKillCelsius() != null) {
            assertThat(shelter - species.rootKillCelsius()).as(species.code()).isBetween(5., 15.);
        }
        if (species.traits().groups().contains("tropical")) {
            assertThat(shelter).as(species.code()).isGreaterThanOrEqualTo(10);
        }
    }
}
