package org.ripewood.course;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Reads files into content, or into the list of all that is wrong with them. */
final class ContentReading {

    /**
     * What came of a reading.
     *
     * @param content null when there are faults
     */
    record Outcome(@Nullable Content content, List<ContentFault> faults) {}

    private final Schemas schemas = new Schemas();
    private final UnaryOperator<String> html;

    /**
     * @param html renders Markdown
     */
    ContentReading(UnaryOperator<String> html) {
        this.html = html;
    }

    /**
     * Reads.
     *
     * @param faults what finding the files already brought up
     */
    Outcome read(ContentFiles files, Faults faults) {
        return read(files, faults, UnaryOperator.identity());
    }

    /**
     * Reads.
     *
     * @param place tells in which folder and file a path inside the content lies; judgement cases
     *     say where they stand by it, faults by the path
     */
    Outcome read(ContentFiles files, Faults faults, UnaryOperator<String> place) {
        var shelf = ContentDocuments.read(files, schemas, faults);
        new CrossReferences(shelf, faults).check();
        if (!faults.none()) {
            return new Outcome(null, faults.all());
        }
        var content = new ContentBuilding(shelf, html, place).build(files);
        return new Outcome(content, List.of());
    }

    /**
     * Where course content lies.
     *
     * @param base a folder with all of it; null for the content inside the program
     * @param added a folder laid over it; null when there is none
     */
    record Folders(@Nullable Path base, @Nullable Path added) {

        /** Before the path of a file inside the program, where faults have to name its folder. */
        private static final String PROGRAM = "the program's own ";

        /** Reads what lies there, or tells all that is wrong. */
        Outcome read(ContentReading reading) {
            var belowFaults = new Faults();
            var overFaults = new Faults();
            var all = new Faults();
            var below = base == null ? ContentFiles.inJar() : find(base, belowFaults, all);
            var over = added == null ? null : find(added, overFaults, all);
            if (below == null || (added != null && over == null)) {
                return new Outcome(null, all.all());
            }
            if (over == null) {
                return reading.read(below, belowFaults);
            }
            var readFaults = new Faults();
            var files = below.under(over);
            var outcome = reading.read(files, readFaults, path -> place(path, files));
            belowFaults.all().forEach(fault -> add(fault, this::below, all));
            overFaults.all().forEach(fault -> add(fault, this::over, all));
            outcome.faults().forEach(fault -> add(fault, path -> place(path, files), all));
            return new Outcome(all.none() ? outcome.content() : null, all.all());
        }

        private static @Nullable ContentFiles find(Path folder, Faults inFiles, Faults all) {
            try {
                return ContentFiles.in(folder, inFiles);
            } catch (IOException e) {
                all.add(
                        folder.toString(),
                        0,
                        "a folder that cannot be read (%s)".formatted(e.getClass().getSimpleName()),
                        "a readable folder with course content");
                return null;
            }
        }

        private static void add(ContentFault fault, UnaryOperator<String> place, Faults all) {
            all.add(place.apply(fault.file()), fault.line(), fault.found(), fault.expected());
        }

        private String place(String path, ContentFiles files) {
            return files.added().contains(path) ? over(path) : below(path);
        }

        private String below(String path) {
            return base == null ? PROGRAM + path : base.resolve(path).toString();
        }

        private String over(String path) {
            return added == null ? path : added.resolve(path).toString();
        }
    }
}
