package org.ripewood.steps;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import org.ripewood.platform.meters.Meter;
import org.ripewood.platform.meters.Meters;

/** Tells whoever runs the service how long the queue at the instructors is. */
@ApplicationScoped
class WaitingMeter {

    /** Those of a sample course wait for nobody. */
    private static final String WAITING =
            "state = ?1 and treeId not in (select t.id from TreeEntity t, SamplePersonEntity s"
                    + " where t.keeperId = s.personId)";

    private final StepBook steps;

    WaitingMeter(StepBook steps) {
        this.steps = steps;
    }

    void begin(@Observes StartupEvent start, Meters meters) {
        meters.watch(Meter.SIGN_OFFS_WAITING, this::waiting);
    }

    private long waiting() {
        return QuarkusTransaction.requiringNew()
                .call(() -> steps.count(WAITING, StepState.REPORTED));
    }
}
