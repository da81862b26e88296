package org.ripewood.standing;

import java.time.LocalDate;
import java.util.List;
import org.ripewood.core.progress.Verdict;

/** How all techniques stand for a tree on a day, in telling order. */
public record TreeStanding(
        long treeId, LocalDate on, String contentRevision, List<TechniqueStanding> techniques) {

    public TreeStanding {
        techniques = List.copyOf(techniques);
    }

    public List<TechniqueStanding> with(Verdict verdict) {
        return techniques.stream().filter(standing -> standing.verdict() == verdict).toList();
    }
}
