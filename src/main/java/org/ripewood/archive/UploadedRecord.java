package org.ripewood.archive;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;
import java.util.zip.CheckedInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;

/**
 * What was sent as a record: JSON, or a ZIP of it and its pictures, told by its first bytes. Of a
 * ZIP nothing is believed: neither names nor sizes.
 */
final class UploadedRecord implements Closeable {

    private static final String WHOLE =
            "expected a whole ZIP, found one that cannot be read. Maybe it was cut off on its way:"
                    + " take the record out once more.";

    private static final int MOST_SHOWN = 60;

    private final Path json;
    private final PicturesSent pictures;
    private final @Nullable ZipFile zip;

    private UploadedRecord(Path json, PicturesSent pictures, @Nullable ZipFile zip) {
        this.json = json;
        this.pictures = pictures;
        this.zip = zip;
    }

    /**
     * Looks into what was sent.
     *
     * @param mostBytes of the record unpacked, and of all pictures unpacked
     * @throws org.ripewood.platform.problems.Refused 400 for a ZIP that is none of a record
     */
    static UploadedRecord open(Path file, long mostBytes, FileFaults faults) throws IOException {
        if (!isZip(file)) {
            return new UploadedRecord(file, new PicturesSent(null, 0), null);
        }
        var zip = opened(file, faults);
        var sent =
                new UploadedRecord(
                        Files.createTempFile("ripewood-record", ".json"),
                        new PicturesSent(zip, mostBytes),
                        zip);
        try {
            sent.unpack(zip, sent.look(zip, faults), mostBytes, faults);
            return sent;
        } catch (RuntimeException | IOException e) {
            sent.close();
            throw e;
        }
    }

    private static boolean isZip(Path file) throws IOException {
        try (var in = Files.newInputStream(file)) {
            return new String(in.readNBytes(2), StandardCharsets.ISO_8859_1).equals("PK");
        }
    }

    private static ZipFile opened(Path file, FileFaults faults) {
        try {
            return new ZipFile(file.toFile());
        } catch (IOException | IllegalArgumentException broken) {
            faults.end("", WHOLE);
            throw new IllegalStateException("a fault ends the reading", broken);
        }
    }

    /** Answers the entry of the record; every other has to be a picture's. */
    private ZipEntry look(ZipFile of, FileFaults faults) {
        ZipEntry record = null;
        // one by one: there may be millions
        for (var all = of.entries(); all.hasMoreElements(); ) {
            ZipEntry entry = all.nextElement();
            var fault =
                    entry.getName().equals(RecordZip.RECORD)
                            ? record == null ? null : "is there twice."
                            : pictures.noteThere(entry.getName());
            if (fault != null) {
                faults.add(shown(entry.getName()), fault);
            } else if (entry.getName().equals(RecordZip.RECORD)) {
                record = entry;
            }
        }
        if (record == null) {
            faults.end(
                    RecordZip.RECORD,
                    "expected the record, found none. Maybe a folder was packed instead of what is"
                            + " in it.");
            throw new IllegalStateException("a fault ends the reading");
        }
        faults.throwIfAny();
        return record;
    }

    private void unpack(ZipFile from, ZipEntry record, long mostBytes, FileFaults faults)
            throws IOException {
        var sum = new CRC32();
        try (var in = new CheckedInputStream(stream(from, record, faults), sum);
                var out = Files.newOutputStream(json)) {
            copy(in, out, mostBytes, faults);
        }
        if (sum.getValue() != record.getCrc()) {
            faults.end(RecordZip.RECORD, "its sum is not the one that was noted. " + WHOLE);
        }
    }

    private static InputStream stream(ZipFile from, ZipEntry record, FileFaults faults) {
        try {
            return from.getInputStream(record);
        } catch (IOException broken) {
            faults.end(RecordZip.RECORD, WHOLE);
            throw new IllegalStateException("a fault ends the reading", broken);
        }
    }

    private static void copy(InputStream in, OutputStream out, long mostBytes, FileFaults faults)
            throws IOException {
        var buffer = new byte[1 << 16];
        long copied = 0;
        for (int read = read(in, buffer, faults); read >= 0; read = read(in, buffer, faults)) {
            copied += read;
            if (copied > mostBytes) {
                faults.end(
                        RecordZip.RECORD,
                        "expected at most %d bytes, found more.".formatted(mostBytes));
            }
            out.write(buffer, 0, read);
        }
    }

    private static int read(InputStream in, byte[] buffer, FileFaults faults) {
        try {
            return in.read(buffer);
        } catch (IOException broken) {
            faults.end(RecordZip.RECORD, WHOLE);
            throw new IllegalStateException("a fault ends the reading", broken);
        }
    }

    private static String shown(String name) {
        var plain = name.replaceAll("\\p{C}", "?");
        return plain.length() > MOST_SHOWN ? plain.substring(0, MOST_SHOWN) + "…" : plain;
    }

    /** The record itself. */
    Path json() {
        return json;
    }

    PicturesSent pictures() {
        return pictures;
    }

    @Override
    public void close() throws IOException {
        if (zip != null) {
            zip.close();
            Files.deleteIfExists(json);
        }
    }
}
