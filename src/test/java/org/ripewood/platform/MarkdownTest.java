package org.ripewood.platform;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class MarkdownTest {

    /** Tags that may come out; whatever else stands between angle brackets is harm. */
    private static final Pattern HARMLESS =
            Pattern.compile(
                    "</?(h[1-6]|p|ul|ol|li|em|strong|code|pre|blockquote|table|thead|tbody|tr)>"
                            + "|<(br|hr) ?/?>|</?(th|td)( align=\"(left|center|right)\")?>"
                            + "|<ol start=\"\\d+\">"
                            + "|<a href=\"((https?://|mailto:)[^\"<>]*|[^\":<>]*)\" rel=\"nofollow\">"
                            + "|</a>"
                            + "|<img src=\"pictures/[a-z0-9-]+\\.(svg|png)\" alt=\"[^\"<>]+\" />");

    private final Markdown markdown = new Markdown();

    /** Outcomes of the specification's examples 62, 350, 378 and 482 (CommonMark 0.31.2). */
    @Test
    void headingsEmphasisAndLinksAreRendered() {
        assertThat(markdown.html("# foo")).contains("<h1>foo</h1>");
        assertThat(markdown.html("*foo bar*")).contains("<p><em>foo bar</em></p>");
        assertThat(markdown.html("**foo bar**")).contains("<p><strong>foo bar</strong></p>");
        assertThat(markdown.html("[link](/uri)"))
                .contains("<a href=\"/uri\" rel=\"nofollow\">link</a>");
    }

    /** Example 198 of the specification of GitHub Flavored Markdown 0.29. */
    @Test
    void tablesAreRendered() {
        assertThat(markdown.html("| foo | bar |\n| --- | --- |\n| baz | bim |"))
                .contains("<th>foo</th>")
                .contains("<td>bim</td>");
        assertThat(markdown.html("| n |\n| --: |\n| 1 |")).contains("<td align=\"right\">1</td>");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "<img src=x onerror=alert(1)>",
                "[x](javascript:alert(1))",
                "[x](JaVaScRiPt:alert(1))",
                "[x](java&#10;script:alert(1))",
                "[x](data:text/html;base64,PHNjcmlwdD4=)",
                "[x](vbscript:x)",
                "![x](javascript:alert(1))",
                "![x](http://elsewhere.example/p.png)",
                "<a href=\"x\" onclick=\"y\">z</a>",
                "<iframe src=//elsewhere.example></iframe>",
                "<svg/onload=alert(1)>",
                "<style>body { display: none }</style>",
                "<p style=\"position:fixed\">x</p>",
                "<form action=/sign-out method=post><button>x</button></form>",
                "<math><mtext></form><form><mglyph><style></math><img src onerror=alert(1)>",
                "[x](/a\" onmouseover=\"alert(1))",
                "```\"><script>alert(1)</script>\nx\n```",
                "<!-- --><script>alert(1)</script> -->",
                "<javascript:alert(1)>",
                "| <script>x</script> |\n| --- |\n| <img src=x onerror=y> |",
                "<base href=//elsewhere.example>",
                "![x](data:image/svg+xml;base64,PHN2Zz4=)",
                "![x](//elsewhere.example/pictures/x.svg)",
                "![x](pictures/../../account)",
                "![x](pictures/..%2fx.svg)",
                "![x](/pictures/x.svg)",
                "![x](pictures/x.svg?a=b)",
                "![x](pictures/x.svg#a)",
                "![x](pictures/x.html)",
                "![x](pictures\\\\x.svg)",
                "![](pictures/x.svg)",
                "![\"onerror=alert(1) x=\"](pictures/x.svg)",
                "![<script>alert(1)</script>](pictures/x.svg)",
                "![x](pictures/x.svg \"onload=alert(1)\")"
            })
    void hostileTextDoesNoHarm(String hostile) {
        var left = HARMLESS.matcher(markdown.html(hostile)).replaceAll("");
        assertThat(left).doesNotContain("<").doesNotContain(">");
    }

    @Test
    void aPictureBesideTheTextIsShownWithItsWords() {
        assertThat(markdown.html("![A hollow cut](pictures/hollow-cut.svg)"))
                .contains("<img src=\"pictures/hollow-cut.svg\" alt=\"A hollow cut\" />");
        assertThat(markdown.html("![x](pictures/..%2fx.svg) ![](pictures/x.png)"))
                .doesNotContain("<img");
    }

    @Test
    void htmlIsShownAsItWasTyped() {
        assertThat(markdown.html("a <b>bold</b> claim")).contains("&lt;b&gt;bold&lt;/b&gt;");
    }
}
