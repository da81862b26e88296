package org.ripewood.web.trees;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.aftercare.Care;
import org.ripewood.course.Species;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.standing.TreeStanding;
import org.ripewood.trees.Departure;
import org.ripewood.trees.EarlierWords;
import org.ripewood.trees.Tree;
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
        List<TechniqueStanding> proposals,
        List<TechniqueStanding> careNow,
        TreeStanding standing,
        List<Departure> departures,
        List<EarlierLine> earlier) {

    /** Words that others have replaced, and who said them. */
    record EarlierLine(EarlierWords said, String by) {}

    /** How it left; null while it is at the school. */
    public @Nullable Departure departure() {
        return tree.left() && !departures.isEmpty() ? departures.get(0) : null;
    }
}
