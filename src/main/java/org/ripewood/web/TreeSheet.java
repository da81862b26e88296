package org.ripewood.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.aftercare.Care;
import org.ripewood.course.Species;
import org.ripewood.course.Technique;
import org.ripewood.standing.Step;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.standing.TreeStanding;
import org.ripewood.trees.Branch;
import org.ripewood.trees.BranchRole;
import org.ripewood.trees.Closing;
import org.ripewood.trees.ContainerStay;
import org.ripewood.trees.Departure;
import org.ripewood.trees.EarlierWords;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trunk;
import org.ripewood.trees.Wound;

/**
 * All that the page of a tree shows.
 *
 * @param teaches whether the reader may assign steps
 */
record TreeSheet(
        Tree tree,
        Species species,
        String keeper,
        String site,
        boolean teaches,
        Care care,
        List<StepLine> openSteps,
        List<StepLine> pastSteps,
        List<TechniqueStanding> proposals,
        TreeStanding standing,
        List<VerdictGroup> groups,
        List<FactLines.Block<FactLines.Known>> facts,
        List<FactLines.Block<FactLines.Recordable>> recordable,
        List<Closing> closings,
        Trunk trunk,
        PictureShown drawing,
        List<Branch> branches,
        List<ContainerStay> containers,
        List<WorkLine> works,
        List<Departure> departures,
        List<EarlierLine> earlier,
        Typed typed) {

    /** A step and what it is called. */
    record StepLine(Step step, String title) {}

    /** Work done and what it is called. */
    record WorkLine(org.ripewood.trees.WorkDone work, String title) {}

    /** Words that others have replaced, and who said them. */
    record EarlierLine(EarlierWords said, String by) {}

    static String title(java.util.Map<String, Technique> techniques, String code) {
        var technique = techniques.get(code);
        return technique == null ? code : technique.title();
    }

    /** How it left; null while it is at the school. */
    public @Nullable Departure departure() {
        return tree.left() && !departures.isEmpty() ? departures.get(0) : null;
    }

    public List<Wound> wounds() {
        return closings.stream().map(Closing::wound).toList();
    }

    public Typed form(String name, String dayField) {
        return typed.orFresh(name, Typed.fresh(name).with(dayField, standing.on()));
    }

    public Typed observation() {
        return form("observation", "observedOn");
    }

    public Typed wound() {
        return form("wound", "madeOn");
    }

    public Typed reading() {
        return form("reading", "observedOn");
    }

    public Typed branch() {
        return typed.orFresh("branch", Typed.fresh("branch"));
    }

    public Typed container() {
        return form("container", "since");
    }

    public Typed assignment() {
        return typed.orFresh("assignment", Typed.fresh("assignment"));
    }

    public BranchRole[] roles() {
        return BranchRole.values();
    }
}
