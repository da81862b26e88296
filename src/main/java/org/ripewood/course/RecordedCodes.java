package org.ripewood.course;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.platform.records.CodesInUse.Use;
import org.ripewood.platform.records.TableDescription.CodeKind;

/** Holds content against the records: what they name must not vanish unnoticed. */
final class RecordedCodes {

    private static final Comparator<Use> BY_TABLE = Comparator.comparing(Use::table);

    private RecordedCodes() {}

    /** A fault for each code that records name and the content does not have, file by file. */
    static List<ContentFault> missing(Content content, List<Use> uses) {
        var byFile = new TreeMap<String, List<Use>>();
        uses.stream()
                .filter(use -> !known(content, use.kind()).contains(use.code()))
                .collect(Collectors.groupingBy(use -> fileOf(use.kind()).file(use.code())))
                .forEach(byFile::put);
        return byFile.entrySet().stream()
                .map(entry -> fault(content, entry.getKey(), entry.getValue()))
                .toList();
    }

    private static ContentFault fault(Content content, String file, List<Use> uses) {
        var one = uses.get(0);
        var rows =
                uses.stream()
                        .sorted(BY_TABLE)
                        .map(use -> "%d %s".formatted(use.rows(), use.table()))
                        .collect(Collectors.joining(", "));
        long all = uses.stream().mapToLong(Use::rows).sum();
        return new ContentFault(
                file,
                0,
                "no %s “%s”, which %d record(s) name (%s)"
                        .formatted(fileOf(one.kind()).word(), one.code(), all, rows),
                "the file for as long as records name it.%s"
                        .formatted(Suggestion.maybe(known(content, one.kind()), one.code())));
    }

    private static Set<String> known(Content content, CodeKind kind) {
        return switch (kind) {
            case SPECIES -> content.species().keySet();
            case TECHNIQUE -> content.techniques().keySet();
            case LESSON -> content.lessons().keySet();
            case RUBRIC -> content.rubrics().keySet();
        };
    }

    private static ContentKind fileOf(CodeKind kind) {
        return switch (kind) {
            case SPECIES -> ContentKind.SPECIES;
            case TECHNIQUE -> ContentKind.TECHNIQUE;
            case LESSON -> ContentKind.LESSON;
            case RUBRIC -> ContentKind.RUBRIC;
        };
    }
}
