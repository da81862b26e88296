package org.ripewood.platform.records;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Refused;

/**
 * The room whose rows have pictures beside the database, told to the record as a file and to the
 * forgetting of a person, which know the rows and not the pictures.
 */
public interface PictureDescriptions {

    /**
     * The picture of a row.
     *
     * @param row by column
     * @return empty when it is lost, or another than was written down
     */
    Optional<byte[]> find(Map<String, @Nullable Object> row);

    /** What one picture from a file may have at most. */
    int mostBytes();

    /**
     * Keeps a picture from a file, for good and before its row is entered.
     *
     * @param row by column, as it stands in the file
     * @return where it is kept: what those columns are to hold that no file has
     * @throws Refused 400 with its fault, when it is not what the row says or holds anything
     *     besides a picture; then nothing is kept
     */
    Map<String, String> keep(Map<String, @Nullable Object> row, byte[] sent);

    /** What is kept of rows, by their numbers: all keys that {@link #takeAway} is to be told. */
    List<String> keysOf(Collection<Long> rowIds);

    /** Takes away what is kept under these keys, which no row names any more. */
    void takeAway(Collection<String> keys);

    /** How many pictures of a person's making are there. */
    long madeBy(long personId);

    /**
     * Takes away what a person made, in the caller's transaction.
     *
     * @param byId who does it, for the marks that stay
     * @return keys to be taken away once the transaction has come to its end
     */
    List<String> removeMadeBy(long personId, long byId);
}
