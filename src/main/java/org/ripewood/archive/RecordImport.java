package org.ripewood.archive;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.TreeMap;
import org.ripewood.platform.records.PictureDescriptions;
import org.ripewood.platform.records.TableDescriptions;

/**
 * Enters what was sent as a record.
 *
 * @param mostBytes of what is unpacked
 */
record RecordImport(
        List<PlannedTable> tables,
        Iterable<TableDescriptions> rooms,
        PictureDescriptions pictures,
        long mostBytes) {

    RecordImport {
        tables = List.copyOf(tables);
    }

    /**
     * Enters all of a file or nothing, in the transaction of a connection. Pictures are kept before
     * the rows that name them. Where that transaction fails later on, nobody knows whether it has
     * been written down, and the sweep of the next start finds out.
     */
    Taken take(Connection connection, Path file) throws SQLException {
        var faults = new FileFaults();
        try (var sent = UploadedRecord.open(file, mostBytes, faults)) {
            var check = new RecordCheck(tables, faults, rooms, sent.pictures());
            new RecordFile(sent.json(), tables, faults).read(check);
            check.finish();
            sent.pictures().tellUnnamed(faults);
            faults.throwIfAny();
            if (check.scope() == Scope.Kind.SCHOOL) {
                EmptySchool.require(connection, tables);
            }
            enter(connection, sent, check, faults);
            return told(check);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void enter(
            Connection connection, UploadedRecord sent, RecordCheck check, FileFaults faults)
            throws SQLException {
        var in = new PicturesIn(sent.pictures(), pictures, faults);
        try {
            new RecordFile(sent.json(), tables, faults)
                    .read(new RecordEntry(connection, check, in, faults));
            faults.throwIfAny();
        } catch (RuntimeException | SQLException e) {
            in.takeAway();
            throw e;
        }
    }

    private Taken told(RecordCheck check) {
        var rows = new TreeMap<String, Integer>();
        for (var table : tables) {
            if (check.rows(table.name()) > 0) {
                rows.put(table.field(), check.rows(table.name()));
            }
        }
        return new Taken(check.scope().name(), check.rows(), rows);
    }
}
