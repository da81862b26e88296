package org.ripewood.archive;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.records.PictureDescriptions;

/** Brings pictures in, each before its row, and away again when the rows are not entered. */
final class PicturesIn {

    private static final String MAYBE =
            " Maybe take the record out once more: a picture comes in just as it was taken out.";

    private final PicturesSent sent;
    private final PictureDescriptions room;
    private final FileFaults faults;
    private final List<String> kept = new ArrayList<>();

    PicturesIn(PicturesSent sent, PictureDescriptions room, FileFaults faults) {
        this.sent = sent;
        this.room = room;
        this.faults = faults;
    }

    /**
     * Keeps a row's picture.
     *
     * @return what the row's columns are to hold; none when the picture is refused, which is told
     */
    Map<String, String> keep(int number, Map<String, @Nullable Object> row) {
        var entry = PicturesSent.entry(number);
        try {
            var columns = room.keep(row, sent.read(number, room.mostBytes()));
            kept.addAll(columns.values());
            return columns;
        } catch (PicturesSent.TooMuch tooMuch) {
            faults.end(entry, tooMuch.getMessage() + MAYBE);
        } catch (IOException broken) {
            faults.add(
                    entry, "expected a whole picture, found one that cannot be unpacked." + MAYBE);
        } catch (Refused refused) {
            for (Fault fault : refused.problem().faults()) {
                faults.add(entry, fault.message() + "." + MAYBE);
            }
        }
        return Map.of();
    }

    /** Takes away all that was kept, since no row will name it. */
    void takeAway() {
        room.takeAway(kept);
    }
}
