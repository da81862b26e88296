package org.ripewood.platform;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.regex.Pattern;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.jspecify.annotations.Nullable;
import org.owasp.html.HtmlPolicyBuilder;
import org.owasp.html.PolicyFactory;

/** Markdown (CommonMark, with tables) as HTML that can do no harm. */
@ApplicationScoped
public class Markdown {

    private static final List<Extension> EXTENSIONS = List.of(TablesExtension.create());

    /** A file beside the text and nothing else: no scheme, no host, no way up, no escapes. */
    private static final Pattern PICTURE =
            Pattern.compile("pictures/[a-z0-9]+(-[a-z0-9]+)*\\.(svg|png)");

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
                    .allowElements(Markdown::onlyWithPicture, "img")
                    .allowAttributes("src")
                    .matching(PICTURE)
                    .onElements("img")
                    .allowAttributes("alt")
                    .onElements("img")
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

    /** A picture of elsewhere, or one without words for who does not see it, is left out. */
    private static @Nullable String onlyWithPicture(String element, List<String> attributes) {
        var words = valueOf("alt", attributes);
        return valueOf("src", attributes) == null || words == null || words.isBlank()
                ? null
                : element;
    }

    /** Names and values come in turn. */
    private static @Nullable String valueOf(String name, List<String> attributes) {
        for (int i = 0; i + 1 < attributes.size(); i += 2) {
            if (attributes.get(i).equals(name)) {
                return attributes.get(i + 1);
            }
        }
        return null;
    }

    private static @Nullable String onlyDigits(String value) {
        return value.matches("\\d{1,9}") ? value : null;
    }
}
