package org.ripewood.platform.records;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import org.ripewood.platform.records.TableDescription.CodeKind;

/** Which codes of the course content the records name, from how the rooms describe their tables. */
@ApplicationScoped
public class CodesInUse {

    private final Instance<TableDescriptions> rooms;
    private final EntityManager entityManager;

    CodesInUse(@Any Instance<TableDescriptions> rooms, EntityManager entityManager) {
        this.rooms = rooms;
        this.entityManager = entityManager;
    }

    /**
     * A code that rows of a table name.
     *
     * @param table as files call it, such as {@code workDone}
     * @param rows how many
     */
    public record Use(CodeKind kind, String code, String table, long rows) {}

    /** All codes in use, table by table; a code stands in the list once for each table. */
    @Transactional
    public List<Use> all() {
        var all = new ArrayList<Use>();
        for (var room : rooms) {
            for (var table : room.tables()) {
                table.codes().forEach((column, kind) -> all.addAll(of(table, column, kind)));
            }
        }
        return List.copyOf(all);
    }

    /** Names of tables and columns are the program's own; nothing of it was typed by anybody. */
    private List<Use> of(TableDescription table, String column, CodeKind kind) {
        var rows =
                entityManager
                        .createNativeQuery(
                                "select %1$s, count(*) from %2$s where %1$s is not null group by %1$s"
                                        .formatted(column, table.name()),
                                Object[].class)
                        .getResultList();
        var uses = new ArrayList<Use>();
        for (Object row : rows) {
            var cells = (Object[]) row;
            uses.add(
                    new Use(
                            kind,
                            (String) cells[0],
                            table.field(),
                            ((Number) cells[1]).longValue()));
        }
        return uses;
    }
}
