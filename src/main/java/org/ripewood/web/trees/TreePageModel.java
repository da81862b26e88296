package org.ripewood.web.trees;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.aftercare.Care;
import org.ripewood.aftercare.CareTask;
import org.ripewood.boards.Checklist;
import org.ripewood.boards.TreePortrait;
import org.ripewood.course.Species;
import org.ripewood.photos.Photo;
import org.ripewood.pictures.Picture;
import org.ripewood.standing.ReasonView;
import org.ripewood.standing.StageView;
import org.ripewood.trees.Departure;
import org.ripewood.trees.EarlierWords;
import org.ripewood.trees.Tree;
import org.ripewood.web.kit.PictureFormat;
import org.ripewood.web.kit.StepLine;

/**
 * All that the portrait of a tree shows.
 *
 * @param teaches whether the reader may assign steps
 * @param asks whether the reader keeps the tree and asks an instructor for steps
 * @param front the latest photo from the marked front; null when there is none
 * @param trunk the trunk as it is drawn, where there is no such photo; null when nothing of it is
 *     measured
 * @param stageCount how many stages there are
 * @param unsigned care after work that nobody has signed off yet
 * @param careCount how much care may be given any time now
 */
public record TreePageModel(
        Tree tree,
        Species species,
        String keeper,
        String site,
        boolean teaches,
        boolean asks,
        @Nullable Photo front,
        @Nullable Picture trunk,
        StageView stage,
        int stageCount,
        PictureFormat band,
        TreePortrait portrait,
        List<StepLine> openSteps,
        Care care,
        List<Checklist.Care> unsigned,
        int careCount,
        List<Departure> departures,
        List<EarlierLine> earlier) {

    /** More than these are not read at a glance; the rest stands on a page of its own. */
    private static final int MOST_SHOWN = 3;

    /** Words that others have replaced, and who said them. */
    record EarlierLine(EarlierWords said, String by) {}

    /** How it left; null while it is at the school. */
    public @Nullable Departure departure() {
        return tree.left() && !departures.isEmpty() ? departures.get(0) : null;
    }

    /** The first things missing for the next stage. */
    public List<ReasonView> missing() {
        return stage.missing().stream().limit(MOST_SHOWN).toList();
    }

    /** How many things are missing besides. */
    public int moreMissing() {
        return stage.missing().size() - missing().size();
    }

    public List<StepLine> steps() {
        return openSteps.stream().limit(MOST_SHOWN).toList();
    }

    public int moreSteps() {
        return openSteps.size() - steps().size();
    }

    /** How much care is due, also of work that nobody has signed off yet. */
    public int careDue() {
        return care.now().size() + unsigned.size();
    }

    public List<CareTask> careNow() {
        return care.now().stream().limit(MOST_SHOWN).toList();
    }

    public int moreCare() {
        return care.now().size() - careNow().size();
    }
}
