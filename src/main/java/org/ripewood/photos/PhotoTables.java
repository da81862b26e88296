package org.ripewood.photos;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.records.TableDescription;
import org.ripewood.platform.records.TableDescriptions;

/** What is said of photos. */
@ApplicationScoped
class PhotoTables implements TableDescriptions {

    static final String FILE_KEY = "file_key";
    static final String THUMBNAIL_KEY = "thumbnail_key";
    static final String WIDTH_PX = "width_px";
    static final String HEIGHT_PX = "height_px";
    static final String BYTE_COUNT = "byte_count";
    static final String SHA_256 = "sha_256";

    @Override
    public List<TableDescription> tables() {
        return List.of(
                TableDescription.named("photo")
                        .numbered()
                        .partOf("tree_id", "tree")
                        .plain("taken_on")
                        .oneOf("seen_from", Viewpoint.values())
                        .words("caption")
                        .refers("wound_id", "wound")
                        .refers("step_id", "step")
                        .picture(FILE_KEY)
                        .leftOut(THUMBNAIL_KEY, "made anew from the picture")
                        .plain(WIDTH_PX, HEIGHT_PX, BYTE_COUNT, SHA_256)
                        .writtenBy("by_id")
                        .plain("recorded_at")
                        .refers("removed_by_id", "person")
                        .plain("removed_at")
                        .version()
                        .done());
    }

    @Override
    public List<Fault> faults(String table, Map<String, @Nullable Object> row) {
        var faults = new ArrayList<Fault>();
        if (table.equals("photo")) {
            tellOfThere(row, faults);
            if (row.get("taken_on") instanceof LocalDate on && on.isBefore(PhotoBook.FIRST)) {
                faults.add(
                        new Fault(
                                "takenOn",
                                "expected a day from %s on, found %s"
                                        .formatted(PhotoBook.FIRST, on)));
            }
            for (var column : List.of(WIDTH_PX, HEIGHT_PX, BYTE_COUNT)) {
                if (row.get(column) instanceof Long number && number < 1) {
                    faults.add(
                            new Fault(
                                    TableDescription.camel(column),
                                    "expected a number from 1 on, found " + number));
                }
            }
            if (!String.valueOf(row.get(SHA_256)).matches("[0-9a-f]{64}")) {
                faults.add(new Fault("sha256", "expected 64 hexadecimal digits"));
            }
        }
        return faults;
    }

    /** What is there has a picture, what was taken away says when and by whom. */
    private static void tellOfThere(Map<String, @Nullable Object> row, List<Fault> faults) {
        boolean there = row.get(FILE_KEY) != null;
        for (var mark : List.of("removed_at", "removed_by_id")) {
            if (there == (row.get(mark) != null)) {
                faults.add(
                        new Fault(
                                TableDescription.camel(mark),
                                there
                                        ? "is not expected of a photo with a picture"
                                        : "expected a value, as the photo has no picture"));
            }
        }
    }
}
