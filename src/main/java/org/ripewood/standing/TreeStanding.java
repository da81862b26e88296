package org.ripewood.standing;

import java.time.LocalDate;
import java.util.List;
import org.ripewood.core.progress.Verdict;

/**
 * The stage of a tree on a day, and how all techniques stand for it, in telling order.
 *
 * @param stage code of the stage it is in
 * @param trainingStage the same with what is missing for the next
 */
public record TreeStanding(
        long treeId,
        LocalDate on,
        String contentRevision,
        String stage,
        StageView trainingStage,
        List<TechniqueStanding> techniques) {

    public TreeStanding {
        techniques = List.copyOf(techniques);
    }

    public List<TechniqueStanding> with(Verdict verdict) {
        return techniques.stream().filter(standing -> standing.verdict() == verdict).toList();
    }
}
