package org.ripewood.sites;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hibernate.Session;
import org.ripewood.audit.Audit;
import org.ripewood.audit.Change;
import org.ripewood.core.season.DayReading;

/**
 * Daily readings of sites. They come and go by the ten thousand and nobody refers to one, so they
 * are rows without an entity.
 */
@ApplicationScoped
public class ReadingRows {

    private static final int BATCH = 1_000;

    private static final String READ =
            "select read_on, min_celsius, max_celsius from site_reading where site_id = ?"
                    + " and read_on between ? and ? order by read_on";

    private final SiteRows sites;
    private final Audit audit;

    ReadingRows(SiteRows sites, Audit audit) {
        this.sites = sites;
        this.audit = audit;
    }

    /** Days of which a site has readings. */
    public Optional<ReadingsKnown> known(long siteId) {
        return session()
                .doReturningWork(
                        connection -> {
                            try (var asked =
                                    connection.prepareStatement(
                                            "select min(read_on), max(read_on), count(*)"
                                                    + " from site_reading where site_id = ?")) {
                                asked.setLong(1, siteId);
                                try (var row = asked.executeQuery()) {
                                    row.next();
                                    int days = row.getInt(3);
                                    return days == 0
                                            ? Optional.empty()
                                            : Optional.of(
                                                    ReadingsKnown.of(
                                                            row.getObject(1, LocalDate.class),
                                                            row.getObject(2, LocalDate.class),
                                                            days));
                                }
                            }
                        });
    }

    /** Readings of a span of days, oldest first. */
    List<DayReading> between(long siteId, LocalDate first, LocalDate last) {
        return session().doReturningWork(connection -> read(connection, siteId, first, last));
    }

    /**
     * Keeps readings, in place of those of the same days. The site's row is locked meanwhile, so
     * that two imports follow each other.
     *
     * @param readings oldest first, at least one
     * @return how many days are new or read otherwise than before
     */
    int keep(long siteId, List<DayReading> readings) {
        sites.update("readingsRevision = readingsRevision + 1 where id = ?1", siteId);
        return session()
                .doReturningWork(
                        connection -> {
                            var changed = changed(connection, siteId, readings);
                            delete(connection, siteId, changed);
                            insert(connection, siteId, changed);
                            audit.noteRows("site_reading", Change.Kind.CHANGED, changed.size());
                            return changed.size();
                        });
    }

    private List<DayReading> changed(Connection connection, long siteId, List<DayReading> readings)
            throws SQLException {
        Map<LocalDate, DayReading> before = new HashMap<>();
        var first = readings.get(0).day();
        var last = readings.get(readings.size() - 1).day();
        read(connection, siteId, first, last)
                .forEach(reading -> before.put(reading.day(), reading));
        return readings.stream()
                .filter(reading -> !reading.equals(before.get(reading.day())))
                .toList();
    }

    private static List<DayReading> read(
            Connection connection, long siteId, LocalDate first, LocalDate last)
            throws SQLException {
        try (var asked = connection.prepareStatement(READ)) {
            asked.setLong(1, siteId);
            asked.setObject(2, first);
            asked.setObject(3, last);
            var readings = new ArrayList<DayReading>();
            try (var row = asked.executeQuery()) {
                while (row.next()) {
                    readings.add(
                            new DayReading(
                                    row.getObject(1, LocalDate.class),
                                    row.getDouble(2),
                                    row.getDouble(3)));
                }
            }
            return readings;
        }
    }

    private static void delete(Connection connection, long siteId, List<DayReading> readings)
            throws SQLException {
        try (var delete =
                connection.prepareStatement(
                        "delete from site_reading where site_id = ? and read_on = ?")) {
            for (int i = 0; i < readings.size(); i++) {
                delete.setLong(1, siteId);
                delete.setObject(2, readings.get(i).day());
                delete.addBatch();
                if ((i + 1) % BATCH == 0) {
                    delete.executeBatch();
                }
            }
            delete.executeBatch();
        }
    }

    private static void insert(Connection connection, long siteId, List<DayReading> readings)
            throws SQLException {
        try (var insert =
                connection.prepareStatement(
                        "insert into site_reading (site_id, read_on, min_celsius, max_celsius)"
                                + " values (?, ?, ?, ?)")) {
            for (int i = 0; i < readings.size(); i++) {
                var reading = readings.get(i);
                insert.setLong(1, siteId);
                insert.setObject(2, reading.day());
                insert.setDouble(3, reading.minCelsius());
                insert.setDouble(4, reading.maxCelsius());
                insert.addBatch();
                if ((i + 1) % BATCH == 0) {
                    insert.executeBatch();
                }
            }
            insert.executeBatch();
        }
    }

    private Session session() {
        return sites.getEntityManager().unwrap(Session.class);
    }
}
