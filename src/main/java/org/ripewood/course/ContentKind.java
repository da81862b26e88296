package org.ripewood.course;

import java.util.Arrays;
import java.util.Optional;

/** What a content file holds, told by where it lies. */
enum ContentKind {
    GROUPS("groups", "groups.yaml", ""),
    STAGES("stages", "stages.yaml", ""),
    FACTS("facts", "facts.yaml", ""),
    WORKS("works", "works.yaml", ""),
    DURATIONS("durations", "durations.yaml", ""),
    GLOSSARY("glossary", "glossary.yaml", ""),
    SPECIES("species", "species/", ".yaml"),
    TECHNIQUE("technique", "techniques/", ".yaml"),
    LESSON("lesson", "lessons/", ".md"),
    RUBRIC("rubric", "rubrics/", ".yaml"),
    CLIMATE("climate", "climates/", ".yaml"),
    CASES("cases", "cases/", ".yaml");

    private final String schema;
    private final String start;
    private final String end;

    ContentKind(String schema, String start, String end) {
        this.schema = schema;
        this.start = start;
        this.end = end;
    }

    /** The kind of a file, by its path inside the content. */
    static Optional<ContentKind> of(String path) {
        return Arrays.stream(values()).filter(kind -> kind.holds(path)).findFirst();
    }

    private boolean holds(String path) {
        if (single()) {
            return path.equals(start);
        }
        return path.startsWith(start)
                && path.endsWith(end)
                && path.length() > start.length() + end.length();
    }

    /** Whether there is one file of the kind. */
    boolean single() {
        return end.isEmpty();
    }

    /** Whether content may go without it, as a school's own from before there was such a file. */
    boolean optional() {
        return this == GLOSSARY;
    }

    /** The file's name without folder and ending, which is the code of what it holds. */
    String code(String path) {
        return path.substring(start.length(), path.length() - end.length());
    }

    /** The path of the file of a code; the reverse of {@link #code}. */
    String file(String code) {
        return start + code + end;
    }

    /** The kind as said to people, such as "technique". */
    String word() {
        return schema;
    }

    /** The resource with the JSON Schema of the kind. */
    String schemaResource() {
        return ContentFiles.IN_JAR + "/schema/" + schema + ".schema.json";
    }

    /** What such a file's path looks like. */
    String pattern() {
        return single() ? start : start + "<code>" + end;
    }
}
