package org.ripewood.course;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ripewood.course.CrossReferences.Codes;

/** What the schema cannot say of a lesson: its place, what it teaches, and its sections. */
final class LessonCheck {

    /** The sections of every lesson, in this order. */
    static final List<String> SECTIONS =
            List.of("## What", "## Why", "## How", "## How to tell", "## Mistakes", "## Cautions");

    /**
     * What a lesson may end with, in this order, each or none: after the cautions, so that nobody
     * tries a thing out who has not read them.
     */
    static final List<String> PRACTICE =
            List.of("## Worked example", "## Exercise", "## Check yourself");

    private final ContentDocuments shelf;
    private final Codes techniques;
    private final Faults faults;
    private final Map<String, String> places = new HashMap<>();

    LessonCheck(ContentDocuments shelf, Codes techniques, Faults faults) {
        this.shelf = shelf;
        this.techniques = techniques;
        this.faults = faults;
    }

    void check() {
        var texts = new LessonTextCheck(shelf.pictures().keySet(), faults);
        shelf.all(ContentKind.LESSON)
                .forEach(
                        (code, document) -> {
                            var lesson = document.top();
                            lesson.each("teaches").forEach(one -> techniques.check(one, faults));
                            checkPlace(code, lesson);
                            checkSections(document.file(), shelf.body(code));
                            texts.check(document.file(), shelf.body(code));
                        });
    }

    private void checkPlace(String code, Part lesson) {
        var place = "%s in %s".formatted(lesson.at("order").value(), lesson.text("stage"));
        var other = places.putIfAbsent(place, code);
        if (other != null && lesson.has("order") && lesson.has("stage")) {
            faults.add(
                    lesson.at("order"),
                    "place %s, where %s is".formatted(place, other),
                    "a place of its own");
        }
    }

    private void checkSections(String file, ContentDocuments.Body body) {
        var line = body.firstLine() - 1;
        var next = 0;
        for (var text : body.text().lines().toList()) {
            line++;
            if (!text.startsWith("#")) {
                continue;
            }
            var after = after(next, text.strip());
            if (after == next) {
                faults.add(file, line, "\"%s\"".formatted(text.strip()), wanted(next));
                return;
            }
            next = after;
        }
        if (next < SECTIONS.size()) {
            faults.add(file, Math.max(0, line), "the end of the text", wanted(next));
        }
    }

    /**
     * How many places have been passed once this heading was read.
     *
     * @return {@code next} itself when the heading does not stand there
     */
    private static int after(int next, String heading) {
        if (next < SECTIONS.size()) {
            return heading.equals(SECTIONS.get(next)) ? next + 1 : next;
        }
        var place = SECTIONS.size() + PRACTICE.indexOf(heading);
        return place >= next ? place + 1 : next;
    }

    private static String wanted(int next) {
        if (next < SECTIONS.size()) {
            return "the section \"%s\"".formatted(SECTIONS.get(next));
        }
        var left = PRACTICE.subList(next - SECTIONS.size(), PRACTICE.size());
        return left.isEmpty()
                ? "no further section"
                : "\"%s\", or no further section".formatted(String.join("\", \"", left));
    }
}
