package org.ripewood.course;

import java.util.Collection;
import java.util.regex.Pattern;

/** Whether the pictures a lesson names are there, and have words for who does not see them. */
final class LessonPictureCheck {

    private static final String PICTURES = "pictures/";
    private static final Pattern MARK = Pattern.compile("!\\[");
    private static final Pattern PICTURE = Pattern.compile("!\\[([^\\]]*)\\]\\(([^)\\s]*)\\)");

    private final Collection<String> known;
    private final Faults faults;

    LessonPictureCheck(Collection<String> known, Faults faults) {
        this.known = known;
        this.faults = faults;
    }

    void check(String file, ContentDocuments.Body body) {
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
