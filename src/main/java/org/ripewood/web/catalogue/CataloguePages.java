package org.ripewood.web.catalogue;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.Comparator;
import java.util.List;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Rubric;
import org.ripewood.course.Species;
import org.ripewood.course.Stage;
import org.ripewood.course.Technique;
import org.ripewood.web.kit.Answer;

/** All that is taught, to be read apart from any tree. */
@Path("/catalogue")
@Authenticated
class CataloguePages {

    record StageTechniques(Stage stage, List<Technique> techniques) {}

    /**
     * @param species by common name
     * @param ofTrees rubrics by which trees are judged
     * @param ofStudents rubrics by which students are judged
     */
    record Catalogue(
            List<StageTechniques> stages,
            int techniques,
            List<Species> species,
            int lessons,
            List<Rubric> ofTrees,
            List<Rubric> ofStudents,
            int words,
            String revision) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance catalogue(Catalogue sheet);
    }

    private final CourseContent content;

    CataloguePages(CourseContent content) {
        this.content = content;
    }

    @GET
    public Response catalogue() {
        return Answer.page(Templates.catalogue(of(content.inForce())));
    }

    private static Catalogue of(Content content) {
        return new Catalogue(
                content.stages().stream().map(stage -> techniques(stage, content)).toList(),
                content.techniques().size(),
                content.species().values().stream()
                        .sorted(Comparator.comparing(Species::common))
                        .toList(),
                content.lessons().size(),
                rubrics(content, Rubric.Subject.TREE),
                rubrics(content, Rubric.Subject.STUDENT),
                content.glossary().size(),
                content.revision());
    }

    private static StageTechniques techniques(Stage stage, Content content) {
        return new StageTechniques(
                stage,
                content.techniques().values().stream()
                        .filter(one -> one.stage().equals(stage.code()))
                        .toList());
    }

    private static List<Rubric> rubrics(Content content, Rubric.Subject of) {
        return content.rubrics().values().stream().filter(one -> one.subject() == of).toList();
    }
}
