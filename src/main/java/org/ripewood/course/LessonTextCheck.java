package org.ripewood.course;

import java.util.Collection;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What the text of a lesson may hold: Markdown alone, and pictures that are there and have words
 * for who does not see them. HTML and links that run something are never shown, so a writer who is
 * not told would miss them on the page without knowing why.
 */
final class LessonTextCheck {

    private static final String PICTURES = "pictures/";
    private static final Pattern MARK = Pattern.compile("!\\[");
    private static final Pattern PICTURE = Pattern.compile("!\\[([^\\]]*)\\]\\(([^)\\s]*)\\)");

    private static final Pattern CODE = Pattern.compile("`[^`]*`");
    private static final Pattern TAG = Pattern.compile("<([A-Za-z][A-Za-z0-9]*|!--)");

    /** Where a scheme can begin: a link, the address of a reference, or an address in angles. */
    private static final Pattern LINK =
            Pattern.compile(
                    "(?:\\]\\(\\s*<?|^\\s*\\[[^\\]]+\\]:\\s*<?|<)([A-Za-z][A-Za-z0-9+.-]*):");

    private static final Set<String> SCHEMES = Set.of("http", "https", "mailto");

    private final Collection<String> known;
    private final Faults faults;

    /**
     * @param known names of the pictures that are there
     */
    LessonTextCheck(Collection<String> known, Faults faults) {
        this.known = known;
        this.faults = faults;
    }

    void check(String file, ContentDocuments.Body body) {
        var line = body.firstLine() - 1;
        for (var text : body.text().lines().toList()) {
            line++;
            checkPictures(file, line, text);
            var told = CODE.matcher(text).replaceAll("");
            checkLinks(file, line, told);
            checkTags(file, line, LINK.matcher(told).replaceAll(""));
        }
    }

    private void checkPictures(String file, int line, String text) {
        var marks = MARK.matcher(text).results().count();
        var pictures = PICTURE.matcher(text).results().toList();
        if (pictures.size() != marks) {
            faults.add(file, line, "a picture named otherwise", "![words](pictures/name.svg)");
        }
        for (var picture : pictures) {
            checkPicture(file, line, picture.group(1), picture.group(2));
        }
    }

    private void checkPicture(String file, int line, String words, String target) {
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

    private void checkLinks(String file, int line, String text) {
        LINK.matcher(text)
                .results()
                .map(link -> link.group(1))
                .filter(scheme -> !SCHEMES.contains(scheme.toLowerCase(Locale.ROOT)))
                .forEach(
                        scheme ->
                                faults.add(
                                        file,
                                        line,
                                        "a link that begins with \"%s:\"".formatted(scheme),
                                        "a link to https://, or to a page of this service"));
    }

    private void checkTags(String file, int line, String text) {
        TAG.matcher(text)
                .results()
                .forEach(
                        tag ->
                                faults.add(
                                        file,
                                        line,
                                        "the HTML \"%s\"".formatted(tag.group()),
                                        "Markdown; HTML is not shown"));
    }
}
