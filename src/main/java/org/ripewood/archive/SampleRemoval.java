package org.ripewood.archive;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.ripewood.audit.Audit;
import org.ripewood.audit.Change.Kind;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.records.PersistenceContext;
import org.ripewood.platform.records.PictureDescriptions;

/**
 * Takes a sample course out of the record: the course, its made-up people, the trees they keep and
 * all that is part of any of these, as the rooms describe their tables. It asks no reach.
 */
@ApplicationScoped
@Transactional
public class SampleRemoval {

    private static final String PHOTO = "photo";

    private final DataSource database;
    private final RecordPlan plan;
    private final PictureDescriptions pictures;
    private final PersistenceContext openRecords;
    private final Audit audit;

    SampleRemoval(
            DataSource database,
            RecordPlan plan,
            PictureDescriptions pictures,
            PersistenceContext openRecords,
            Audit audit) {
        this.database = database;
        this.plan = plan;
        this.pictures = pictures;
        this.openRecords = openRecords;
        this.audit = audit;
    }

    /**
     * How many rows would go, by table.
     *
     * @param people who are made up
     * @param siteId the site made for the course; null for none
     */
    public Map<String, Integer> rows(long courseId, Set<Long> people, @Nullable Long siteId) {
        return onConnection(
                connection -> {
                    var rows = new HashMap<String, Integer>();
                    parts(connection, courseId, people, siteId)
                            .keys()
                            .forEach((table, keys) -> rows.put(table, keys.size()));
                    return rows;
                });
    }

    /**
     * Removes all of it, in the caller's transaction. A site where a tree of the school's own
     * stands, or stood, stays.
     *
     * @return keys of pictures, to be {@link #takeAway taken away} once the transaction has ended
     * @throws Refused 409 when something of the school's own names what would go; it says what
     */
    public List<String> remove(long courseId, Set<Long> people, @Nullable Long siteId) {
        openRecords.putAway();
        var parts = onConnection(connection -> parts(connection, courseId, people, siteId));
        var keys = pictures.keysOf(parts.keys().getOrDefault(PHOTO, Set.of()));
        openRecords.putAway();
        onConnection(
                connection -> {
                    parts.requireNamedByNobody(connection);
                    parts.remove(connection);
                    return keys;
                });
        parts.numbered()
                .forEach((table, ids) -> ids.forEach(id -> audit.noteRow(table, Kind.REMOVED, id)));
        return keys;
    }

    /** Takes pictures away that no row names any more. */
    public void takeAway(List<String> keys) {
        pictures.takeAway(keys);
    }

    private RowParts parts(
            Connection connection, long courseId, Set<Long> people, @Nullable Long siteId)
            throws SQLException {
        var parts = new RowParts(plan.told(), plan.all(connection));
        parts.begin("course", Set.of(courseId));
        parts.begin("person", people);
        parts.begin("tree", parts.select(connection, "tree", "keeper_id", people));
        if (siteId != null && !hasOwnTrees(connection, parts, siteId)) {
            parts.begin("site", Set.of(siteId));
        }
        parts.gather(connection);
        return parts;
    }

    private static boolean hasOwnTrees(Connection connection, RowParts parts, long siteId)
            throws SQLException {
        var standing = parts.select(connection, "tree", "site_id", Set.of(siteId));
        return !parts.keys().getOrDefault("tree", Set.of()).containsAll(standing);
    }

    private interface Work<T> {
        T on(Connection connection) throws SQLException;
    }

    private <T> T onConnection(Work<T> work) {
        try (var connection = database.getConnection()) {
            return work.on(connection);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }
}
