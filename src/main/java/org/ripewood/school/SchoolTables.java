package org.ripewood.school;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.ripewood.platform.records.TableDescription;
import org.ripewood.platform.records.TableDescriptions;

/** The name stays where it was given: a school that takes a record in has one of its own. */
@ApplicationScoped
class SchoolTables implements TableDescriptions {

    @Override
    public List<TableDescription> tables() {
        return List.of(
                TableDescription.leftOut(
                        "school", "the school a record is brought into has its own name"));
    }
}
