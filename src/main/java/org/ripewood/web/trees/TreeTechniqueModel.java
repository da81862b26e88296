package org.ripewood.web.trees;

import java.util.List;
import org.ripewood.course.Stage;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.standing.TreeStanding;
import org.ripewood.trees.Tree;
import org.ripewood.web.kit.FormState;

/**
 * How every technique stands for a tree, and its stage with the form to confirm the next.
 *
 * @param teaches whether the reader may assign steps and say the stage
 */
public record TreeTechniqueModel(
        Tree tree,
        boolean teaches,
        List<TechniqueStanding> proposals,
        List<TechniqueStanding> careNow,
        List<Stage> stages,
        TreeStanding standing,
        List<VerdictGroup> groups,
        FormState typed) {

    public FormState stageForm() {
        return typed.orFresh(
                "stage",
                FormState.fresh("stage")
                        .with("observedOn", standing.on())
                        .with("value", standing.stage()));
    }
}
