package org.ripewood.web.kit;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A page that shows a refused form again: its title says so first, and the list of faults names the
 * fields by their own labels, in the order of the form. That list stands above the form and is
 * written before it, so labels and order are known only once the whole page is.
 */
final class RefusedPage {

    private static final Pattern LINK =
            Pattern.compile("(<a class=\"tofield\" href=\"#([A-Za-z0-9_-]+)\">)[^<]*</a>");

    private static final Pattern LABEL =
            Pattern.compile("<label for=\"([A-Za-z0-9_-]+)\">\\s*([^<]*[^<\\s])");

    /** A group of choices has its label in its legend. */
    private static final Pattern LEGEND =
            Pattern.compile(
                    "<fieldset[^>]* id=\"([A-Za-z0-9_-]+)\"[^>]*>\\s*<legend>\\s*([^<]*[^<\\s])");

    private static final Pattern FAULT =
            Pattern.compile("(?s)<li><a class=\"tofield\".*?</li>\\s*");

    private static final Pattern IN_FAULT =
            Pattern.compile("</a>: [^<]*</li>|<span class=\"fault\"[^>]*>[^<]*</span>");

    private static final Pattern DAY = Pattern.compile("\\b\\d{4}-\\d{2}-\\d{2}\\b");

    private RefusedPage() {}

    /** The page with its title, its faults in the order of their fields, each by its label. */
    static String of(String html) {
        return labelled(html.replaceFirst("<title>", "<title>Not saved: "));
    }

    /**
     * The same for a page that was asked a question it could not answer: nothing was to be saved.
     */
    static String labelled(String html) {
        var labels = labels(html);
        var links = LINK.matcher(inOrder(withDays(html)));
        return links.replaceAll(
                link -> {
                    var label = labels.get(link.group(2));
                    return Matcher.quoteReplacement(
                            label == null ? link.group() : link.group(1) + label + "</a>");
                });
    }

    /** Days in faults as they are written everywhere else. */
    private static String withDays(String html) {
        return IN_FAULT.matcher(html)
                .replaceAll(fault -> Matcher.quoteReplacement(daysRead(fault.group())));
    }

    private static String daysRead(String fault) {
        return DAY.matcher(fault).replaceAll(day -> dayRead(day.group()));
    }

    /** What is no day stays as it was typed. */
    private static String dayRead(String typed) {
        try {
            return TextFormat.day(LocalDate.parse(typed));
        } catch (DateTimeParseException e) {
            return typed;
        }
    }

    private static String inOrder(String html) {
        var faults = FAULT.matcher(html).results().toList();
        var sorted = new ArrayList<MatchResult>(faults);
        sorted.sort(Comparator.comparingInt(fault -> place(html, fault.group())));
        var next = sorted.iterator();
        return FAULT.matcher(html)
                .replaceAll(fault -> Matcher.quoteReplacement(next.next().group()));
    }

    /** Where the field of a fault stands; behind all others when the page has no such field. */
    private static int place(String html, String fault) {
        var link = LINK.matcher(fault);
        int at = link.find() ? html.indexOf(" id=\"" + link.group(2) + "\"") : -1;
        return at < 0 ? Integer.MAX_VALUE : at;
    }

    private static Map<String, String> labels(String html) {
        var labels = new HashMap<String, String>();
        for (var pattern : List.of(LABEL, LEGEND)) {
            pattern.matcher(html)
                    .results()
                    .forEach(found -> labels.putIfAbsent(found.group(1), found.group(2)));
        }
        return labels;
    }
}
