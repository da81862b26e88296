package org.ripewood.web.catalogue;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Lesson;
import org.ripewood.course.Technique;
import org.ripewood.web.kit.Answer;

/** The words of the trade, letter by letter. */
@Path("/glossary")
@Authenticated
class GlossaryPages {

    /** A word with what it links to. */
    record TermLine(Content.Term term, List<Technique> techniques, List<Lesson> lessons) {}

    record Letter(String letter, List<TermLine> terms) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance glossary(List<Letter> letters, String revision);
    }

    private final CourseContent content;

    GlossaryPages(CourseContent content) {
        this.content = content;
    }

    @GET
    public Response glossary() {
        var inForce = content.inForce();
        var byLetter = new TreeMap<String, List<TermLine>>();
        inForce.glossary()
                .forEach(
                        term ->
                                byLetter.computeIfAbsent(letter(term), any -> new ArrayList<>())
                                        .add(line(term, inForce)));
        var letters =
                byLetter.entrySet().stream()
                        .map(one -> new Letter(one.getKey(), one.getValue()))
                        .toList();
        return Answer.page(Templates.glossary(letters, inForce.revision()));
    }

    private static String letter(Content.Term term) {
        return term.word().substring(0, 1).toUpperCase(Locale.ROOT);
    }

    private static TermLine line(Content.Term term, Content content) {
        return new TermLine(
                term,
                term.techniques().stream().map(content::technique).toList(),
                term.lessons().stream().map(content::lesson).toList());
    }
}
