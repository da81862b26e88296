package org.ripewood.web.trees;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.condition.Closing;
import org.ripewood.condition.Trunk;
import org.ripewood.course.Technique;
import org.ripewood.records.Branch;
import org.ripewood.records.BranchRole;
import org.ripewood.records.ContainerStay;
import org.ripewood.records.WorkDone;
import org.ripewood.records.Wound;
import org.ripewood.trees.Tree;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.PictureFormat;
import org.ripewood.web.kit.StepLine;

/**
 * What the page of a tree's record shows: what is known, and the forms for more of it.
 *
 * @param teaches whether the reader may say that earlier work counts as done
 */
public record TreeRecordModel(
        Tree tree,
        LocalDate on,
        boolean teaches,
        List<StepLine> pastSteps,
        List<FactLines.Block<FactLines.Known>> facts,
        List<FactLines.Block<FactLines.Recordable>> recordable,
        List<Closing> closings,
        Trunk trunk,
        PictureFormat drawing,
        List<Branch> branches,
        List<ContainerStay> containers,
        List<WorkLine> works,
        List<Technique> techniques,
        FormState typed) {

    /**
     * Work done and what it is called.
     *
     * @param enteredBy who entered it; null when it was signed off
     */
    record WorkLine(WorkDone work, String title, @Nullable String enteredBy) {}

    public List<Wound> wounds() {
        return closings.stream().map(Closing::wound).toList();
    }

    private FormState form(String name, String dayField) {
        return typed.orFresh(name, FormState.fresh(name).with(dayField, on));
    }

    public FormState observation() {
        return form("observation", "observedOn");
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

    public BranchRole[] roles() {
        return BranchRole.values();
    }
}
