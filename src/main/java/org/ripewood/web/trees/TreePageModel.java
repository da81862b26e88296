package org.ripewood.web.trees;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.aftercare.Care;
import org.ripewood.condition.Closing;
import org.ripewood.condition.Trunk;
import org.ripewood.course.Species;
import org.ripewood.course.Stage;
import org.ripewood.course.Technique;
import org.ripewood.records.Branch;
import org.ripewood.records.BranchRole;
import org.ripewood.records.ContainerStay;
import org.ripewood.records.WorkDone;
import org.ripewood.records.Wound;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.standing.TreeStanding;
import org.ripewood.trees.Departure;
import org.ripewood.trees.EarlierWords;
import org.ripewood.trees.Tree;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.PictureFormat;
import org.ripewood.web.kit.StepLine;

/**
 * All that the page of a tree shows.
 *
 * @param teaches whether the reader may assign steps
 */
public record TreePageModel(
        Tree tree,
        Species species,
        String keeper,
        String site,
        boolean teaches,
        Care care,
        List<StepLine> openSteps,
        List<StepLine> pastSteps,
        List<TechniqueStanding> proposals,
        List<TechniqueStanding> careNow,
        List<Stage> stages,
        TreeStanding standing,
        List<VerdictGroup> groups,
        List<FactLines.Block<FactLines.Known>> facts,
        List<FactLines.Block<FactLines.Recordable>> recordable,
        List<Closing> closings,
        Trunk trunk,
        PictureFormat drawing,
        List<Branch> branches,
        List<ContainerStay> containers,
        List<WorkLine> works,
        List<Technique> techniques,
        List<Departure> departures,
        List<EarlierLine> earlier,
        FormState typed) {

    /**
     * Work done and what it is called.
     *
     * @param enteredBy who entered it; null when it was signed off
     */
    record WorkLine(WorkDone work, String title, @Nullable String enteredBy) {}

    /** Words that others have replaced, and who said them. */
    record EarlierLine(EarlierWords said, String by) {}

    /** How it left; null while it is at the school. */
    public @Nullable Departure departure() {
        return tree.left() && !departures.isEmpty() ? departures.get(0) : null;
    }

    public List<Wound> wounds() {
        return closings.stream().map(Closing::wound).toList();
    }

    public FormState form(String name, String dayField) {
        return typed.orFresh(name, FormState.fresh(name).with(dayField, standing.on()));
    }

    public FormState observation() {
        return form("observation", "observedOn");
    }

    public FormState stageForm() {
        return typed.orFresh(
                "stage",
                FormState.fresh("stage")
                        .with("observedOn", standing.on())
                        .with("value", standing.stage()));
    }

    public FormState wound() {
        return form("wound", "madeOn");
    }

    public FormState reading() {
        return form("reading", "observedOn");
    }

    public FormState branch() {
        return typed.orFresh("branch", FormState.fresh("branch"));
    }

    public FormState work() {
        return typed.orFresh("work", FormState.fresh("work"));
    }

    public FormState container() {
        return form("container", "since");
    }

    public FormState assignment() {
        return typed.orFresh("assignment", FormState.fresh("assignment"));
    }

    public BranchRole[] roles() {
        return BranchRole.values();
    }
}
