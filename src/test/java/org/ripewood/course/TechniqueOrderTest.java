package org.ripewood.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class TechniqueOrderTest {

    @Test
    void aCircleIsRefusedByNamingEveryTechniqueOnIt() {
        // Already there: branch_selection waits for front_marking, wiring_primary for
        // branch_selection.
        var file = "techniques/front_marking.yaml";
        var editing =
                new Editing()
                        .replace(file, "after: [root_flare_exposure]", "after: [wiring_primary]");
        assertThat(editing.faults())
                .filteredOn(fault -> fault.found().startsWith("a circle"))
                .containsExactly(
                        new ContentFault(
                                "techniques/branch_selection.yaml",
                                editing.lineOf("techniques/branch_selection.yaml", "after:"),
                                "a circle: branch_selection after front_marking after"
                                        + " wiring_primary after branch_selection",
                                "an order in which every technique can be reached"));
    }

    @Test
    void aTechniqueCannotWaitForItself() {
        var file = "techniques/jin.yaml";
        var editing = new Editing().replace(file, "after: [front_marking]", "after: [jin]");
        assertThat(editing.faults())
                .containsExactly(
                        new ContentFault(
                                file,
                                editing.lineOf(file, "after:"),
                                "a circle: jin after jin",
                                "an order in which every technique can be reached"));
    }

    @Test
    void everyCircleIsToldAtOnce() {
        var editing =
                new Editing()
                        .replace("techniques/jin.yaml", "after: [front_marking]", "after: [shari]")
                        .replace("techniques/shari.yaml", "after: [front_marking]", "after: [jin]")
                        .replace(
                                "techniques/show_container.yaml",
                                "after: [root_check, wiring_primary]",
                                "after: [moss_laying]");
        assertThat(editing.faults())
                .extracting(ContentFault::found)
                .containsExactly(
                        "a circle: jin after shari after jin",
                        "a circle: moss_laying after top_dressing after show_container after"
                                + " moss_laying");
    }

    @Test
    void techniquesAreToldStageByStageAsFarAsWhatComesFirstAllows() {
        var content = new Editing().read().content();
        assertThat(content).isNotNull();
        var told = new ArrayList<String>();
        var stages = List.of("establish", "develop", "structure", "refine", "show");
        var stage = 0;
        for (var technique : content.techniques().values()) {
            assertThat(told).containsAll(technique.rule().after());
            told.add(technique.code());
            assertThat(stages.indexOf(technique.stage())).isGreaterThanOrEqualTo(stage);
            stage = stages.indexOf(technique.stage());
        }
    }
}
