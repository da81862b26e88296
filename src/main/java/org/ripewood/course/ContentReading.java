package org.ripewood.course;

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
        var shelf = ContentDocuments.read(files, schemas, faults);
        new CrossReferences(shelf, faults).check();
        if (!faults.none()) {
            return new Outcome(null, faults.all());
        }
        var content = new ContentBuilding(shelf, html).build(files.revision());
        return new Outcome(content, List.of());
    }
}
