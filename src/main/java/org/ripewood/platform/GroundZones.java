package org.ripewood.platform;

import java.time.ZoneId;
import java.util.List;

/** Tells the clock in which zones the school's own ground lies. */
public interface GroundZones {

    /** Each once; none where the school has entered no ground of its own. */
    List<ZoneId> all();
}
