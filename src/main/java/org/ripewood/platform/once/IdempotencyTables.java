package org.ripewood.platform.once;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.ripewood.platform.records.TableDescription;
import org.ripewood.platform.records.TableDescriptions;

/** Answers kept for whoever sends the same again. */
@ApplicationScoped
class IdempotencyTables implements TableDescriptions {

    @Override
    public List<TableDescription> tables() {
        return List.of(
                TableDescription.named("answered_request")
                        .orderedBy("person_id", "request_key")
                        .refers("person_id", "person")
                        .about("person_id")
                        .plain("request_key", "request_hash", "begun_at", "status")
                        .plain("location", "entity_tag")
                        .words("body")
                        .staysHere("is of the last 48 hours, and for whoever sends again"));
    }
}
