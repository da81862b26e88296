package org.ripewood.audit;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.ripewood.platform.records.TableDescription;
import org.ripewood.platform.records.TableDescriptions;

/** Who did what, which stays where it was done: it names rows by this database's own ids. */
@ApplicationScoped
class AuditTables implements TableDescriptions {

    private static final String WHY = "names rows by this database's own ids, and its doors";

    @Override
    public List<TableDescription> tables() {
        return List.of(
                TableDescription.leftOut("audit_entry", WHY),
                TableDescription.leftOut("audit_change", WHY),
                TableDescription.leftOut(
                        "write_trial", "tells nothing; it is written to see if it can be"));
    }
}
