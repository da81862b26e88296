package org.ripewood.print;

import java.time.LocalDate;
import java.util.List;
import org.ripewood.aftercare.CareTask;
import org.ripewood.boards.Checklist;
import org.ripewood.condition.Closing;
import org.ripewood.condition.Trunk;
import org.ripewood.core.progress.Evidence;
import org.ripewood.course.FactText;
import org.ripewood.course.Species;
import org.ripewood.pictures.Picture;
import org.ripewood.records.Branch;
import org.ripewood.records.ContainerStay;
import org.ripewood.records.WorkDone;
import org.ripewood.standing.StageView;
import org.ripewood.trees.Tree;

/**
 * What a next keeper has to know of a tree. It names nobody: who saw or did something is told by
 * role, and notes, which may speak of people, are left out.
 *
 * @param containers latest first
 * @param works latest first
 * @param care late, due and to come
 */
record Passport(
        Tree tree,
        Species species,
        LocalDate on,
        StageView stage,
        List<Seen> seen,
        List<ContainerStay> containers,
        Trunk trunk,
        Picture picture,
        List<Closing> closings,
        List<Branch> branches,
        List<Stage> stages,
        List<Worked> works,
        List<CareTask> care) {

    /** What was seen last of something. */
    record Seen(FactText text, Evidence evidence) {}

    /** Steps signed off or found done in a stage of training. */
    record Stage(String title, List<Checklist.Done> done) {}

    /** Work done and what it is called. */
    record Worked(WorkDone work, String title, boolean signedOff) {}

    /** Whether there is anything to be drawn. */
    public boolean drawn() {
        return !trunk.profile().readings().isEmpty() || !closings.isEmpty() || !branches.isEmpty();
    }
}
