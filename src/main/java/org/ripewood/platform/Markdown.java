package org.ripewood.platform;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.owasp.html.HtmlPolicyBuilder;
import org.owasp.html.PolicyFactory;

/** Markdown (CommonMark, with tables) as HTML that can do no harm. */
@ApplicationScoped
public class Markdown {

    private static final List<Extension> EXTENSIONS = List.of(TablesExtension.create());

    private static final PolicyFactory ALLOWED =
            new HtmlPolicyBuilder()
                    .allowElements(
                            "h1",
                            "h2",
                            "h3",
                            "h4",
                            "h5",
                            "h6",
                            "p",
                            "br",
                            "hr",
                            "blockquote",
                            "ul",
                            "ol",
                            "li",
                            "em",
                            "strong",
                            "code",
                            "pre",
                            "table",
                            "thead",
                            "tbody",
                            "tr",
                            "th",
                            "td",
                            "a")
                    .allowAttributes("align")
                    .matching(false, "left", "center", "right")
                    .onElements("th", "td")
                    .allowAttributes("start")
                    .matching((element, attribute, value) -> onlyDigits(value))
                    .onElements("ol")
                    .allowAttributes("href")
                    .onElements("a")
                    .allowStandardUrlProtocols()
                    .requireRelNofollowOnLinks()
                    .toFactory();

    private final Parser parser = Parser.builder().extensions(EXTENSIONS).build();

    /** HTML in the text is shown as typed; the policy is the second lock. */
    private final HtmlRenderer renderer =
            HtmlRenderer.builder()
                    .extensions(EXTENSIONS)
                    .escapeHtml(true)
                    .sanitizeUrls(true)
                    .build();

    /** Safe HTML of a text in Markdown. */
    public String html(String markdown) {
        return ALLOWED.sanitize(renderer.render(parser.parse(markdown)));
    }

    private static @org.jspecify.annotations.Nullable String onlyDigits(String value) {
        return value.matches("\\d{1,9}") ? value : null;
    }
}
