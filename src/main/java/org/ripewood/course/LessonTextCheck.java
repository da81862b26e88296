package org.ripewood.course;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;

/**
 * Whether everything in a lesson's text is shown: the pictures it names are there and have words
 * for who does not see them; links lead where a reader may go, and there is no HTML. What is not
 * shown would be left out unsaid (see {@link org.ripewood.platform.Markdown}).
 */
final class LessonTextCheck {

    private static final String PICTURES = "pictures/";
    private static final int MOST_SHOWN = 40;
    private static final Pattern MARK = Pattern.compile("!\\[");
    private static final Pattern PICTURE = Pattern.compile("!\\[([^\\]]*)\\]\\(([^)\\s]*)\\)");

    /** Links of these, and those without a scheme, are shown. */
    private static final Set<String> SCHEMES = Set.of("http", "https", "mailto");

    private static final Pattern SCHEME = Pattern.compile("\\s*([^/?#:]*):.*", Pattern.DOTALL);

    private static final Parser PARSER =
            Parser.builder()
                    .extensions(List.of(TablesExtension.create()))
                    .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
                    .build();

    private final Collection<String> known;
    private final Faults faults;

    LessonTextCheck(Collection<String> known, Faults faults) {
        this.known = known;
        this.faults = faults;
    }

    void check(String file, ContentDocuments.Body body) {
        checkPictures(file, body);
        PARSER.parse(body.text()).accept(new Reader(file, body.firstLine()));
    }

    /** Walks the text as it will be shown. */
    private final class Reader extends AbstractVisitor {

        private final String file;
        private final int firstLine;

        Reader(String file, int firstLine) {
            this.file = file;
            this.firstLine = firstLine;
        }

        @Override
        public void visit(Link link) {
            var scheme = SCHEME.matcher(link.getDestination());
            if (scheme.matches() && !SCHEMES.contains(scheme.group(1).toLowerCase(Locale.ROOT))) {
                tell(
                        link,
                        "a link to \"%s\"".formatted(link.getDestination()),
                        "a link that begins with https://, http:// or mailto:, or none");
            }
            visitChildren(link);
        }

        @Override
        public void visit(HtmlInline html) {
            tell(html, html.getLiteral());
        }

        @Override
        public void visit(HtmlBlock html) {
            tell(html, html.getLiteral());
        }

        private void tell(Node html, String literal) {
            var shown = literal.strip();
            tell(
                    html,
                    "HTML, \"%s\""
                            .formatted(
                                    shown.length() <= MOST_SHOWN
                                            ? shown
                                            : shown.substring(0, MOST_SHOWN) + "…"),
                    "Markdown alone");
        }

        private void tell(Node at, String found, String expected) {
            var spans = at.getSourceSpans();
            int line = spans.isEmpty() ? 0 : spans.get(0).getLineIndex();
            faults.add(file, firstLine + line, found, expected);
        }
    }

    private void checkPictures(String file, ContentDocuments.Body body) {
        var line = body.firstLine() - 1;
        for (var text : body.text().lines().toList()) {
            line++;
            var marks = MARK.matcher(text).results().count();
            var pictures = PICTURE.matcher(text).results().toList();
            if (pictures.size() != marks) {
                faults.add(file, line, "a picture named otherwise", "![words](pictures/name.svg)");
            }
            for (var picture : pictures) {
                check(file, line, picture.group(1), picture.group(2));
            }
        }
    }

    private void check(String file, int line, String words, String target) {
        if (words.isBlank()) {
            faults.add(file, line, "a picture without words", "what it shows, between [ and ]");
        }
        if (!target.startsWith(PICTURES) || !known.contains(target.substring(PICTURES.length()))) {
            faults.add(
                    file,
                    line,
                    "\"%s\"".formatted(target),
                    "a picture that is there: " + PICTURES + String.join(", " + PICTURES, known));
        }
    }
}
