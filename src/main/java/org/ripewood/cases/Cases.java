package org.ripewood.cases;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.CourseContent;

/** The cases of the content in force that do not come out as their teachers say. */
@ApplicationScoped
public class Cases {

    private record Played(String revision, List<CaseOutcome> disagreeing) {}

    private final CourseContent content;
    private volatile @Nullable Played last;

    Cases(CourseContent content) {
        this.content = content;
    }

    /** In the order of the files; played once for each content that comes in force. */
    public List<CaseOutcome> disagreeing() {
        var inForce = content.inForce();
        var known = last;
        if (known == null || !known.revision().equals(inForce.revision())) {
            known = new Played(inForce.revision(), List.copyOf(CaseRun.disagreeing(inForce)));
            last = known;
        }
        return known.disagreeing();
    }
}
