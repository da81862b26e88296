package org.ripewood.platform.meters;

import java.util.function.Supplier;

/** Where rooms tell what is measured; none of them knows by what. */
public interface Meters {

    /** Does some work and notes how long it took, also when it fails. */
    <T> T time(Meter meter, Supplier<T> work);

    /** Counts one more. */
    void count(Meter meter);

    /**
     * Tells how many there are whenever somebody asks; what is told is asked for anew once a minute
     * at most.
     */
    void watch(Meter meter, Supplier<Long> amount);
}
