package org.ripewood.print;

import java.util.ArrayList;
import java.util.regex.Pattern;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;
import org.jsoup.select.NodeVisitor;

/**
 * Words too long for a line. Only they may break anywhere: were every word allowed to, the columns
 * of a table would be squeezed to a letter each.
 */
final class LongWords {

    private static final Pattern LONG = Pattern.compile("\\S{24,}");

    private LongWords() {}

    static void letBreak(Element body) {
        var found = new ArrayList<TextNode>();
        NodeVisitor visitor =
                (node, depth) -> {
                    if (node instanceof TextNode text && LONG.matcher(text.getWholeText()).find()) {
                        found.add(text);
                    }
                };
        body.traverse(visitor);
        found.stream().filter(text -> !isDrawn(text)).forEach(LongWords::wrap);
    }

    private static boolean isDrawn(TextNode text) {
        var parent = text.parent();
        return parent != null && parent.closest("svg") != null;
    }

    private static void wrap(TextNode text) {
        var whole = text.getWholeText();
        int from = 0;
        for (var word : LONG.matcher(whole).results().toList()) {
            text.before(new TextNode(whole.substring(from, word.start())));
            text.before(new Element("span").addClass("long").appendText(word.group()));
            from = word.end();
        }
        text.text(whole.substring(from));
    }
}
