package org.ripewood.web.catalogue;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Species;
import org.ripewood.course.Technique;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.TextFormat;

/** A species: what it is like to train, each figure with its source. */
@Path("/species/{code}")
@Authenticated
class SpeciesPages {

    /**
     * @param groups names of the groups it is judged with
     * @param own techniques that are for some kinds of tree, and for this one
     * @param ofSchool whether what is said of it is the school's own
     */
    record SpeciesSheet(
            Species species,
            List<String> groups,
            List<Technique> own,
            boolean ofSchool,
            String revision) {

        public List<String> paragraphs() {
            return List.of(species.text().strip().split("\\n\\s*\\n"));
        }

        /** In degrees Celsius; empty when nobody has said. */
        public String rootKill() {
            var celsius = species.rootKillCelsius();
            return celsius == null ? "" : TextFormat.plain(celsius);
        }

        public String defoliation() {
            return species.defoliation().replace('_', ' ');
        }
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance species(SpeciesSheet sheet);
    }

    private final CourseContent content;

    SpeciesPages(CourseContent content) {
        this.content = content;
    }

    @GET
    public Response species(String code) {
        var inForce = content.inForce();
        return Answer.page(Templates.species(sheet(inForce.species(code), inForce)));
    }

    private static SpeciesSheet sheet(Species species, Content content) {
        var own =
                content.techniques().values().stream()
                        .filter(one -> isSpecial(one) && one.rule().isFor(species.traits()))
                        .toList();
        var groups =
                content.groups().keySet().stream()
                        .filter(species.traits().groups()::contains)
                        .map(group -> Kinds.group(group, content))
                        .toList();
        return new SpeciesSheet(
                species, groups, own, content.isOfSchool(species), content.revision());
    }

    private static boolean isSpecial(Technique technique) {
        return !technique.rule().groups().isEmpty() || !technique.rule().species().isEmpty();
    }
}
