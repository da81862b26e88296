package org.ripewood.steps;

import static org.ripewood.platform.records.NewsDescription.NONE;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.ripewood.platform.records.NewsDescription;
import org.ripewood.platform.records.NewsDescription.Whom;
import org.ripewood.platform.records.NewsDescriptions;

/** What instructors did with a keeper's steps, and what was reported to them. */
@ApplicationScoped
class StepNews implements NewsDescriptions {

    @Override
    public List<NewsDescription> news() {
        return List.of(events(Whom.KEEPER, "<>"), events(Whom.TEACHER, "="));
    }

    private static NewsDescription events(Whom whom, String reported) {
        return new NewsDescription(
                whom,
                "step_event e join step s on s.id = e.step_id",
                "e.became %s '%s'".formatted(reported, StepState.REPORTED),
                "e.happened_at",
                "e.became",
                "e.by_id",
                "s.tree_id",
                NONE,
                "s.id",
                "s.technique");
    }
}
