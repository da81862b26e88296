package org.ripewood.asks;

import static org.ripewood.platform.records.NewsDescription.NONE;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.ripewood.platform.records.NewsDescription;
import org.ripewood.platform.records.NewsDescription.Whom;
import org.ripewood.platform.records.NewsDescriptions;

/**
 * What was asked, for instructors, and what was answered in words, for keepers: an answer by a step
 * is told as the step that was assigned. What was taken back is not told.
 */
@ApplicationScoped
class AskNews implements NewsDescriptions {

    @Override
    public List<NewsDescription> news() {
        return List.of(
                new NewsDescription(
                        Whom.TEACHER,
                        "ask q",
                        "q.open_for is not null",
                        "q.asked_at",
                        "concat('ASKED_', q.kind)",
                        "q.by_id",
                        "q.tree_id",
                        NONE,
                        "q.id",
                        "q.technique"),
                new NewsDescription(
                        Whom.KEEPER,
                        "ask_answer a join ask q on q.id = a.ask_id",
                        "a.words is not null",
                        "a.answered_at",
                        "'ANSWERED'",
                        "a.by_id",
                        "q.tree_id",
                        NONE,
                        "q.id",
                        "q.technique"));
    }
}
