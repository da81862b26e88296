package org.ripewood.standing;

import java.time.LocalDate;
import java.util.List;
import org.ripewood.core.progress.Verdict;

/** The stage of a tree on a day, and how all techniques stand for it, in telling order. */
public record TreeStanding(
        long treeId,
        LocalDate on,
        String contentRevision,
        StageView stage,
        List<TechniqueStanding> techniques) {

    public TreeStanding {
        techniques = List.copyOf(techniques);
    }

    public List<TechniqueStanding> with(Verdict verdict) {
        return techniques.stream().filter(standing -> standing.verdict() == verdict).toList();
    }
}
