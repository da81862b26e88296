package org.ripewood.standing;

import java.util.Map;
import org.ripewood.School;
import org.ripewood.platform.Actor;
import org.ripewood.steps.NewReport;
import org.ripewood.trees.Tree;

/** An elm that may be wired, until a test makes something of it fail. */
public final class Elm {

    public static final String WIRING = "wiring_primary";

    private Elm() {}

    /** READY for wiring: what it asks for is met, its forerunner and the skill are shown. */
    public static Tree readyForWiring(School school, School.Group group, Assigner assigner) {
        var tree = readyButForSkill(school, group.instructor(), group.student(), assigner);
        school.showSkill(group.instructor(), group.student(), "wiring-branches");
        return tree;
    }

    public static Tree readyButForSkill(
            School school, Actor instructor, Actor keeper, Assigner assigner) {
        var tree = school.tree(instructor, keeper, "ulmus_parvifolia");
        Map.of("trunk_base_mm", "40", "trunk_target_mm", "42", "front_mark", "tentative")
                .forEach((fact, value) -> school.see(instructor, tree, fact, value));
        Map.of(
                        "branches_hold", "no",
                        "vigour_index", "78",
                        "pest_level", "0",
                        "circling_turn", "0.1",
                        "root_flare_exposed", "yes",
                        "branch_flexible", "yes",
                        "wire_on", "no")
                .forEach((fact, value) -> school.see(instructor, tree, fact, value));
        school.seeTrunk(instructor, tree, 0, 40);
        school.seeTrunk(instructor, tree, 60, 34);
        school.seeTrunk(instructor, tree, 120, 27);
        assigner.noteFoundDone(
                instructor, tree.id(), "branch_selection", School.TODAY.minusYears(1), null);
        assigner.noteFoundDone(instructor, tree.id(), "root_check", School.TODAY, null);
        return tree;
    }

    /** All is met for an air layer but the season, which comes with the leaves. */
    public static Tree readyForLayeringButForSeason(
            School school, School.Group group, Assigner assigner) {
        var instructor = group.instructor();
        var tree = school.tree(instructor, group.student(), "ulmus_parvifolia");
        Map.of(
                        "layer_wanted", "yes",
                        "vigour_index", "80",
                        "pest_level", "0",
                        "firm_in_container", "yes",
                        "low_bud_below_cut", "yes",
                        "shoot_extension_ratio", "1.1")
                .forEach((fact, value) -> school.see(instructor, tree, fact, value));
        assigner.noteFoundDone(instructor, tree.id(), "root_check", School.TODAY, null);
        school.showSkill(instructor, group.student(), "layering");
        return tree;
    }

    public static NewAssignment wire() {
        return new NewAssignment(WIRING, null, null, null, null);
    }

    public static NewReport wired() {
        return report("Eight branches wired with 2 mm aluminium.");
    }

    public static NewReport report(String evidence) {
        return new NewReport(
                School.TODAY, evidence, null, null, null, null, null, null, null, null);
    }
}
