package org.ripewood.archive;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.records.PictureDescriptions;

/**
 * Writes a record as a ZIP: {@code record.json} first and then the pictures its rows name, in their
 * order and one at a time. Entries all have one time, so that the same record has the same bytes.
 */
final class RecordZip {

    static final String RECORD = "record.json";

    /** The first that a ZIP can tell. */
    private static final LocalDateTime ALWAYS = LocalDateTime.of(1980, 1, 1, 0, 0);

    private final RecordWriter writer;
    private final PictureDescriptions pictures;

    RecordZip(RecordWriter writer, PictureDescriptions pictures) {
        this.writer = writer;
        this.pictures = pictures;
    }

    /**
     * Writes the file and closes it.
     *
     * @return ids of rows whose picture is lost or was taken away meanwhile; unless there are none,
     *     the file names pictures it does not have and is to be written again without these rows
     */
    Set<Long> write(String contentRevision, Instant now, OutputStream out) throws SQLException {
        var lost = new HashSet<Long>();
        try (var zip = new ZipOutputStream(out)) {
            zip.putNextEntry(entry(RECORD));
            writer.write(contentRevision, now, zip);
            zip.closeEntry();
            writer.eachPicture(
                    (number, id, row) -> {
                        if (!put(zip, number, row)) {
                            lost.add(id);
                        }
                    });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return lost;
    }

    private boolean put(ZipOutputStream zip, int number, Map<String, @Nullable Object> row)
            throws IOException {
        var found = pictures.find(row);
        if (found.isEmpty()) {
            return false;
        }
        var bytes = found.get();
        var entry = entry(PicturesSent.entry(number));
        var sum = new CRC32();
        sum.update(bytes);
        // pixels are packed already
        entry.setMethod(ZipEntry.STORED);
        entry.setSize(bytes.length);
        entry.setCrc(sum.getValue());
        zip.putNextEntry(entry);
        zip.write(bytes);
        zip.closeEntry();
        return true;
    }

    private static ZipEntry entry(String name) {
        var entry = new ZipEntry(name);
        entry.setTimeLocal(ALWAYS);
        return entry;
    }
}
