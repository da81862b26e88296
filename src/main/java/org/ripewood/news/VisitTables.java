package org.ripewood.news;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.ripewood.platform.records.TableDescription;
import org.ripewood.platform.records.TableDescriptions;

/** When a person last came, which no file has and which ends with the person. */
@ApplicationScoped
class VisitTables implements TableDescriptions {

    @Override
    public List<TableDescription> tables() {
        return List.of(
                TableDescription.secret(
                        "person_visit", "person_id", "is of the pages of this school"));
    }
}
