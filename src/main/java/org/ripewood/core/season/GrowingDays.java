package org.ripewood.core.season;

import java.time.LocalDate;

/**
 * Days on which one kind of tree grows at one place, counted: by them what was seen of a tree grows
 * old, since a tree at rest stays as it is.
 */
public interface GrowingDays {

    /** Every day of the calendar counts, for trees of which no year is known. */
    GrowingDays EVERY_DAY = new StageDays(day -> TypicalYear.GROWING);

    /** Whether the kind grows on a day. */
    boolean grows(LocalDate day);

    /**
     * Growing days from the morning of one day to the morning of another; 0 backwards, and never
     * more than days of the calendar.
     */
    long between(LocalDate from, LocalDate to);

    /**
     * The last day by whose morning no more than so many growing days have gone by since the
     * morning of another: of a look before leaf fall, a day in the summer after.
     *
     * @param days 0 or more
     * @return where nothing grows, a day {@link #NOTHING_GROWS_DAYS} later
     */
    LocalDate lastWithin(LocalDate from, long days);

    /** Days of the calendar after which nobody looks for growth any more. */
    int NOTHING_GROWS_DAYS = 3653;
}
