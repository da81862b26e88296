package org.ripewood.audit;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.ripewood.platform.records.KeptTable;
import org.ripewood.platform.records.KeptTables;

/** Who did what, which stays where it was done: it names rows by this database's own ids. */
@ApplicationScoped
class AuditTables implements KeptTables {

    private static final String WHY = "names rows by this database's own ids, and its doors";

    @Override
    public List<KeptTable> tables() {
        return List.of(
                KeptTable.leftOut("audit_entry", WHY),
                KeptTable.leftOut("audit_change", WHY),
                KeptTable.leftOut(
                        "write_trial", "tells nothing; it is written to see if it can be"));
    }
}
