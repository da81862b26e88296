package org.ripewood.calendar;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.aftercare.Care;
import org.ripewood.sessions.Attendance;

/**
 * Everything a calendar holds.
 *
 * @param seed names its owner's events
 * @param site address of the service, without a slash at its end
 * @param dayBegan when the day began for which derived things are told
 */
record Dates(String seed, String site, Instant dayBegan, List<ClassDate> classDates, Care care) {

    Dates {
        classDates = List.copyOf(classDates);
    }

    LocalDate on() {
        return care.on();
    }

    /**
     * A class date with its moments.
     *
     * @param lesson title of the lesson; null for none
     * @param trees labels of the trees the owner brings
     */
    record ClassDate(
            Attendance attendance,
            Instant starts,
            Instant ends,
            @Nullable String lesson,
            List<String> trees) {

        ClassDate {
            trees = List.copyOf(trees);
        }

        boolean calledOff() {
            return !attendance.session().held() || attendance.withdrawn();
        }
    }
}
