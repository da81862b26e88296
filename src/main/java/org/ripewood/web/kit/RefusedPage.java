package org.ripewood.web.kit;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A page that shows a refused form again: its title says so first, and the list of faults names the
 * fields by their own labels. That list stands above the form and is written before it, so the
 * labels are known only once the whole page is.
 */
final class RefusedPage {

    private static final Pattern LINK =
            Pattern.compile("(<a class=\"tofield\" href=\"#([A-Za-z0-9_-]+)\">)[^<]*</a>");

    private static final Pattern LABEL =
            Pattern.compile("<label for=\"([A-Za-z0-9_-]+)\">\\s*([^<]*[^<\\s])");

    private RefusedPage() {}

    /**
     * The page with its title, and each link to a field in the words of its label; a link to what
     * has no label stays as it is.
     */
    static String of(String html) {
        var labels = labels(html);
        var links = LINK.matcher(html.replaceFirst("<title>", "<title>Not saved: "));
        return links.replaceAll(
                link -> {
                    var label = labels.get(link.group(2));
                    return Matcher.quoteReplacement(
                            label == null ? link.group() : link.group(1) + label + "</a>");
                });
    }

    private static Map<String, String> labels(String html) {
        var labels = new HashMap<String, String>();
        LABEL.matcher(html)
                .results()
                .forEach(found -> labels.putIfAbsent(found.group(1), found.group(2)));
        return labels;
    }
}
