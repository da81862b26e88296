package org.ripewood.web.school;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.RawString;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Lesson;
import org.ripewood.course.Stage;
import org.ripewood.course.Technique;
import org.ripewood.platform.http.Sandbox;
import org.ripewood.web.kit.Answer;

/** The lessons, stage by stage. */
@Path("/lessons")
@Authenticated
class LessonPages {

    record StageLessons(Stage stage, List<Lesson> lessons) {}

    /**
     * @param body sanitised when the content was read
     * @param ofSchool whether it is the school's own
     */
    record LessonSheet(
            Lesson lesson,
            RawString body,
            Stage stage,
            List<Technique> techniques,
            boolean ofSchool) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance lessons(List<StageLessons> stages, String revision);

        static native TemplateInstance lesson(LessonSheet sheet);
    }

    private final CourseContent content;

    LessonPages(CourseContent content) {
        this.content = content;
    }

    @GET
    public Response lessons() {
        var inForce = content.inForce();
        var stages = inForce.stages().stream().map(stage -> lessons(inForce, stage)).toList();
        return Answer.page(Templates.lessons(stages, inForce.revision()));
    }

    @GET
    @Path("{code}")
    public Response lesson(String code) {
        var inForce = content.inForce();
        var lesson = inForce.lesson(code);
        var stage =
                inForce.stages().stream()
                        .filter(found -> found.code().equals(lesson.stage()))
                        .findFirst()
                        .orElseThrow();
        var techniques = lesson.teaches().stream().map(inForce::technique).toList();
        return Answer.page(
                Templates.lesson(
                        new LessonSheet(
                                lesson,
                                new RawString(lesson.html()),
                                stage,
                                techniques,
                                inForce.isOfSchool(lesson))));
    }

    /** Strictly as what it is, and in a box of its own when somebody opens it by itself. */
    @GET
    @Path("pictures/{file}")
    public Response picture(String file) {
        var picture = content.inForce().picture(file);
        return Response.ok(picture.open(), picture.type().mediaType())
                .header("Content-Security-Policy", Sandbox.POLICY)
                .header("Cache-Control", "private, max-age=3600")
                .build();
    }

    private static StageLessons lessons(Content content, Stage stage) {
        return new StageLessons(
                stage,
                content.lessons().values().stream()
                        .filter(lesson -> lesson.stage().equals(stage.code()))
                        .toList());
    }
}
