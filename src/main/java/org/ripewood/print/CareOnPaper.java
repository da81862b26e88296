package org.ripewood.print;

import java.util.List;
import org.ripewood.aftercare.Care;
import org.ripewood.aftercare.CareTask;
import org.ripewood.aftercare.MeasuringDay;
import org.ripewood.boards.Checklist;

/**
 * Care as far as a sheet of paper is likely to be used.
 *
 * @param reported care after work that nobody has signed off yet
 */
record CareOnPaper(
        List<CareTask> now,
        List<Checklist.Care> reported,
        List<CareTask> soon,
        List<MeasuringDay> measuring) {

    private static final int WEEKS_ON_PAPER = 6;

    static CareOnPaper of(Care care, Checklist list) {
        var last = care.on().plusWeeks(WEEKS_ON_PAPER);
        return new CareOnPaper(
                care.now(),
                list.care().stream()
                        .filter(one -> !care.tellsOf(list.treeId(), one.afterTitle()))
                        .toList(),
                care.ahead().stream().filter(task -> !task.from().isAfter(last)).toList(),
                care.measuring());
    }

    public boolean any() {
        return !now.isEmpty() || !reported.isEmpty() || !soon.isEmpty() || !measuring.isEmpty();
    }
}
