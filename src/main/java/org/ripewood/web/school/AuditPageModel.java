package org.ripewood.web.school;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.ripewood.audit.AuditEntry;
import org.ripewood.audit.Change;
import org.ripewood.platform.Paged;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.TextFormat;

/**
 * A page of who did what.
 *
 * @param names by id, of those who are still known
 * @param things that can be asked for
 */
record AuditPageModel(
        Paged<AuditEntry> entries, Map<Long, String> names, List<String> things, FormState typed) {

    static Stream<Long> persons(AuditEntry entry) {
        return Stream.ofNullable(entry.personId());
    }

    public String who(AuditEntry entry) {
        return entry.personId() == null
                ? "nobody known"
                : names.getOrDefault(entry.personId(), "person " + entry.personId());
    }

    public String what(Change change) {
        var became = TextFormat.small(change.kind());
        var thing = thing(change.thing());
        if (change.firstId() == null) {
            return "%s: %d %s".formatted(thing, change.amount(), became);
        }
        return change.amount() == 1
                ? "%s %d %s".formatted(thing, change.firstId(), became)
                : "%s %d to %d %s".formatted(thing, change.firstId(), change.lastId(), became);
    }

    public String thing(String table) {
        return table.replace('_', ' ');
    }

    /** The question, to be asked for another page. */
    public String question(int page) {
        return "/audit?page=" + page + typed.query(List.of("login", "from", "to", "thing"));
    }
}
