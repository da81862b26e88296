package org.ripewood.platform.meters;

import com.sun.management.HotSpotDiagnosticMXBean;
import io.quarkus.runtime.LaunchMode;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.lang.management.ManagementFactory;
import org.jboss.logging.Logger;

/**
 * Says at start when running out of memory would not end the process. A Java machine that goes on
 * without memory answers nobody and is not started again either.
 */
@ApplicationScoped
class MemoryWarning {

    private static final Logger LOG = Logger.getLogger(MemoryWarning.class);

    private static final String OPTION = "ExitOnOutOfMemoryError";

    void atStart(@Observes StartupEvent start) {
        if (LaunchMode.current() == LaunchMode.NORMAL && !endsWithoutMemory()) {
            LOG.warnf(
                    "Out of memory would not end this process, so that it could be started again."
                            + " Maybe start it with java -XX:+%s.",
                    OPTION);
        }
    }

    private static boolean endsWithoutMemory() {
        var machine = ManagementFactory.getPlatformMXBean(HotSpotDiagnosticMXBean.class);
        return machine == null || Boolean.parseBoolean(machine.getVMOption(OPTION).getValue());
    }
}
