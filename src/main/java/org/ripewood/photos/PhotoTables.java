package org.ripewood.photos;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.ripewood.platform.KeptTable;
import org.ripewood.platform.KeptTables;

/** What is said of photos. */
@ApplicationScoped
class PhotoTables implements KeptTables {

    @Override
    public List<KeptTable> tables() {
        return List.of(
                KeptTable.named("photo")
                        .numbered()
                        .partOf("tree_id", "tree")
                        .plain("taken_on", "seen_from")
                        .words("caption")
                        .refers("wound_id", "wound")
                        .refers("step_id", "step")
                        .plain("file_key", "thumbnail_key", "width_px", "height_px")
                        .plain("byte_count", "sha_256")
                        .writtenBy("by_id")
                        .plain("recorded_at")
                        .refers("removed_by_id", "person")
                        .plain("removed_at")
                        .version()
                        .staysHere("the pictures are files beside the database, and none of JSON"));
    }
}
