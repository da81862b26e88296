package org.ripewood.archive;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.util.BitSet;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;

/**
 * The pictures that came with a record. An entry is known by its row's number alone; no name from a
 * ZIP is ever used for anything else.
 */
final class PicturesSent {

    static final Pattern ENTRY = Pattern.compile("^photos/[0-9]{6,9}\\.jpg$");

    /** More photos than a school of 100,000 trees has; a ZIP's own numbers are never believed. */
    static final int MOST = 10_000_000;

    private static final String MAYBE = " Maybe take the record out once more.";

    private final @Nullable ZipFile zip;
    private final BitSet there = new BitSet();
    private final BitSet named = new BitSet();
    private final long mostBytes;
    private long readBytes;

    /**
     * Pictures of a ZIP.
     *
     * @param zip null for a record without
     * @param mostBytes of all pictures together, unpacked
     */
    PicturesSent(@Nullable ZipFile zip, long mostBytes) {
        this.zip = zip;
        this.mostBytes = mostBytes;
    }

    /** The entry that has the picture of a row, by the row's number. */
    static String entry(int number) {
        return String.format(Locale.ROOT, "photos/%06d.jpg", number);
    }

    /** Notes an entry that is there; what is wrong with it, or null. */
    @Nullable String noteThere(String name) {
        int number = number(name);
        if (number == 0) {
            return "is not expected here: a record's ZIP has %s and pictures such as %s.%s"
                    .formatted(RecordZip.RECORD, entry(1), MAYBE);
        }
        if (there.get(number)) {
            return "is there twice." + MAYBE;
        }
        there.set(number);
        return null;
    }

    /** Only what stands just as we would write it is a picture's name. */
    private static int number(String name) {
        if (!ENTRY.matcher(name).matches()) {
            return 0;
        }
        int number = Integer.parseInt(name.substring(name.indexOf('/') + 1, name.indexOf('.')));
        return number <= MOST && entry(number).equals(name) ? number : 0;
    }

    /** What is wrong with the picture a row names; null when nothing is. */
    @Nullable String faultOf(int number, String name) {
        var expected = entry(number);
        if (!expected.equals(name)) {
            return "expected %s, after the row's number, found “%s”"
                    .formatted(expected, name.length() > 40 ? name.substring(0, 40) + "…" : name);
        }
        if (zip == null) {
            return "the picture did not come with the record. Maybe send the ZIP it is from, or take"
                    + " the record out without pictures.";
        }
        named.set(number);
        return there.get(number) ? null : "there is no such entry in the ZIP." + MAYBE;
    }

    /** Entries that no row has named. */
    void tellUnnamed(FileFaults faults) {
        var unnamed = (BitSet) there.clone();
        unnamed.andNot(named);
        unnamed.stream()
                .forEach(
                        number ->
                                faults.add(
                                        entry(number), "no row of the record names it." + MAYBE));
    }

    /**
     * The bytes of a picture.
     *
     * @param most that one may have; never more are read, whatever the ZIP says of itself
     * @throws IOException when they cannot be unpacked
     */
    byte[] read(int number, int most) throws IOException {
        var from = requireNonNull(zip);
        var name = entry(number);
        var entry = from.getEntry(name);
        if (entry == null) {
            throw new IOException("there is no such entry");
        }
        try (var packed = from.getInputStream(entry)) {
            var bytes = packed.readNBytes(most + 1);
            readBytes += bytes.length;
            if (bytes.length > most) {
                throw new TooMuch("expected at most %d bytes, found more.".formatted(most));
            }
            if (readBytes > mostBytes) {
                throw new TooMuch(
                        "expected at most %d bytes of pictures in all, found more."
                                .formatted(mostBytes));
            }
            return bytes;
        }
    }

    /** More was unpacked than may be. */
    static final class TooMuch extends IOException {
        TooMuch(String message) {
            super(message);
        }
    }
}
