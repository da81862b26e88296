package org.ripewood.core.season;

import java.time.LocalDate;

/** Tells a tree's growth stage (vegetative BBCH code, 0 to 99) on a day. */
@FunctionalInterface
public interface StageClock {

    int stageOn(LocalDate day);
}
