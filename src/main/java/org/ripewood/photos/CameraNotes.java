package org.ripewood.photos;

import com.drew.lang.ByteArrayReader;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Locale;
import org.jboss.logging.Logger;
import org.jspecify.annotations.Nullable;

/**
 * The two things wanted of what a camera noted (Exif 2.32, CIPA DC-008); all else is dropped.
 *
 * @param orientation 1 to 8; 1 when not noted
 * @param takenOn the day by the camera's clock; null when not noted
 */
record CameraNotes(int orientation, @Nullable LocalDate takenOn) {

    private static final Logger LOG = Logger.getLogger(CameraNotes.class);

    private static final CameraNotes NONE = new CameraNotes(1, null);
    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("uuuu:MM:dd", Locale.ROOT)
                    .withResolverStyle(ResolverStyle.STRICT);
    private static final int DAY_LENGTH = 10;

    static CameraNotes of(byte[] exif) {
        if (exif.length == 0) {
            return NONE;
        }
        try {
            var notes = new Metadata();
            new ExifReader().extract(new ByteArrayReader(exif), notes);
            return new CameraNotes(orientation(notes), takenOn(notes));
        } catch (RuntimeException unreadable) {
            // notes may be as broken as they like, the picture is what counts
            LOG.debug("the camera's notes could not be read", unreadable);
            return NONE;
        }
    }

    private static int orientation(Metadata notes) {
        var directory = notes.getFirstDirectoryOfType(ExifIFD0Directory.class);
        var noted =
                directory == null ? null : directory.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
        return noted == null || noted < 1 || noted > 8 ? 1 : noted;
    }

    private static @Nullable LocalDate takenOn(Metadata notes) {
        var directory = notes.getFirstDirectoryOfType(ExifSubIFDDirectory.class);
        var noted =
                directory == null
                        ? null
                        : directory.getString(ExifSubIFDDirectory.TAG_DATETIME_ORIGINAL);
        if (noted == null || noted.length() < DAY_LENGTH) {
            return null;
        }
        try {
            return LocalDate.parse(noted.substring(0, DAY_LENGTH), DAY);
        } catch (DateTimeException noDay) {
            return null;
        }
    }
}
