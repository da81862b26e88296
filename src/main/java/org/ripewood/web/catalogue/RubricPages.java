package org.ripewood.web.catalogue;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Lesson;
import org.ripewood.course.Rubric;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.TextFormat;

/** A rubric: its question and its levels in words, for students to read before they are judged. */
@Path("/rubrics/{code}")
@Authenticated
class RubricPages {

    /**
     * @param feeds the fact that a judgement becomes; null for none
     * @param shows lessons whose skill a judgement shows
     */
    record RubricSheet(Rubric rubric, @Nullable String feeds, List<Lesson> shows, String revision) {

        /** What a level counts as; empty when it becomes no fact. */
        public String counts(int level) {
            var becomes = rubric.feeds();
            return becomes == null ? "" : TextFormat.plain(becomes.perLevel().get(level));
        }

        public boolean ofTrees() {
            return rubric.subject() == Rubric.Subject.TREE;
        }
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance rubric(RubricSheet sheet);
    }

    private final CourseContent content;

    RubricPages(CourseContent content) {
        this.content = content;
    }

    @GET
    public Response rubric(String code) {
        var inForce = content.inForce();
        return Answer.page(Templates.rubric(sheet(inForce.rubric(code), inForce)));
    }

    private static RubricSheet sheet(Rubric rubric, Content content) {
        var feeds = rubric.feeds();
        var shows = rubric.shows();
        return new RubricSheet(
                rubric,
                feeds == null ? null : content.text(feeds.fact()).title(),
                shows == null ? List.of() : shows.lessons().stream().map(content::lesson).toList(),
                content.revision());
    }
}
