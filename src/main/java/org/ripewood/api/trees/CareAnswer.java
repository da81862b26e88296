package org.ripewood.api.trees;

import java.time.LocalDate;
import java.util.List;
import org.ripewood.aftercare.Care;
import org.ripewood.aftercare.CareTask;
import org.ripewood.aftercare.MeasuringDay;

/** Care of a tree, what is due first. */
record CareAnswer(LocalDate on, List<CareTask> tasks, List<MeasuringDay> measuring) {

    static CareAnswer of(Care care) {
        return new CareAnswer(care.on(), care.tasks(), care.measuring());
    }
}
